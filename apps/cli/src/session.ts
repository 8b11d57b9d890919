import { hostname } from 'node:os';
import { bad, good, type Outcome } from '@loamwright/science';
import type { UnitSystem } from '@loamwright/units';
import { createSpeaker, type Speaker } from '@loamwright/words';
import { type DataFolder, dataFolder, type Environment, isNoFolder } from './folder.ts';
import { readSettings, type Settings, usualUnits, writeSettings } from './settings.ts';
import type { Terminal } from './terminal.ts';

/** What a process brings with it; tests bring their own. */
export interface Surroundings {
  readonly environment: Environment;
  readonly platform: NodeJS.Platform;
  readonly terminal: Terminal;
  readonly now: () => Date;
  /** The IANA zone of the garden: that of the computer. */
  readonly zone: string;
  /** A new UUIDv7. */
  readonly newId: () => string;
  /** The server's program, which `start` runs. */
  readonly serverFile: string;
}

/** Options that every command takes. */
export interface CommonOptions {
  readonly json?: boolean | undefined;
  readonly data?: string | undefined;
  readonly demo?: boolean | undefined;
  readonly units?: string | undefined;
  readonly by?: string | undefined;
}

/** One run of one command: where it reads, prints and keeps. */
export interface Session extends Surroundings {
  readonly json: boolean;
  readonly demo: boolean;
  readonly folder: DataFolder;
  readonly settings: Settings;
  readonly speaker: Speaker;
}

/** Problems: `data-not-folder`, `settings-broken`, `not-one-of`, and `folder-unusable` where a setting was to be remembered. */
export function openSession(options: CommonOptions, surroundings: Surroundings): Outcome<Session> {
  const demo = options.demo === true;
  const folder = dataFolder(options.data, surroundings.environment, surroundings.platform, demo);
  if (isNoFolder(folder.path)) {
    const path = options.data === undefined ? 'LOAMWRIGHT_DATA' : '--data';
    return bad({ code: 'data-not-folder', path, found: folder.path, wanted: '' });
  }
  const read = readSettings(folder.settings);
  if (!read.ok) return read;
  const units = readUnits(options.units);
  if (!units.ok) return units;
  const settings = {
    ...read.value,
    ...(units.value && { units: units.value }),
    ...(options.by && { by: personId(options.by) }),
  };
  const changed = settings.units !== read.value.units || settings.by !== read.value.by;
  const kept = changed ? writeSettings(folder.settings, settings) : good(settings);
  if (!kept.ok) return kept;
  const system = settings.units ?? usualUnits(localeOf(surroundings.environment));
  return good({
    ...surroundings,
    json: options.json === true,
    demo,
    folder,
    settings,
    speaker: createSpeaker({ locale: 'en', system }),
  });
}

/**
 * Who writes. A device keeps its id as long as its entries lie here and the data folder stays on its computer: were the
 * entries lost or the folder copied and the id kept, two entries would claim one number.
 *
 * @param known the devices that have written into this daybook.
 */
export function deviceOf(session: Session, known: readonly string[]): Outcome<string> {
  const { settings, folder, demo, newId } = session;
  const book = demo ? 'demo' : 'own';
  const computer = hostname();
  const before = settings.devices?.[book];
  if (before !== undefined && before.computer === computer && known.includes(before.id)) return good(before.id);
  const device = { id: newId(), computer };
  const kept = writeSettings(folder.settings, { ...settings, devices: { ...settings.devices, [book]: device } });
  return kept.ok ? good(device.id) : kept;
}

function readUnits(said: string | undefined): Outcome<UnitSystem | undefined> {
  if (said === undefined || said === 'us' || said === 'metric') return good(said);
  return {
    ok: false,
    problems: [{ code: 'not-one-of', path: '--units', found: said.slice(0, 60), wanted: 'us, metric' }],
  };
}

function localeOf(environment: Environment): string {
  return (
    environment['LC_ALL'] ||
    environment['LC_MEASUREMENT'] ||
    environment['LANG'] ||
    Intl.DateTimeFormat().resolvedOptions().locale
  );
}

/** A person's name as an entry carries it. */
function personId(name: string): string {
  const word = name
    .normalize('NFD')
    .toLowerCase()
    .replace(/\p{M}/gu, '')
    .replace(/[^a-z0-9]+/gu, '-')
    .slice(0, 60)
    .replace(/^-+|-+$/gu, '');
  return word === '' ? 'keeper' : word;
}
