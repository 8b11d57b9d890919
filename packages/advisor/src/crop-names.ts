import { allCrops, nearest } from '@loamwright/science';
import type { Speaker } from '@loamwright/words';

/** What a name of a crop was found to mean, or the nearest names. */
export type CropFound = { readonly id: string } | { readonly nearest: readonly string[] };

/** A crop by its id, its name or another word for it; case, hyphens and a plural make no difference. */
export function cropNamed(typed: string, speaker: Speaker): CropFound {
  const asked = plain(typed);
  const words = allCrops.flatMap(({ id }) =>
    [id, speaker.sayIf(`crop.${id}.name`, ''), ...speaker.sayIf(`crop.${id}.words`, '').split(',')]
      .map(plain)
      .filter((word) => word !== '')
      .map((word) => ({ id, word })),
  );
  const found = words.find(({ word }) => word === asked);
  if (found !== undefined) return { id: found.id };
  const near = nearest(
    asked,
    words.map(({ word }) => word),
  );
  const ids = new Set(near.flatMap((word) => words.find((one) => one.word === word)?.id ?? []));
  return { nearest: [...ids].map((id) => speaker.sayIf(`crop.${id}.name`, id)) };
}

/** A crop as an entry keeps it: a known one by the name the tables have for it, another as it was typed. */
export function cropToKeep(typed: string, speaker: Speaker): string {
  const name = typed.trim().slice(0, LONGEST);
  if (name === '') return '';
  const found = cropNamed(name, speaker);
  return 'id' in found ? speaker.sayIf(`crop.${found.id}.name`, found.id) : name;
}

const LONGEST = 60;

function plain(name: string): string {
  return name
    .normalize('NFC')
    .toLowerCase()
    .replaceAll('-', ' ')
    .trim()
    .split(/\s+/u)
    .map((word) => (word.length > 3 ? word.replace(/(?<=[^s])s$/u, '').replace(/(?<=o)e$/u, '') : word))
    .join(' ');
}
