import type { Command } from 'commander';
import type { Register } from '../../register.ts';
import { bedBalance } from './balance.ts';
import { bedBudgetCommand } from './budget.ts';
import { bedChar } from './char.ts';
import { bedDroppings } from './droppings.ts';
import { bedLime } from './lime.ts';
import { bedShow } from './show.ts';
import { bedTest } from './soil-test.ts';
import { bedWater } from './water.ts';
import { bedHarvest, bedPut, bedSet, bedSow } from './write.ts';
import { bedYears } from './years.ts';

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

/** The commands that show a bed and write about it. */
function registerKept(bed: Command, { under, say, run }: Register): void {
  under(bed, 'show', 'cli.bed.show')
    .argument('[bed]', say('cli.bed.show.bed'))
    .action((name, options) => run(options, (session) => bedShow(name, session)));

  const writing = (on: Command): Command =>
    on.option('--when <time>', say('cli.option.when')).option('--note <text>', say('cli.option.note'));

  writing(
    under(bed, 'set', 'cli.bed.set')
      .argument('<bed>', say('cli.bed.show.bed'))
      .argument('[area]', say('cli.bed.set.area'))
      .option('--depth <depth>', say('cli.bed.set.depth'))
      .option('--texture <texture>', say('cli.bed.years.texture')),
  ).action((name, area, options) => run(options, (session) => bedSet(name, area, options, session)));

  writing(
    under(bed, 'sow', 'cli.bed.sow')
      .argument('<bed>', say('cli.bed.show.bed'))
      .argument('<crop>', say('cli.bed.sow.crop'))
      .option('--area <area>', say('cli.bed.sow.area')),
  ).action((name, crop, options) => run(options, (session) => bedSow(name, crop, options, session)));

  writing(
    under(bed, 'harvest', 'cli.bed.harvest')
      .argument('<bed>', say('cli.bed.show.bed'))
      .argument('<crop>', say('cli.bed.sow.crop'))
      .option('--mass <mass>', say('cli.bed.harvest.mass'))
      .option('--last', say('cli.bed.harvest.last')),
  ).action((name, crop, options) => run(options, (session) => bedHarvest(name, crop, options, session)));

  writing(
    under(bed, 'put', 'cli.bed.put')
      .argument('<bed>', say('cli.bed.show.bed'))
      .argument('<stuff...>', say('cli.bed.put.stuff'))
      .option('--mulch', say('cli.bed.put.mulch'))
      .option('--from-stock', say('cli.option.fromStock')),
  ).action((name, stuff, options) => run(options, (session) => bedPut(name, stuff, options, session)));
}

/** The commands under `loamwright bed`. */
export function registerBed(bed: Command, register: Register): void {
  registerKept(bed, register);
  const { under, say, run } = register;
  bedOptions(under(bed, 'budget', 'cli.bed.budget').argument('[crops...]', say('cli.bed.budget.crops')), say)
    .option('--fertiliser <grades...>', say('cli.bed.budget.fertiliser'))
    .option('--soil-temp <temperature>', say('cli.bed.budget.soilTemp'))
    .option('--days <days>', say('cli.bed.budget.days'))
    .option('--size <size...>', say('cli.option.size'))
    .option('--full', say('cli.bed.budget.full'))
    .action((crops, options) => run(options, (session) => bedBudgetCommand(crops, options, session)));

  under(bed, 'test', 'cli.bed.test')
    .argument('[figures...]', say('cli.bed.test.figures'))
    .option('--method <method>', say('cli.bed.test.method'))
    .option('--keep <bed>', say('cli.bed.test.keep'))
    .option('--ph <figure>', say('cli.bed.test.ph'))
    .option('--om <percent>', say('cli.bed.test.om'))
    .option('--lab <name>', say('cli.bed.test.lab'))
    .option('--when <time>', say('cli.option.when'))
    .action((figures, options) => run(options, (session) => bedTest(figures, options, session)));

  under(bed, 'balance', 'cli.bed.balance')
    .argument('[heaped...]', say('cli.bed.balance.heaped'))
    .option('--straight <stuff...>', say('cli.bed.balance.straight'))
    .option('--spread <amount>', say('cli.bed.balance.spread'))
    .option('--crops <crops...>', say('cli.bed.balance.crops'))
    .option('--rain <how>', say('cli.yield.rain'))
    .option('--for <year>', say('cli.bed.budget.for'))
    .option('--after <days>', say('cli.bed.balance.after'))
    .option('--mulch', say('cli.bed.balance.mulch'))
    .option('--size <size...>', say('cli.option.size'))
    .action((heaped, options) => run(options, (session) => bedBalance(heaped, options, session)));

  under(bed, 'droppings', 'cli.bed.droppings')
    .argument('<count>', say('cli.bed.droppings.count'))
    .argument('<animal>', say('cli.bed.droppings.animal'))
    .option('--days <count>', say('cli.bed.droppings.days'))
    .action((count, animal, options) => run(options, async (session) => bedDroppings(count, animal, options, session)));

  under(bed, 'lime', 'cli.bed.lime')
    .option('--ph <figure>', say('cli.bed.lime.ph'))
    .option('--texture <texture>', say('cli.bed.lime.texture'))
    .option('--buffer <reading>', say('cli.bed.lime.buffer'))
    .option('--to <figure>', say('cli.bed.lime.to'))
    .option('--ash', say('cli.bed.lime.ash'))
    .option('--value <percent>', say('cli.bed.lime.value'))
    .option('--potash <percent>', say('cli.bed.lime.potash'))
    .option('--potassium <percent>', say('cli.bed.lime.potassium'))
    .option('--area <area>', say('cli.bed.lime.area'))
    .option('--crops <crops...>', say('cli.bed.lime.crops'))
    .action((options) => run(options, async (session) => bedLime(options, session)));

  under(bed, 'char', 'cli.bed.char')
    .argument('[charcoal]', say('cli.bed.char.charcoal'))
    .option('--area <area>', say('cli.bed.char.area'))
    .option('--depth <depth>', say('cli.bed.char.depth'))
    .option('--mix <volume>', say('cli.bed.char.mix'))
    .option('--soil <soil>', say('cli.bed.char.soil'))
    .option('--ph <figure>', say('cli.bed.char.ph'))
    .option('--weighs <grams>', say('cli.bed.char.weighs'))
    .option('--charged', say('cli.bed.char.charged'))
    .action((charcoal, options) => run(options, async (session) => bedChar(charcoal, options, session)));

  under(bed, 'water', 'cli.bed.water')
    .argument('[layers...]', say('cli.bed.water.layers'))
    .option('--om <percent>', say('cli.bed.water.om'))
    .option('--stones <percent>', say('cli.bed.water.stones'))
    .action((layers, options) => run(options, async (session) => bedWater(layers, options, session)));

  under(bed, 'years', 'cli.bed.years')
    .argument('[bedOrCrops...]', say('cli.bed.years.crops'))
    .option('--bed <name>', say('cli.bed.years.bed'))
    .option('--last <years>', say('cli.bed.years.last'))
    .option('--put <stuff...>', say('cli.bed.years.put'))
    .option('--area <area>', say('cli.bed.years.area'))
    .option('--depth <depth>', say('cli.bed.years.depth'))
    .option('--soil <results...>', say('cli.bed.years.soil'))
    .option('--texture <texture>', say('cli.bed.years.texture'))
    .option('--air <temperature>', say('cli.bed.years.air'))
    .option('--years <years>', say('cli.bed.years.years'))
    .option('--size <size...>', say('cli.option.size'))
    .action((typed, options) => run(options, (session) => bedYears(typed, options, session)));
}
