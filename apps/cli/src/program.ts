import { type CautionId, doubtfulInputs, good, type Outcome, type Problem } from '@loamwright/science';
import { createSpeaker, type MessageKey, type Speaker, tellProblem } from '@loamwright/words';
import { Command, CommanderError, Option } from 'commander';
import packageFacts from '../package.json' with { type: 'json' };
import { type Answer, type ExitCode, exitCodeOf } from './answer.ts';
import { bedOptions, registerBed } from './commands/bed/register.ts';
import { belief } from './commands/belief.ts';
import { bring } from './commands/bring.ts';
import { build } from './commands/build.ts';
import { daybook } from './commands/daybook/daybook.ts';
import { exchange } from './commands/exchange.ts';
import { feed } from './commands/feed.ts';
import { fillBed } from './commands/fill-bed.ts';
import { cautionText, heap } from './commands/heap.ts';
import { registerHeapRun } from './commands/heap-run/register.ts';
import { log } from './commands/log/log.ts';
import { material } from './commands/material/material.ts';
import { mix } from './commands/mix.ts';
import { needs } from './commands/needs.ts';
import { pail } from './commands/pail.ts';
import { potting } from './commands/potting.ts';
import { registerReady } from './commands/ready/register.ts';
import { reckon } from './commands/reckon.ts';
import { registerSafe } from './commands/safe/register.ts';
import { size } from './commands/size.ts';
import { spread } from './commands/spread/spread.ts';
import { start } from './commands/start.ts';
import { take } from './commands/take.ts';
import { why } from './commands/why.ts';
import { makeDemo } from './demo.ts';
import type { Register, Work } from './register.ts';
import { type CommonOptions, openSession, type Session, type Surroundings } from './session.ts';
import { wrap } from './terminal.ts';

/** Runs one command line, prints its answer, and gives the exit code. */
export async function runProgram(args: readonly string[], surroundings: Surroundings): Promise<ExitCode> {
  let code: ExitCode = 0;
  const { terminal } = surroundings;
  const speaker = createSpeaker({ locale: 'en', system: 'metric' });
  const asJson = args.includes('--json');
  const program = commands(speaker, asJson, surroundings, async (options, work, names) => {
    code = await runCommand(options, work, surroundings, names);
  });
  try {
    await program.parseAsync(args.map(withMinus), { from: 'user' });
  } catch (error) {
    if (!(error instanceof CommanderError)) throw error;
    code = error.exitCode === 0 ? 0 : 2;
    if (code !== 0 && asJson) {
      const problem = { code: 'command-line', path: '', found: error.message, wanted: 'loamwright --help' };
      terminal.out(`${JSON.stringify({ ok: false, problems: [problem] }, null, 2)}\n`);
    }
  }
  return code;
}

/** `-40C` is forty below zero and no option: no option here begins with a figure. A true minus sign keeps it from being read as one. */
function withMinus(arg: string): string {
  return arg.replace(/^-(?=[\d.,]*\d)/u, '−');
}

async function runCommand(
  options: CommonOptions,
  work: Work,
  surroundings: Surroundings,
  names = false,
): Promise<ExitCode> {
  const { terminal } = surroundings;
  const session = openSession(options, surroundings);
  const speaker = session.ok ? session.value.speaker : createSpeaker({ locale: 'en', system: 'metric' });
  const outcome = session.ok ? await withDemo(session.value, work) : session;
  if (outcome.ok && outcome.value.quiet === true) return outcome.value.code ?? 0;
  if (options.json === true) {
    terminal.out(`${JSON.stringify(asData(outcome), null, 2)}\n`);
  } else if (outcome.ok) {
    if (outcome.value.text !== '') terminal.out(`${outcome.value.text}\n`);
  } else tellAll(outcome.problems, { speaker, names }, surroundings);
  return outcome.ok ? (outcome.value.code ?? 0) : exitCodeOf(outcome.problems);
}

