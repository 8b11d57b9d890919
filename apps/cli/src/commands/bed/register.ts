import type { Command } from 'commander';
import type { Register } from '../../register.ts';
import { bedBudgetCommand } from './budget.ts';
import { bedLime } from './lime.ts';
import { bedTest } from './soil-test.ts';

/** What a bed is, has and had: for every command that asks how much goes on it. */
export function bedOptions(on: Command, say: Register['say']): Command {
  return on
    .option('--bed <name>', say('cli.bed.budget.bed'))
    .option('--area <area>', say('cli.bed.budget.area'))
    .option('--put <stuff...>', say('cli.bed.budget.put'))
    .option('--for <year>', say('cli.bed.budget.for'))
    .option('--mulch', say('cli.bed.budget.mulch'))
    .option('--after <days>', say('cli.bed.budget.after'))
    .option('--weather <weather>', say('cli.bed.budget.weather'))
    .option('--before <crops...>', say('cli.bed.budget.before'))
    .option('--soil <results...>', say('cli.bed.budget.soil'))
    .option('--sandy', say('cli.bed.budget.sandy'))
    .option('--by-harvest', say('cli.bed.budget.byHarvest'));
}

/** The commands under `loamwright bed`. */
export function registerBed(bed: Command, { under, say, run }: Register): void {
  bedOptions(under(bed, 'budget', 'cli.bed.budget').argument('[crops...]', say('cli.bed.budget.crops')), say)
    .option('--fertiliser <grades...>', say('cli.bed.budget.fertiliser'))
    .option('--soil-temp <temperature>', say('cli.bed.budget.soilTemp'))
    .option('--days <days>', say('cli.bed.budget.days'))
    .option('--size <size...>', say('cli.option.size'))
    .option('--full', say('cli.bed.budget.full'))
    .action((crops, options) => run(options, (session) => bedBudgetCommand(crops, options, session)));

  under(bed, 'test', 'cli.bed.test')
    .argument('<figures...>', say('cli.bed.test.figures'))
    .option('--method <method>', say('cli.bed.test.method'))
    .action((figures, options) => run(options, async (session) => bedTest(figures, options, session)));

  under(bed, 'lime', 'cli.bed.lime')
    .option('--ph <figure>', say('cli.bed.lime.ph'))
    .option('--texture <texture>', say('cli.bed.lime.texture'))
    .option('--buffer <reading>', say('cli.bed.lime.buffer'))
    .option('--to <figure>', say('cli.bed.lime.to'))
    .option('--ash', say('cli.bed.lime.ash'))
    .option('--value <percent>', say('cli.bed.lime.value'))
    .option('--area <area>', say('cli.bed.lime.area'))
    .option('--crops <crops...>', say('cli.bed.lime.crops'))
    .action((options) => run(options, async (session) => bedLime(options, session)));
}
