import { hostname } from 'node:os';
import { good, type Outcome } from '@loamwright/science';
import type { UnitSystem } from '@loamwright/units';
import { createSpeaker, type Speaker } from '@loamwright/words';
import { type DataFolder, dataFolder, type Environment } from './folder.ts';
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

/** Problems: `settings-broken`, `not-one-of`, and `folder-unusable` where a setting was to be remembered. */
export function openSession(options: CommonOptions, surroundings: Surroundings): Outcome<Session> {
  const demo = options.demo === true;
  const folder = dataFolder(options.data, surroundings.environment, surroundings.platform, demo);
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

/** The session's device, remembered from the first entry on. A data folder copied to another computer becomes another device. */
export function deviceOf(session: Session): Outcome<{ readonly device: string; readonly session: Session }> {
  const { settings, folder } = session;
  const computer = hostname();
  if (settings.device?.computer === computer) return good({ device: settings.device.id, session });
  const device = { id: session.newId(), computer };
  const kept = writeSettings(folder.settings, { ...settings, device });
  return kept.ok ? good({ device: device.id, session: { ...session, settings: kept.value } }) : kept;
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
