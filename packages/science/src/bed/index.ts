export {
  allCrops,
  type Crop,
  cropById,
  cropGroups,
  type SoilContact,
  saltYield_pct,
  soilContactIds,
} from './crops.ts';
