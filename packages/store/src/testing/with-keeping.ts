import type { Keeping } from '@loamwright/daybook';
import { afterEach, beforeEach } from 'vitest';
import { must } from './entries.ts';
import type { KeepingKit, MakeKit } from './kit.ts';

/** A fresh kit and an open keeping for each test. */
export function withKeeping(makeKit: MakeKit): { readonly kit: () => KeepingKit; readonly keeping: () => Keeping } {
  let kit: KeepingKit | undefined;
  let keeping: Keeping | undefined;
  beforeEach(async () => {
    kit = await makeKit();
    keeping = await kit.open();
  });
  afterEach(async () => {
    await keeping?.close();
    await kit?.dispose();
  });
  return { kit: () => must(kit), keeping: () => must(keeping) };
}
