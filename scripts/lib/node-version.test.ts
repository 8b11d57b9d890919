import { describe, expect, it } from 'vitest';
import { nodeProblem } from './node-version.mjs';

describe('the version of Node', () => {
  it.each(['20.19.0', '20.20.2', '22.12.0', '22.21.1', '23.0.0', '24.1.0'])('%s will do', (version) => {
    expect(nodeProblem(version)).toBeUndefined();
  });

  it.each(['18.20.4', '20.18.3', '21.7.3', '22.11.0'])('%s will not, and the message says what would', (version) => {
    expect(nodeProblem(version)).toMatch(/needs Node 20\.19 or later.*this is Node [\d.]+\..*will do/);
  });
});
