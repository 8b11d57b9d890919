import type { Command } from 'commander';
import type { Register } from '../../register.ts';
import { safeHarvest } from './harvest.ts';

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
}
