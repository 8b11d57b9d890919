// The counts that README.md and reference/README.md tell are those of the data.
import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { root } from '../../scripts/lib/root.mjs';

const read = (path: string): string => readFileSync(join(root, path), 'utf8');
const table = <Table>(name: string): Table => JSON.parse(read(`reference/${name}.json`)) as Table;

/** A figure of its own, or the name of the material whose figure stands for it. */
type Value = { readonly mark: string } | { readonly like: string };

const { materials } = table<{ readonly materials: readonly { readonly values: Readonly<Record<string, Value>> }[] }>(
  'materials',
);
const { crops } = table<{ readonly crops: readonly { readonly cover?: unknown }[] }>('crops');
const { rules } = table<{ readonly rules: readonly unknown[] }>('rule-sets');

const values = materials.flatMap((material) => Object.values(material.values));
const own = values.filter((value) => 'mark' in value);
const counts = {
  materials: materials.length,
  figures: own.length,
  recalled: own.filter(({ mark }) => mark === 'memory').length,
  pointing: values.length - own.length,
  covers: crops.filter(({ cover }) => cover !== undefined).length,
  rules: rules.length,
};

describe('the counts that the documents tell', () => {
  it.each([
    ['README.md', `${counts.materials} garden materials`],
    ['README.md', `${counts.rules} rule sets`],
    [
      'README.md',
      `${counts.recalled} of the ${counts.figures} figures of the materials table, more than half, are recalled`,
    ],
    ['README.md', `Another ${counts.pointing} are taken from a material that is like it`],
    ['reference/README.md', `${counts.materials} materials`],
    ['reference/README.md', `Of ${counts.figures} figures in \`materials.json\` ${counts.recalled} are recalled`],
    ['reference/README.md', `${counts.pointing} more places point to a figure of another material`],
    ['reference/README.md', `${crops.length - counts.covers} crops want`],
    ['reference/README.md', `${counts.covers} cover crops bring`],
  ])('%s says: %s', (path, words) => {
    expect(read(path).replace(/\s+/gu, ' ')).toContain(words);
  });

  it('more than half is more than half', () => {
    expect(counts.recalled / counts.figures).toBeGreaterThan(0.5);
  });
});