/** The demo garden is made when it is first asked for. */
async function withDemo(session: Session, work: Work): Promise<Outcome<Answer>> {
  const ready = session.demo ? await makeDemo(session) : good(session);
  return ready.ok ? work(session) : ready;
}

/** What a program reads: the value; or the problems, with whatever is known beside them. */
function asData(outcome: Outcome<Answer>): object {
  if (!outcome.ok) return outcome;
  const { value, code, problems } = outcome.value;
  return code === undefined || code === 0 ? { ok: true, value } : { ok: false, problems: problems ?? [], value };
}

interface Telling {
  readonly speaker: Speaker;
  readonly names: boolean;
}

function tellAll(problems: readonly Problem[], { speaker, names }: Telling, { terminal }: Surroundings): void {
  for (const problem of problems) {
    terminal.err(`${wrap(tellProblem(speaker, problem, { names }), terminal.columns)}\n`);
    const cautions = cautionText(cautionsOfDoubt(problem), speaker, terminal.columns);
    if (cautions !== '') terminal.err(`${cautions}\n`);
  }
}

/** What belongs to something that should not go on a heap. */
function cautionsOfDoubt({ code, found }: Problem): readonly CautionId[] {
  if (code !== 'not-for-heaps' && code !== 'doubtful-alone') return [];
  return doubtfulInputs.find(({ id }) => id === found)?.cautions ?? [];
}

