import { cropNamed, intervalReport } from '@loamwright/advisor';
import { localDate } from '@loamwright/daybook';
import {
  allCrops,
  bad,
  type ContactId,
  check,
  contactIds,
  createDraws,
  type Day,
  good,
  type HarvestIntervalInput,
  harvestInterval,
  harvestRuleIds,
  type LayId,
  type Outcome,
  putIds,
  type SoilContact,
  type Tea,
} from '@loamwright/science';
import type { Answer } from '../../answer.ts';
import { allOf, readOneOf } from '../../blend.ts';
import { readWhen } from '../../grammar/when.ts';
import type { Session } from '../../session.ts';
import { page } from '../../text.ts';
import { cautionText } from '../heap.ts';

export interface SafeHarvestOptions {
  readonly put?: string | undefined;
  readonly spread?: string | undefined;
  readonly workedIn?: string | undefined;
  readonly onLeaves?: boolean | undefined;
  readonly planted?: string | undefined;
  readonly on?: string | undefined;
  readonly cooked?: boolean | undefined;
  readonly rules?: string | undefined;
  readonly teaOf?: string | undefined;
  readonly fed?: boolean | undefined;
  readonly water?: string | undefined;
}

/** `loamwright safe harvest`: whether a day of harvest will do after a spreading, and which is the earliest. */
export function safeHarvest(crop: string, options: SafeHarvestOptions, session: Session): Outcome<Answer> {
  const contact = readContact(crop, session);
  const put = readOneOf(options.put ?? 'raw-manure', putIds, '--put');
  const tea = readTea(options);
  const rules = readRules(options.rules);
  const spread = readDay(options.spread, '--spread', session);
  const workedIn = readDay(options.workedIn, '--worked-in', session);
  const planted = readDay(options.planted, '--planted', session);
  const harvest = readDay(options.on, '--on', session);
  if (!contact.ok || !put.ok || !tea.ok || !rules.ok || !spread.ok || !workedIn.ok || !planted.ok || !harvest.ok)
    return bad(...allOf(contact, put, tea, rules, spread, workedIn, planted, harvest));
  const input = check<HarvestIntervalInput>(harvestInterval.input, {
    put: put.value,
    lay: layOf(options),
    contact: contact.value,
    ...(tea.value !== undefined && { tea: tea.value }),
    ...(spread.value !== undefined && { spread_day: spread.value }),
    ...(workedIn.value !== undefined && { workedIn_day: workedIn.value }),
    ...(planted.value !== undefined && { planting_day: planted.value }),
    ...(harvest.value !== undefined && { harvest_day: harvest.value }),
    ...(options.cooked === true && { eatenRaw: false }),
    ...(rules.value !== undefined && { rules: rules.value }),
  });
  if (!input.ok) return bad(...input.problems.map((problem) => ({ ...problem, path: optionOf(problem.path) })));
  const found = harvestInterval.run(input.value, { draws: createDraws() });
  if (!found.ok) return found;
  const report = intervalReport(input.value, found.value);
  const { speaker, terminal } = session;
  const { columns } = terminal;
  const text = [
    page(columns, [speaker.tell(report.answer)]),
    page(columns, [speaker.tell(report.because)]),
    page(columns, ...report.rules.map((line): [string, string] => [`- ${speaker.tell(line)}`, '  '])),
    page(columns, ...report.notes.map((note): [string] => [speaker.tell(note)])),
    cautionText(report.cautions, speaker, columns),
  ].join('\n\n');
  return good({ value: { input: input.value, ...found.value }, text });
}

const contactOf = { yes: 'touches', splash: 'splash', no: 'clear' } as const satisfies Record<SoilContact, ContactId>;

/**
 * How what is eaten meets the soil, or a crop whose way the tables know; one that they don't know is taken as touching, which
 * waits longest. Problem: `not-one-of`.
 */
function readContact(typed: string, { speaker }: Session): Outcome<ContactId> {
  const read = readOneOf(typed, contactIds, 'crop');
  if (read.ok) return read;
  const named = cropNamed(typed.slice(0, 60), speaker);
  const crop = 'id' in named ? allCrops.find(({ id }) => id === named.id) : undefined;
  if (crop === undefined)
    return bad(...read.problems.map((one) => ({ ...one, wanted: `${one.wanted}, ${CROP_EXAMPLES}` })));
  return good(crop.soilContact === undefined ? 'touches' : contactOf[crop.soilContact]);
}

const CROP_EXAMPLES = 'or a crop: lettuce, sweet corn';

/** Sprayed or poured over leaves where that was said; worked in where a day of it was told or none of spreading; else on top. */
function layOf({ onLeaves, workedIn, spread }: SafeHarvestOptions): LayId {
  if (onLeaves === true) return 'on-leaves';
  return workedIn !== undefined || spread === undefined ? 'worked-in' : 'on-top';
}

function readTea({ teaOf, fed, water }: SafeHarvestOptions): Outcome<Tea | undefined> {
  if (teaOf === undefined && fed === undefined && water === undefined) return good(undefined);
  const of = readOneOf(
    teaOf ?? 'unproven-compost',
    ['proven-compost', 'unproven-compost', 'plant-compost'],
    '--tea-of',
  );
  const drawn = readOneOf(water ?? 'unknown', ['clean', 'untreated-surface', 'unknown'], '--water');
  if (!of.ok || !drawn.ok) return bad(...allOf(of, drawn));
  return good({ of: of.value, fed: fed === true, water: drawn.value });
}

function readRules(typed: string | undefined): Outcome<HarvestIntervalInput['rules']> {
  if (typed === undefined) return good(undefined);
  const read = typed.split(',').map((one) => readOneOf(one, harvestRuleIds, '--rules'));
  const known = read.flatMap((one) => (one.ok ? [one.value] : []));
  return known.length < read.length ? bad(...allOf(...read)) : good([...new Set(known)]);
}

/** A day of the calendar, typed as times are typed. Problem: `when-unreadable`. */
function readDay(typed: string | undefined, path: string, { now, zone }: Session): Outcome<Day | undefined> {
  if (typed === undefined) return good(undefined);
  const read = readWhen(typed, now(), zone);
  return read.ok ? good(localDate(read.value.happened, zone)) : bad(...read.problems.map((one) => ({ ...one, path })));
}

const options: Readonly<Record<string, string>> = {
  spread_day: '--spread',
  workedIn_day: '--worked-in',
  planting_day: '--planted',
  harvest_day: '--on',
};

function optionOf(path: string): string {
  return options[path] ?? path;
}
