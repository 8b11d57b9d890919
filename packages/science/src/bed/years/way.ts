import { likely, type Quantity } from '../../estimate/index.ts';
import { carbonParameters } from './carbon-parameters.ts';

/**
 * From what the carbon of a soil is reckoned at the start. `by-organic-matter`: a mineral soil whose organic matter was tested;
 * what the soil weighs follows from it and the texture. `by-dry-soil`: more organic matter than mineral soils hold; the test is
 * taken as a share of dry soil that weighs what it does where the equations end. `by-nothing-known`: nobody tested.
 */
export const carbonWays = ['by-organic-matter', 'by-dry-soil', 'by-nothing-known'] as const;
export type CarbonWay = (typeof carbonWays)[number];

/** @param organicMatter_pctDry of a test, percent of dry soil; its likely value decides */
export function wayOf(organicMatter_pctDry: Quantity | undefined): CarbonWay {
  if (organicMatter_pctDry === undefined) return 'by-nothing-known';
  return likely(organicMatter_pctDry) > carbonParameters.mineralSoil_pctDry.value ? 'by-dry-soil' : 'by-organic-matter';
}
