import { describe, expect, it } from 'vitest';
import { missingPackages } from './install.mjs';

const linux = { os: 'linux', cpu: 'x64', libc: 'glibc' };
const wanted = {
  packages: {
    '': { version: '0.1.0' },
    'packages/units': { version: '0.1.0' },
    'node_modules/@loamwright/units': { link: true },
    'node_modules/plain': { version: '1.2.3', integrity: 'sha512-a' },
    'node_modules/prebuilt-linux': {
      version: '2.0.0',
      integrity: 'sha512-b',
      optional: true,
      os: ['linux'],
      cpu: ['x64'],
    },
    'node_modules/prebuilt-musl': {
      version: '2.0.0',
      integrity: 'sha512-c',
      optional: true,
      os: ['linux'],
      cpu: ['x64'],
      libc: ['musl'],
    },
    'node_modules/prebuilt-mac': {
      version: '2.0.0',
      integrity: 'sha512-d',
      optional: true,
      os: ['darwin'],
      cpu: ['arm64'],
    },
    'node_modules/nice-to-have': { version: '3.0.0', integrity: 'sha512-e', optional: true },
  },
};
const installed = {
  packages: {
    'node_modules/@loamwright/units': { link: true },
    'node_modules/plain': { version: '1.2.3', integrity: 'sha512-a' },
    'node_modules/prebuilt-linux': { version: '2.0.0', integrity: 'sha512-b', optional: true },
  },
};

describe('what is missing of an install', () => {
  it('is nothing when all that this machine needs is there', () => {
    expect(missingPackages(wanted, installed, linux)).toEqual([]);
  });

  it('is every package where nothing was installed, save what other machines need', () => {
    expect(missingPackages(wanted, {}, linux)).toEqual([
      'node_modules/@loamwright/units',
      'node_modules/plain',
      'node_modules/prebuilt-linux',
    ]);
  });

  it('is a package of another version, or of another content', () => {
    const older = {
      packages: { ...installed.packages, 'node_modules/plain': { version: '1.2.2', integrity: 'sha512-a' } },
    };
    const other = {
      packages: { ...installed.packages, 'node_modules/plain': { version: '1.2.3', integrity: 'sha512-z' } },
    };
    expect(missingPackages(wanted, older, linux)).toEqual(['node_modules/plain']);
    expect(missingPackages(wanted, other, linux)).toEqual(['node_modules/plain']);
  });

  it('is the prebuilt program of this machine when the folder came from another', () => {
    const mac = { os: 'darwin', cpu: 'arm64', libc: undefined };
    expect(missingPackages(wanted, installed, mac)).toEqual(['node_modules/prebuilt-mac']);
    expect(missingPackages(wanted, installed, { ...linux, libc: 'musl' })).toEqual(['node_modules/prebuilt-musl']);
  });
});
