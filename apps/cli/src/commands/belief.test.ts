import { beliefs } from '@loamwright/science';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { flat, type Garden, garden } from '../testing/garden.ts';

let home: Garden;
beforeEach(() => {
  home = garden();
});
afterEach(() => home.remove());

describe('belief', () => {
  it('lists every belief', async () => {
    const { code, out } = await home.run(['belief']);
    expect(code).toBe(0);
    expect(out.match(/^- /gmu)).toHaveLength(beliefs.length);
    const { value } = await home.json(['belief']);
    expect(value).toHaveLength(beliefs.length);
  });

  it('looks one up by its words, and says what is published of it, by whom and how well founded it is', async () => {
    const { code, out } = await home.run(['belief', '80', 'brown']);
    expect(code).toBe(0);
    const text = flat(out);
    expect(text).toContain('“At least 80 % of a heap must be brown.”');
    expect(text).toContain('the evidence is fair');
    expect(text).toMatch(/- CalRecycle, Home composting: .* \(read in the source\)/u);
  });

  it('says where there is no source', async () => {
    expect(flat((await home.run(['belief', 'soap'])).out)).toContain('common practice, no source');
  });

  it('asks again where nothing is known by the words', async () => {
    const { code, err } = await home.run(['belief', 'xylophone']);
    expect(code).toBe(2);
    expect(err).toContain('loamwright belief');
  });

  it('is met in the answer of a mix that may rest on it, with two at the most', async () => {
    const grass = flat((await home.run(['mix', 'grass=6 barrows', 'leaves=6 barrows'])).out);
    expect(grass).toContain('A heap need not be 80 % brown');
    const { value } = await home.json(['belief', 'grass', 'alone']);
    const [{ says = '' } = {}] = value as readonly { readonly says?: string }[];
    expect(says).not.toBe('');
    expect(grass).not.toContain(says);
    expect(flat((await home.run(['mix', 'grass=6 barrows'])).out)).toContain(says);
    expect(flat((await home.run(['mix', 'straw=6 barrows', 'goat bedding=4 barrows'])).out)).not.toContain('brown');
  });
});
