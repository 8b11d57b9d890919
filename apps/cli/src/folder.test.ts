import { homedir } from 'node:os';
import { join, resolve } from 'node:path';
import { describe, expect, it } from 'vitest';
import { dataFolder } from './folder.ts';
import { usualUnits } from './settings.ts';

describe('the data folder', () => {
  it('is the one that is said, else the environment’s', () => {
    expect(dataFolder('here', { LOAMWRIGHT_DATA: '/there' }, 'linux', false).path).toBe(resolve('here'));
    expect(dataFolder(undefined, { LOAMWRIGHT_DATA: '/there' }, 'linux', false).path).toBe(resolve('/there'));
  });

  // XDG Base Directory Specification 0.8: $XDG_DATA_HOME, else $HOME/.local/share. macOS and Windows: from memory.
  it.each<readonly [NodeJS.Platform, Record<string, string>, string]>([
    ['linux', { HOME: '/home/nell' }, '/home/nell/.local/share/loamwright'],
    ['linux', { HOME: '/home/nell', XDG_DATA_HOME: '/data' }, '/data/loamwright'],
    ['linux', { HOME: '/home/nell', LOAMWRIGHT_DATA: '' }, '/home/nell/.local/share/loamwright'],
    ['darwin', { HOME: '/Users/nell' }, '/Users/nell/Library/Application Support/Loamwright'],
    ['win32', { HOME: '/u', LOCALAPPDATA: '/u/local' }, '/u/local/Loamwright'],
    ['linux', {}, join(homedir(), '.local', 'share', 'loamwright')],
  ])('is where %s keeps a person’s data, with %j', (platform, environment, expected) => {
    expect(dataFolder(undefined, environment, platform, false).path).toBe(expected);
  });

  it('keeps the demo garden apart', () => {
    const own = dataFolder('/garden', {}, 'linux', false);
    const demo = dataFolder('/garden', {}, 'linux', true);
    expect(demo.path).toBe(own.path);
    expect([demo.daybook, demo.lastMix]).not.toEqual(expect.arrayContaining([own.daybook, own.lastMix]));
  });
});

describe('the usual units', () => {
  // Unicode CLDR, supplemental measurementData: US customary in the United States, Liberia and Myanmar (from memory).
  it.each([
    ['en_US.UTF-8', 'us'],
    ['en-US', 'us'],
    ['my_MM', 'us'],
    ['en_GB.UTF-8', 'metric'],
    ['de-DE', 'metric'],
    ['C.UTF-8', 'metric'],
    ['en-USA', 'metric'],
    ['', 'metric'],
  ])('of %j are %s', (locale, units) => {
    expect(usualUnits(locale)).toBe(units);
  });
});
