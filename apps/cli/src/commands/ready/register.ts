import type { MessageKey } from '@loamwright/words';
import type { Command } from 'commander';
import type { Register } from '../../register.ts';
import { ripe } from './ripe.ts';
import { sift } from './sift.ts';
import { yieldOf } from './yield.ts';

/** The commands about a heap that is done, or nearly. */
export function registerReady({
  command,
  say,
  run,
}: Pick<Register, 'say' | 'run'> & { readonly command: (name: string, summary: MessageKey) => Command }): void {
  command('yield', 'cli.yield')
    .argument('[stuff...]', say('cli.yield.stuff'))
    .option('--heap <name>', say('cli.yield.heap'))
    .option('--built <volume>', say('cli.yield.built'))
    .option('--ready <volume>', say('cli.yield.ready'))
    .option('--water <amount>', say('cli.yield.water'))
    .option('--ash <percent>', say('cli.yield.ash'))
    .option('--moisture <percent>', say('cli.yield.moisture'))
    .option('--density <figure>', say('cli.yield.density'))
    .option('--rain <how>', say('cli.yield.rain'))
    .option('--past <heap...>', say('cli.yield.past'))
    .option('--measure <measure>', say('cli.yield.measure'))
    .option('--size <size...>', say('cli.option.size'))
    .action((stuff, options) => run(options, (session) => yieldOf(stuff, options, session)));

  command('sift', 'cli.sift')
    .argument('<volume>', say('cli.sift.volume'))
    .option('--for <use>', say('cli.sift.for'))
    .action((volume, options) => run(options, async (session) => sift(volume, options, session)));

  command('ripe', 'cli.ripe')
    .option('--heap <name>', say('cli.ripe.heap'))
    .option('--keep', say('cli.ripe.keep'))
    .option('--smell <smell>', say('cli.ripe.smell'))
    .option('--stuff-seen', say('cli.ripe.stuffSeen'))
    .option('--after-turn <temperature>', say('cli.ripe.afterTurn'))
    .option('--seedlings <count>', say('cli.ripe.seedlings'))
    .option('--rise <degrees>', say('cli.ripe.rise'))
    .option('--cress <percent>', say('cli.ripe.cress'))
    .option('--ratio <figure>', say('cli.ripe.ratio'))
    .option('--breath <figure>', say('cli.ripe.breath'))
    .option('--breath-co2 <figure>', say('cli.ripe.breathCo2'))
    .option('--oxygen <figure>', say('cli.ripe.oxygen'))
    .option('--oxygen-demand <figure>', say('cli.ripe.oxygenDemand'))
    .option('--ammonium <figure>', say('cli.ripe.ammonium'))
    .option('--nitrate <figure>', say('cli.ripe.nitrate'))
    .option('--acids <figure>', say('cli.ripe.acids'))
    .action((options) => run(options, (session) => ripe(options, session)));
}
