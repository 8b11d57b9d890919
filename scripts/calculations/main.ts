import { highsSolver } from '@loamwright/science';
import loadHighs from 'highs';
import { calculationPages } from './pages.ts';

/** Every reference page as it should be. */
export const pages: ReadonlyMap<string, string> = calculationPages(highsSolver(await loadHighs()));
