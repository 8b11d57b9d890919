import { existsSync, statSync } from 'node:fs';
import { homedir } from 'node:os';
import { join, resolve } from 'node:path';

/** A place to look for settings: the environment of a process. */
export type Environment = Readonly<Record<string, string | undefined>>;

/** The files of a data folder. */
export interface DataFolder {
  readonly path: string;
  readonly daybook: string;
  readonly settings: string;
  /** The last mix that was reckoned, for `build`. */
  readonly lastMix: string;
  /** The computer that is exchanged with. */
  readonly partner: string;
}

/**
 * The data folder: as said, else LOAMWRIGHT_DATA, else where the system keeps a person's data. The demo garden's files
 * lie beside the person's own, under names of their own.
 */
export function dataFolder(
  said: string | undefined,
  environment: Environment,
  platform: NodeJS.Platform,
  demo: boolean,
): DataFolder {
  const named = said ?? nonEmpty(environment['LOAMWRIGHT_DATA']);
  const path = named === undefined ? usualFolder(environment, platform) : resolve(named);
  return {
    path,
    daybook: join(path, demo ? 'demo.sqlite' : 'daybook.sqlite'),
    settings: join(path, 'settings.json'),
    lastMix: join(path, demo ? 'demo-last-mix.json' : 'last-mix.json'),
    partner: join(path, 'exchange.json'),
  };
}

/** Linux: XDG Base Directory Specification; macOS and Windows: their own application data folders. */
function usualFolder(environment: Environment, platform: NodeJS.Platform): string {
  const home = nonEmpty(environment['HOME']) ?? homedir();
  switch (platform) {
    case 'win32':
      return join(nonEmpty(environment['LOCALAPPDATA']) ?? join(home, 'AppData', 'Local'), 'Loamwright');
    case 'darwin':
      return join(home, 'Library', 'Application Support', 'Loamwright');
    default:
      return join(nonEmpty(environment['XDG_DATA_HOME']) ?? join(home, '.local', 'share'), 'loamwright');
  }
}

/** Whether something other than a folder stands where the data folder should be. */
export function isNoFolder(path: string): boolean {
  return existsSync(path) && !statSync(path).isDirectory();
}

function nonEmpty(text: string | undefined): string | undefined {
  return text === '' ? undefined : text;
}