function commands(speaker: Speaker, asJson: boolean, { terminal }: Surroundings, run: Register['run']): Command {
  const say = (key: MessageKey): string => speaker.say(key);
  const program = new Command('loamwright')
    // Before any command is made: each takes over what stands here then.
    .configureOutput({
      writeOut: terminal.out,
      writeErr: asJson ? () => undefined : terminal.err,
      getOutHelpWidth: () => terminal.columns,
      getErrHelpWidth: () => terminal.columns,
    })
    .description(say('cli.title'))
    .version(packageFacts.version, '--version', say('cli.option.version'))
    .helpOption('-h, --help', say('cli.option.help'))
    .helpCommand(false)
    .addHelpText('after', `\n${say('cli.exitCodes')}`)
    .exitOverride();

  const under: Register['under'] = (parent, name, summary) =>
    parent
      .command(name)
      .description(say(summary))
      .helpOption('-h, --help', say('cli.option.help'))
      .option('--json', say('cli.option.json'))
      .option('--data <folder>', say('cli.option.data'))
      .option('--demo', say('cli.option.demo'))
      .addOption(new Option('--units <system>', say('cli.option.units')))
      .option('--by <person>', say('cli.option.by'))
      .addHelpText('after', `\n${say('cli.exitCodes')}`);
  const command = (name: string, summary: MessageKey): Command => under(program, name, summary);
  const group = (name: string, summary: MessageKey): Command =>
    program.command(name).description(say(summary)).helpOption('-h, --help', say('cli.option.help')).helpCommand(false);

  const logOptions = (on: Command): Command =>
    on
      .option('--when <time>', say('cli.option.when'))
      .option('--where <place>', say('cli.log.where'))
      .option('--depth <depth>', say('cli.log.depth'))
      .option('--probe <name>', say('cli.log.probe'))
      .option('--air <temperature>', say('cli.log.air'))
      .option('--squeeze <feel>', say('cli.log.squeeze'))
      .option('--smell <smell>', say('cli.log.smell'))
      .option('--height <height>', say('cli.log.height'))
      .option('--as-typed', say('cli.log.asTyped'))
      .option('--into <bay>', say('cli.log.into'))
      .option('--liquid <liquid>', say('cli.log.liquid'))
      .option('--thickness <depth>', say('cli.log.thickness'))
      .option('--wall <wall>', say('cli.log.wall'))
      .option('--roofed', say('cli.log.roofed'))
      .option('--from <supplier>', say('cli.log.from'))
      .option('--out <reason>', say('cli.log.out'))
      .option('--note <text>', say('cli.option.note'));

  command('start', 'cli.start')
    .option('--port <number>', say('cli.start.port'))
    .option('--host <address>', say('cli.start.host'))
    .option('--lan', say('cli.start.lan'))
    .action((options) => run(options, (session) => start(options, session)));

  command('mix', 'cli.mix')
    .argument('[stuff...]', say('cli.mix.stuff'))
    .option('--bay <bay>', say('cli.mix.bay'))
    .option('--whole', say('cli.mix.whole'))
    .addOption(new Option('--half', say('cli.mix.half')).conflicts('whole'))
    .option('--one', say('cli.mix.one'))
    .option('--full', say('cli.mix.full'))
    .option('--why', say('cli.mix.why'))
    .option('--exact', say('cli.mix.exact'))
    .option('--water <amount>', say('cli.mix.water'))
    .option('--size <size...>', say('cli.option.size'))
    .action((stuff, options) => run(options, (session) => mix(stuff, options, session)));

  const blendOptions = (on: Command): Command =>
    on
      .option('--age <months>', say('cli.blend.age'))
      .option('--seedlings <percent>', say('cli.blend.seedlings'))
      .option('--rise <kelvin>', say('cli.blend.rise'))
      .option('--smell <smell>', say('cli.blend.smell'))
      .option('--salts <reading>', say('cli.blend.salts'))
      .option('--salts-by <method>', say('cli.blend.saltsBy'))
      .option('--made-of <stuff>', say('cli.blend.madeOf'))
      .option('--proven-hot', say('cli.blend.provenHot'))
      .option('--part <part...>', say('cli.blend.part'))
      .option('--have <stuff...>', say('cli.blend.have'))
      .option('--measure <measure>', say('cli.blend.measure'))
      .option('--size <size...>', say('cli.option.size'));

  blendOptions(
    command('potting', 'cli.potting')
      .argument('<use>', say('cli.potting.use'))
      .argument('<pots...>', say('cli.potting.pots'))
      .option('--recipe <recipe>', say('cli.potting.recipe'))
      .option('--eaten-raw', say('cli.potting.eatenRaw')),
  ).action((use, pots, options) => run(options, (session) => potting(use, pots, options, session)));

  blendOptions(
    command('fill-bed', 'cli.fillBed')
      .argument('<bed>', say('cli.fillBed.bed'))
      .option('--depth <depth>', say('cli.fillBed.depth'))
      .option('--beds <count>', say('cli.fillBed.beds'))
      .option('--compost <percent>', say('cli.fillBed.compost'))
      .option('--foot <wood>', say('cli.fillBed.foot'))
      .option('--stands-on <ground>', say('cli.fillBed.standsOn'))
      .option('--walls <walls>', say('cli.fillBed.walls')),
  ).action((bed, options) => run(options, (session) => fillBed(bed, options, session)));

  registerReady({ command, say, run });

  command('build', 'cli.build')
    .argument('[stuff...]', say('cli.build.stuff'))
    .option('--name <name>', say('cli.build.name'))
    .option('--bay <bay>', say('cli.build.bay'))
    .option('--water <amount>', say('cli.build.water'))
    .option('--aim <aim>', say('cli.build.aim'))
    .option('--card-only', say('cli.build.cardOnly'))
    .option('--from-stock', say('cli.option.fromStock'))
    .option('--when <time>', say('cli.option.when'))
    .option('--size <size...>', say('cli.option.size'))
    .option('--note <text>', say('cli.option.note'))
    .action((stuff, options) => run(options, (session) => build(stuff, options, session)));

  command('feed', 'cli.feed')
    .argument('<heap>', say('cli.feed.heap'))
    .argument('[stuff...]', say('cli.feed.stuff'))
    .option('--when <time>', say('cli.option.when'))
    .option('--from-stock', say('cli.option.fromStock'))
    .option('--note <text>', say('cli.option.note'))
    .action((name, stuff, options) => run(options, (session) => feed(name, stuff, options, session)));

  command('pail', 'cli.pail')
    .argument('[stuff...]', say('cli.pail.stuff'))
    .option('--bin <heap>', say('cli.pail.bin'))
    .option('--dry <stuff...>', say('cli.pail.dry'))
    .option('--bay <bay>', say('cli.mix.bay'))
    .option('--height <height>', say('cli.log.height'))
    .option('--squeeze <feel>', say('cli.log.squeeze'))
    .option('--smell <smell>', say('cli.log.smell'))
    .option('--frozen', say('cli.pail.frozen'))
    .addOption(new Option('--thawing', say('cli.pail.thawing')).conflicts('frozen'))
    .option('--per-week <count>', say('cli.pail.perWeek'))
    .option('--weeks <count>', say('cli.pail.weeks'))
    .option('--size <size...>', say('cli.option.size'))
    .option('--full', say('cli.pail.full'))
    .option('--log', say('cli.pail.log'))
    .option('--from-stock', say('cli.option.fromStock'))
    .option('--when <time>', say('cli.option.when'))
    .option('--note <text>', say('cli.option.note'))
    .action((stuff, options) => run(options, (session) => pail(stuff, options, session)));

  logOptions(command('log', 'cli.log'))
    .option('--csv <file>', say('cli.csv'))
    .option('--unit <unit>', say('cli.csv.unit'))
    .option('--dates <order>', say('cli.csv.dates'))
    .argument('<subject>', say('cli.log.subject'))
    .argument('[what...]', say('cli.log.what'))
    .action((subject, what, options) => run(options, (session) => log(subject, what, options, session)));

  command('material', 'cli.material')
    .argument('[words...]', say('cli.material.words'))
    .option('--all', say('cli.material.all'))
    .option('--find <words>', say('cli.material.find'))
    .option('--is <wetness>', say('cli.material.is'))
    .option('--squeeze <feel>', say('cli.material.squeeze'))
    .option('--wet <mass>', say('cli.material.wet'))
    .option('--dry <mass>', say('cli.material.dry'))
    .option('--container <mass>', say('cli.material.container'))
    .option('--microwave', say('cli.material.microwave'))
    .option('--full <mass>', say('cli.material.full'))
    .option('--empty <mass>', say('cli.material.empty'))
    .option('--holds <volume>', say('cli.material.holds'))
    .option('--packed', say('cli.material.packed'))
    .option('--filled <height>', say('cli.material.filled'))
    .option('--settled <height>', say('cli.material.settled'))
    .option('--instead', say('cli.material.insteadOption'))
    .option('--like <material>', say('cli.material.like'))
    .option('--raw', say('cli.material.raw'))
    .option('--ratio <figure>', say('cli.material.ratio'))
    .option('--nitrogen <percent>', say('cli.material.nitrogen'))
    .option('--ash <percent>', say('cli.material.ash'))
    .option('--weight <density>', say('cli.material.weight'))
    .option('--when <time>', say('cli.option.when'))
    .option('--note <text>', say('cli.option.note'))
    .action((words, options) => run(options, (session) => material(words, options, session)));

  const heaps = command('heap', 'cli.heap')
    .argument('[name]', say('cli.heap.name'))
    .action((name, options) => run(options, (session) => heap(name, session)));
  registerHeapRun(heaps, { under, say, run });

  command('why', 'cli.why')
    .argument('[heap]', say('cli.why.heap'))
    .option('--size <size>', say('cli.why.size'))
    .option('--squeeze <feel>', say('cli.log.squeeze'))
    .option('--smell <smell>', say('cli.log.smell'))
    .option('--reading <temperature>', say('cli.why.reading'))
    .option('--in <stuff...>', say('cli.why.in'))
    .option('--built <time>', say('cli.why.built'))
    .option('--turned <time>', say('cli.why.turned'))
    .option('--hottest <temperature>', say('cli.why.hottest'))
    .option('--food <yes or no>', say('cli.why.food'))
    .option('--air <temperature>', say('cli.log.air'))
    .action((name, options) => run(options, (session) => why(name, options, session)));

  command('size', 'cli.size')
    .argument('<size>', say('cli.size.size'))
    .option('--air <temperature>', say('cli.size.air'))
    .option('--core <temperature>', say('cli.size.core'))
    .option('--insulated', say('cli.size.insulated'))
    .action((typed, options) => run(options, (session) => size(typed, options, session)));

  logOptions(
    command('daybook', 'cli.daybook')
      .argument('[words...]', say('cli.daybook.words'))
      .option('--about <name>', say('cli.daybook.about'))
      .option('--newest <count>', say('cli.daybook.newest'))
      .option('--all', say('cli.daybook.all'))
      .option('--check', say('cli.daybook.check'))
      .option('--show <id>', say('cli.daybook.show'))
      .option('--withdraw <id>', say('cli.daybook.withdraw'))
      .option('--why <text>', say('cli.daybook.why'))
      .option('--forget', say('cli.daybook.forget'))
      .option('--amend <id>', say('cli.daybook.amend'))
      .option('--body <file>', say('cli.daybook.body')),
  ).action((words, options) => run(options, (session) => daybook(words, options, session)));

  command('take', 'cli.take')
    .option('--out <file>', say('cli.take.out'))
    .action((options) => run(options, (session) => take(options, session)));

  command('bring', 'cli.bring')
    .argument('<file>', say('cli.bring.file'))
    .action((file, options) => run(options, (session) => bring(file, session)));

  command('exchange', 'cli.exchange')
    .argument('[address]', say('cli.exchange.address'))
    .option('--key <key>', say('cli.exchange.key'))
    .option('--fingerprint <sha256>', say('cli.exchange.fingerprint'))
    .action((address, options) => run(options, (session) => exchange(address, options, session)));

  registerBed(group('bed', 'cli.bed'), { under, say, run });
  bedOptions(command('spread', 'cli.spread').argument('[stuff...]', say('cli.spread.stuff')), say)
    .option('--on <crops...>', say('cli.spread.on'))
    .option('--measure <measure>', say('cli.blend.measure'))
    .option('--price <prices...>', say('cli.spread.price'))
    .option('--deep <depth>', say('cli.spread.deep'))
    .option('--over <beds...>', say('cli.spread.over'))
    .option('--share <count>', say('cli.spread.share'))
    .option('--by-need', say('cli.spread.by'))
    .option('--heap <name>', say('cli.spread.heap'))
    .option('--there <count>', say('cli.spread.there'))
    .option('--keep', say('cli.spread.keep'))
    .option('--when <time>', say('cli.option.when'))
    .option('--size <size...>', say('cli.option.size'))
    .action((stuff, options) => run(options, (session) => spread(stuff, options, session)));

  registerSafe(group('safe', 'cli.safe'), { under, say, run });

  command('needs', 'cli.needs')
    .argument('[stuff...]', say('cli.needs.stuff'))
    .option('--size <size...>', say('cli.option.size'))
    .action((stuff, options) => run(options, (session) => needs(stuff, options, session)));

  command('belief', 'cli.belief')
    .argument('[words...]', say('cli.belief.words'))
    .action((words, options) => run(options, async (session) => belief(words, session)));

  command('reckon', 'cli.reckon')
    .argument('[id]', say('cli.reckon.id'))
    .option('--list', say('cli.reckon.list'))
    .option('--schema', say('cli.reckon.schema'))
    .option('--sources', say('cli.reckon.sources'))
    .option('--example', say('cli.reckon.example'))
    .action((id, options) => run(options, (session) => reckon(id, options, session), true));

  return program;
}
