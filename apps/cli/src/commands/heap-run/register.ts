import { type Command, Option } from 'commander';
import type { Register } from '../../register.ts';
import { runHeapCommand } from './run.ts';
import { sizeOfHeap } from './size.ts';

/** An option that may be said again and again, and takes one word each time, so that stuff may stand after it. */
function repeated(flags: string, summary: string): Option {
  return new Option(flags, summary).argParser((text: string, before: readonly string[] = []) => [...before, text]);
}

const forms = ['bay', 'dome', 'cone', 'long', 'drum', 'trench'] as const;
const weathers = ['air', 'climate', 'weather', 'place'] as const;

/** One of several options at the most. */
function oneOf<Name extends string>(
  names: readonly Name[],
  flags: Readonly<Record<Name, string>>,
  summary: (name: Name) => string,
) {
  return names.map((name) =>
    new Option(`--${name} ${flags[name]}`, summary(name)).conflicts(names.filter((other) => other !== name)),
  );
}

function weatherOptions(on: Command, say: Register['say']): Command {
  const flags = { air: '<temperature>', climate: '<temperatures>', weather: '<file>', place: '<north,east>' } as const;
  for (const option of oneOf(weathers, flags, (name) => say(`cli.heap.run.${name}`))) on.addOption(option);
  return on
    .option('--built <time>', say('cli.heap.run.built'))
    .option('--south', say('cli.heap.run.south'))
    .option('--rain <depth>', say('cli.heap.run.rain'))
    .option('--wind <speed>', say('cli.heap.run.wind'))
    .option('--humidity <percent>', say('cli.heap.run.humidity'))
    .option('--unit <unit>', say('cli.csv.unit'))
    .option('--dates <order>', say('cli.csv.dates'));
}

function standingOptions(on: Command, say: Register['say']): Command {
  return on
    .option('--walls <walls>', say('cli.heap.run.walls'))
    .option('--cover <cover>', say('cli.heap.run.cover'))
    .option('--shelter <shelter>', say('cli.heap.run.shelter'));
}

/**
 * The commands under `loamwright heap`: what a heap would do, and how large it must be. What every command takes is read by `heap`
 * itself, wherever it stands; hence the options of both.
 */
export function registerHeapRun(heap: Command, { under, say, run }: Register): void {
  const running = under(heap, 'run', 'cli.heap.run')
    .argument('[stuff...]', say('cli.heap.run.stuff'))
    .option('--water <amount>', say('cli.heap.run.water'));
  const sides = {
    bay: '<bay>',
    dome: '<size>',
    cone: '<size>',
    long: '<size>',
    drum: '<size>',
    trench: '<size>',
  } as const;
  for (const option of oneOf(forms, sides, (name) => say(`cli.heap.run.${name}`))) running.addOption(option);
  standingOptions(running, say);
  weatherOptions(running, say)
    .option('--start <temperature>', say('cli.heap.run.start'))
    .addOption(repeated('--turn <day>', say('cli.heap.run.turn')))
    .addOption(repeated('--water-on <day>', say('cli.heap.run.waterOn')))
    .addOption(repeated('--cover-on <day>', say('cli.heap.run.coverOn')))
    .addOption(repeated('--add <stuff>', say('cli.heap.run.add')))
    .option('--chopped', say('cli.heap.run.chopped'))
    .option('--days <count>', say('cli.heap.run.days'))
    .option('--members <count>', say('cli.heap.run.members'))
    .option('--shells <count>', say('cli.heap.run.shells'))
    .option('--csv', say('cli.heap.run.csv'))
    .option('--size <size...>', say('cli.option.size'))
    .action((stuff, _options, command: Command) => {
      const options = command.optsWithGlobals();
      return run(options, (session) => runHeapCommand(stuff, options, session));
    });

  const sizing = under(heap, 'size', 'cli.heap.size')
    .argument('[stuff...]', say('cli.heap.size.stuff'))
    .option('--water <amount>', say('cli.heap.run.water'));
  standingOptions(sizing, say);
  weatherOptions(sizing, say)
    .option('--start <temperature>', say('cli.heap.run.start'))
    .option('--above <temperature>', say('cli.heap.size.above'))
    .option('--days <count>', say('cli.heap.size.days'))
    .option('--size <size...>', say('cli.option.size'))
    .action((stuff, _options, command: Command) => {
      const options = command.optsWithGlobals();
      return run(options, (session) => sizeOfHeap(stuff, options, session));
    });
}
