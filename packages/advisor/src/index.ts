export type { ActMark } from './act-marks.ts';
export { airAsRead } from './air-as-read.ts';
export { type BalanceOfYear, balanceOfYear, droppingsReport } from './balance-of-year.ts';
export { type BalanceReport, balanceReport, type JudgedWords } from './balance-report.ts';
export { type BedBudgetReport, bedBudgetReport, type ReleaseOf, releasesOf } from './bed-budget-report.ts';
export { type BedFillReport, bedFillReport } from './bed-fill-report.ts';
export { type BedRecords, bedRecords, recordNotes, seasonOf } from './bed-records.ts';
export {
  type BedLine,
  type BedMoment,
  type BedReport,
  type BedsOverview,
  bedArea_m2,
  bedReckoned,
  bedReport,
  bedsOverview,
} from './bed-report.ts';
export {
  type YearsAsked,
  type YearsRecords,
  type YearsTold,
  yearlyWords,
  yearsAsked,
  yearsFrom,
  yearsRecords,
} from './bed-years.ts';
export { buildUpReport, soilCarbonReport, yearsAnswer } from './bed-years-report.ts';
export type { BeliefSaid } from './belief-words.ts';
export { baySize } from './bin-layers.ts';
export type { PartWords } from './blend-words.ts';
export { type BuildCardReport, buildCardReport, type CardLayerWords } from './build-card-report.ts';
export { type CalculationReport, calculationReport, type FieldRow } from './calculation-report.ts';
export { charReport } from './char-report.ts';
export { canBeHeld, clausePhrase, readClause } from './clause-phrase.ts';
export { type ClauseReport, clauseReport, clauseSaying } from './clause-report.ts';
export { coldInput, standsCold } from './cold-input.ts';
export { type ColdReport, coldReport } from './cold-report.ts';
export { type SkinFound, skinAcross, skinOfHeap, widthOfHeap } from './cold-skin.ts';
export { coverPuts } from './cover-puts.ts';
export { type CropFound, cropNamed, cropToKeep } from './crop-names.ts';
export { type CsvRow, csvDelimiters, readCsv } from './csv-read.ts';
export { dayWords } from './day-words.ts';
export { type DaybookLine, type DaybookOptions, daybookLines, type LineStatus } from './daybook-lines.ts';
export { entrySaying } from './entry-saying.ts';
export { waitNotes } from './harvest-wait.ts';
export {
  boxOf,
  daysToFollow,
  type HeapAsBuilt,
  heapAsBuilt,
  MOST_RUN_DAYS,
  standingIn,
  type TempAtDay,
} from './heap-as-built.ts';
export { heapLeft, isPartlyGone, type LeftAsked, leftSaying } from './heap-left.ts';
export { heapLog, methodOf } from './heap-log.ts';
export {
  type HeapReport,
  heapReport,
  type LayerLine,
  type LevelLine,
  type MadeOf,
  type SeriesPoint,
} from './heap-report.ts';
export { heapRunCsv } from './heap-run-csv.ts';
export { type HeapRunReport, heapRunReport } from './heap-run-report.ts';
export { type HeapSizeReport, heapSizeReport, type SizesFound } from './heap-size-report.ts';
export { type HeapSpread, type HeapSpreadAsked, heapSpread, spreadsOf } from './heap-spread.ts';
export { wallAround } from './heap-standing.ts';
export { beanSteps, beanWords, type InputReport, inputReport, keptBeans } from './inputs-report.ts';
export { type IntervalReport, intervalReport } from './interval-report.ts';
export { laid, partFills, scaled } from './laid.ts';
export { limeReport } from './lime-report.ts';
export {
  codesOf,
  entriesOfClause,
  type HeapClauses,
  heapClauses,
  heapFacts,
  type KeptClause,
  type KeptCode,
  keptClauses,
  logMeetsARule,
} from './local-clauses.ts';
export { type FactWords, type MaterialReport, materialReport } from './material-report.ts';
export type { ChangeWords } from './material-words.ts';
export { type FirstChecks, firstChecks, measureNextWords } from './measure-next-report.ts';
export { measureVolume_m3 } from './measure-volume.ts';
export { type MixReport, mixReport, type OtherWords, type PermitWords, type UsedWords } from './mix-report.ts';
export { materialName } from './names.ts';
export { type NeedsReport, needsReport } from './needs-report.ts';
export { type HeapLine, type HeapsOverview, heapsOverview } from './overview.ts';
export { compostOf } from './own-compost.ts';
export {
  type Check,
  type CheckRead,
  changeOf,
  describedWith,
  figuresOfCheck,
  ownMaterialId,
  readCheck,
} from './own-records.ts';
export { believedOf, stuffed } from './own-stuff.ts';
export { type PailQuestion, type PailSaid, pailQuestion } from './pail-question.ts';
export { type PailDry, type PailReport, pailReport } from './pail-report.ts';
export { placeBroken } from './place-broken.ts';
export { type PottingReport, pottingReport } from './potting-report.ts';
export { isInStore, isRaw, layerPut, sized, type Weighed, type Weighing, weighed } from './put.ts';
export {
  type ActWords,
  type BandWords,
  type DoubtWords,
  doubtWords,
  type ReadingWords,
  readingWords,
} from './reading-words.ts';
export { type RecordReader, recordChanges, recordCsv, recordData, recordRules } from './record-forms.ts';
export { type RecordLine, type RecordPack, type RecordVerdict, recordPack } from './record-pack.ts';
export {
  ammoniumToNitrate,
  breathAsCarbon,
  emergence_pctControl,
  LEAST_CONTROL,
  ripenessKept,
  ripenessWords,
  ripeningAge_days,
  USUALLY_SOWN,
  withRipeness,
} from './ripe-kept.ts';
export { ripeReport } from './ripe-report.ts';
export { type SanitationReport, sanitationReport } from './sanitation-report.ts';
export { siftReport } from './sift-report.ts';
export { type SizeReport, sizeReport } from './size-report.ts';
export { soilReport } from './soil-report.ts';
export { soilWaterReport } from './soil-water-report.ts';
export { layerReport, type SpreadReport, shareReport, spreadReport } from './spread-report.ts';
export { type StockLine, type StockReport, stockReport } from './stock-report.ts';
export { tradeOffWords } from './trade-off-words.ts';
export { vocabularyOf } from './vocabulary.ts';
export { type YearOf, yearOf } from './year-of.ts';
export { heapYieldInput, yieldReport } from './yield-report.ts';
