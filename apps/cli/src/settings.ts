import { existsSync, mkdirSync, readFileSync, renameSync, writeFileSync } from 'node:fs';
import { dirname } from 'node:path';
import { bad, check, good, type Outcome } from '@loamwright/science';
import type { UnitSystem } from '@loamwright/units';
import { z } from 'zod';

/** A writer of entries, and the computer on which it became one. */
export interface Device {
  readonly id: string;
  readonly computer: string;
}

/** What is remembered in a data folder beside the daybook: settings, never facts. */
export interface Settings {
  readonly units?: UnitSystem | undefined;
  /** The person who writes, as an entry names them. */
  readonly by?: string | undefined;
  /** This program as a writer of entries, of the person's own daybook and of the demo garden's. */
  readonly devices?: { readonly own?: Device | undefined; readonly demo?: Device | undefined } | undefined;
  /** The grower's own sizes, litres by measure. */
  readonly measures_L?: Readonly<Record<string, number>> | undefined;
}

const deviceSchema: z.ZodType<Device> = z.strictObject({ id: z.string(), computer: z.string() });

const settingsSchema: z.ZodType<Settings> = z.looseObject({
  units: z.enum(['us', 'metric']).optional(),
  by: z.string().optional(),
  devices: z.strictObject({ own: deviceSchema.optional(), demo: deviceSchema.optional() }).optional(),
  measures_L: z.record(z.string(), z.number().positive()).optional(),
});

/** Problem: `settings-broken`. */
export function readSettings(file: string): Outcome<Settings> {
  if (!existsSync(file)) return good({});
  const broken = (found: string): Outcome<never> => bad({ code: 'settings-broken', path: file, found, wanted: '' });
  try {
    const checked = check(settingsSchema, JSON.parse(readFileSync(file, 'utf8')));
    return checked.ok ? checked : broken(checked.problems.map(({ path }) => path).join(', '));
  } catch (error) {
    return broken(error instanceof Error ? error.message : String(error));
  }
}

/** Problem: `folder-unusable`. */
export function writeSettings(file: string, settings: Settings): Outcome<Settings> {
  const written = writeWhole(file, `${JSON.stringify(settings, null, 2)}\n`);
  return written.ok ? good(settings) : written;
}

/** Writes a file whole or not at all. Problem: `folder-unusable`. */
export function writeWhole(file: string, text: string): Outcome<string> {
  try {
    mkdirSync(dirname(file), { recursive: true, mode: 0o700 });
    const draft = `${file}.new`;
    writeFileSync(draft, text, { flush: true });
    renameSync(draft, file);
    return good(file);
  } catch (error) {
    const found = error instanceof Error ? error.message : String(error);
    return bad({ code: 'folder-unusable', path: dirname(file), found, wanted: '' });
  }
}

/** US measures for people in the three countries that use them, as far as the language setting tells. */
export function usualUnits(locale: string): UnitSystem {
  return /[-_](?:US|LR|MM)(?:$|[.@_-])/u.test(locale) ? 'us' : 'metric';
}
