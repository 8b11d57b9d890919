import type { Command } from 'commander';
import type { Register } from '../../register.ts';
import { safeClauses } from './clauses.ts';
import { safeHarvest } from './harvest.ts';
import { safeBeans, safeInput } from './input.ts';
import { safeHeap, safeLog } from './log.ts';
import { safeRecord } from './record.ts';

/** The commands under `loamwright safe`. */
export function registerSafe(safe: Command, { under, say, run }: Register): void {
  under(safe, 'harvest', 'cli.safe.harvest')
    .argument('<crop>', say('cli.safe.harvest.crop'))
    .option('--put <stuff>', say('cli.safe.harvest.put'))
    .option('--spread <day>', say('cli.safe.harvest.spread'))
    .option('--worked-in <day>', say('cli.safe.harvest.workedIn'))
    .option('--on-leaves', say('cli.safe.harvest.onLeaves'))
    .option('--planted <day>', say('cli.safe.harvest.planted'))
    .option('--on <day>', say('cli.safe.harvest.on'))
    .option('--cooked', say('cli.safe.harvest.cooked'))
    .option('--rules <rules>', say('cli.safe.harvest.rules'))
    .option('--tea-of <compost>', say('cli.safe.harvest.teaOf'))
    .option('--fed', say('cli.safe.harvest.fed'))
    .option('--water <water>', say('cli.safe.harvest.water'))
    .action((crop, options) => run(options, async (session) => safeHarvest(crop, options, session)));

  const logOptions = (on: Command): Command =>
    on
      .option('--method <method>', say('cli.safe.log.method'))
      .option('--ratio <figure>', say('cli.safe.log.ratio'))
      .option('--moisture <percent>', say('cli.safe.log.moisture'))
      .option('--plants-only', say('cli.safe.log.plantsOnly'))
      .option('--all-through', say('cli.safe.log.allThrough'))
      .option('--still-fed', say('cli.safe.log.stillFed'))
      .option('--cured <how>', say('cli.safe.log.cured'))
      .option('--wide <length>', say('cli.safe.log.wide'))
      .option('--steps <count>', say('cli.safe.log.steps'))
      .option('--rules <rules>', say('cli.safe.log.rules'));

  logOptions(under(safe, 'heap', 'cli.safe.heap').argument('<name>', say('cli.safe.heap.name'))).action(
    (name, options) => run(options, (session) => safeHeap(name, options, session)),
  );

  logOptions(
    under(safe, 'log', 'cli.safe.log')
      .argument('[readings...]', say('cli.safe.log.readings'))
      .option('--csv <file>', say('cli.csv'))
      .option('--unit <unit>', say('cli.csv.unit'))
      .option('--dates <order>', say('cli.csv.dates'))
      .option('--as-typed', say('cli.csv.asTyped'))
      .option('--from <day>', say('cli.safe.log.from'))
      .option('--turned <days>', say('cli.safe.log.turned'))
      .option('--edges <readings>', say('cli.safe.log.edges')),
  ).action((readings, options) => run(options, (session) => safeLog(readings, options, session)));

  under(safe, 'input', 'cli.safe.input')
    .argument('<stuff>', say('cli.safe.input.stuff'))
    .option('--heap <kind>', say('cli.safe.input.heap'))
    .option('--sprayed <what>', say('cli.safe.input.sprayed'))
    .option('--mowings <count>', say('cli.safe.input.mowings'))
    .option('--weeks <count>', say('cli.safe.input.weeks'))
    .action((stuff, options) => run(options, (session) => safeInput(stuff, options, session)));

  under(safe, 'beans', 'cli.safe.beans')
    .option('--hurt <how>', say('cli.safe.beans.hurt'))
    .option('--pots <count>', say('cli.safe.beans.pots'))
    .option('--controls <count>', say('cli.safe.beans.controls'))
    .option('--controls-hurt', say('cli.safe.beans.controlsHurt'))
    .option('--weeks <count>', say('cli.safe.beans.weeks'))
    .option('--parts <count>', say('cli.safe.beans.parts'))
    .option('--keep <stuff>', say('cli.safe.beans.keep'))
    .option('--keep-heap <name>', say('cli.safe.beans.keepHeap'))
    .option('--when <time>', say('cli.option.when'))
    .action((options) => run(options, (session) => safeBeans(options, session)));

  under(safe, 'clauses', 'cli.safe.clauses')
    .argument('[heap]', say('cli.safe.clauses.heap'))
    .option('--file <path>', say('cli.safe.clauses.file'))
    .option('--clause <clause...>', say('cli.safe.clauses.clause'))
    .option('--of <name>', say('cli.safe.clauses.of'))
    .option('--whose <whose>', say('cli.safe.clauses.whose'))
    .option('--keep', say('cli.safe.clauses.keep'))
    .option('--size <size>', say('cli.safe.clauses.size'))
    .option('--volume <volume>', say('cli.safe.clauses.volume'))
    .option('--lot <area>', say('cli.safe.clauses.lot'))
    .option('--line <length>', say('cli.safe.clauses.line'))
    .option('--house <length>', say('cli.safe.clauses.house'))
    .option('--water <length>', say('cli.safe.clauses.water'))
    .option('--stuff <list>', say('cli.safe.clauses.stuff'))
    .option('--yard <where>', say('cli.safe.clauses.yard'))
    .option('--cover <answer>', say('cli.safe.clauses.cover'))
    .option('--enclosed <answer>', say('cli.safe.clauses.enclosed'))
    .option('--buried <answer>', say('cli.safe.clauses.buried'))
    .action((name, options) => run(options, (session) => safeClauses(name, options, session)));

  under(safe, 'record', 'cli.safe.record')
    .argument('<name>', say('cli.safe.record.name'))
    .option('--as <form>', say('cli.safe.record.as'))
    .option('--out <file>', say('cli.safe.record.out'))
    .action((name, options) => run(options, (session) => safeRecord(name, options, session)));
}
