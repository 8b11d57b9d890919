import type { Holding } from '@loamwright/daybook';
import { allMaterials, doubtfulInputs, generalNames, type MaterialWords, type Vocabulary } from '@loamwright/science';
import type { Speaker } from '@loamwright/words';

/** What may be typed for a material on this holding, in the speaker's language. */
export function vocabularyOf(speaker: Speaker, holding: Holding): Vocabulary {
  const published = new Set(allMaterials.map(({ id }) => id));
  const named = [...holding.materials.values()].flatMap(({ id, described }) =>
    described === null ? [] : [{ id, name: described.body.name, words: '' }],
  );
  return {
    own: named.filter(({ id }) => !published.has(id)),
    materials: allMaterials.map(({ id }) => {
      const { name, words } = wordsOf(speaker, 'material', id);
      return { id, name, words: [words, ...named.flatMap((own) => (own.id === id ? [own.name] : []))].join(',') };
    }),
    doubtful: doubtfulInputs.map(({ id }) => wordsOf(speaker, 'doubtful', id)),
    general: generalNames.map(({ id, materials }) => ({
      ...wordsOf(speaker, 'general', id),
      name: id.replaceAll('-', ' '),
      materials,
    })),
  };
}

function wordsOf(speaker: Speaker, kind: 'material' | 'doubtful' | 'general', id: string): MaterialWords {
  return { id, name: speaker.sayIf(`${kind}.${id}.name`, id), words: speaker.sayIf(`${kind}.${id}.words`, '') };
}
