import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { flat, type Garden, garden } from '../testing/garden.ts';

let home: Garden;
beforeEach(() => {
  home = garden();
});
afterEach(() => home.remove());

describe('why', () => {
  it('O03 of the question bank: with nothing known, three things to look at and no list of everything', async () => {
    const { code, out } = await home.run(['why', '--units', 'us']);
    expect(code).toBe(0);
    expect(out.match(/^- /gmu)).toHaveLength(3);
    const text = flat(out);
    expect(text).toMatch(/how wide and how high.*Squeeze a handful.*what went in/u);
    for (const figure of ['3 × 3 × 3 ft', 'a few drops', 'C:N 25 to 40']) expect(text).toContain(figure);
    expect(text).toContain('own judgement');
  });

  it('with options only: the likeliest cause, why, and one act with its amount', async () => {
    const args = ['why', '--size', '3x3x3ft', '--squeeze', 'dusty', '--built', '2 weeks ago', '--units', 'us'];
    const text = flat((await home.run(args)).out);
    expect(text).toContain('Likeliest it is too dry, about 8 in 10.');
    expect(text).toMatch(/pour on about \d+ gal/u);
    expect(text).toContain('What speaks for it: the squeeze.');
  });

  it('from the daybook, and what is said goes before it', async () => {
    const built = ['build', 'leaves=10bags', '--name', 'Leaf heap', '--bay', '1x1x1m', '--when', '2 weeks ago'];
    await home.run([...built, '--units', 'metric']);
    await home.run(['log', 'Leaf heap', '18C', '--squeeze', 'crumbles', '--air', '12C', '--when', '5 days ago']);
    const { value } = await home.json(['why', 'leaf heap']);
    expect(value).toMatchObject({ input: { squeeze: 'crumbles', temp_degC: 18, air_degC: 12 }, decision: 'act' });
    const [{ cause = '' } = {}] = (value as { causes: readonly { cause?: string }[] }).causes;
    expect(['too-dry', 'little-nitrogen']).toContain(cause);
    const poorer = await home.json(['why', 'leaf heap', '--squeeze', 'drops']);
    expect(poorer.value).toMatchObject({ causes: [{ cause: 'little-nitrogen' }], act: 'add-nitrogen' });
  });

  it('what may burn is told first, with its caution', async () => {
    const text = flat((await home.run(['why', '--reading', '185F', '--squeeze', 'dusty'])).out);
    expect(text).toContain('it may be on fire');
    expect(text).toContain('! Fire');
    expect(flat((await home.run(['why', '--reading', '50C'])).out)).toContain('it is at work');
  });

  it('of a spent heap tells what is left to do by what was said', async () => {
    const spent = ['why', '--built', '2 months ago', '--reading', '18C', '--hottest', '45C', '--food', 'browns'];
    const text = async (...more: readonly string[]): Promise<string> =>
      flat((await home.run([...spent, '--size', '1.2x1.2x1.2m', '--units', 'metric', ...more])).out);
    expect(await text()).toContain('Wet this one if it is dry and turn it once');
    const moist = await text('--squeeze', 'drops');
    expect(moist).toContain('Turn this one once');
    expect(moist).not.toContain('Wet this one');
    const turned = await text('--squeeze', 'drops', '--turned', '1 month ago');
    expect(turned).toContain('It was turned and stays under about 40 °C: it is curing. Leave it alone');
    expect(turned).not.toMatch(/turn (this one|it) once/iu);
  });

  it('a reading told now may be the hottest there was', async () => {
    await home.run(['build', 'leaves=10bags', '--name', 'Cool heap', '--bay', '1x1x1m', '--when', '2 weeks ago']);
    await home.run(['log', 'Cool heap', '15C', '--when', '5 days ago']);
    expect((await home.json(['why', 'cool heap', '--reading', '25C'])).value).toMatchObject({
      input: { temp_degC: 25, hottest_degC: 25 },
    });
  });

  it('reads how old it is as people say it', async () => {
    const age = async (built: string): Promise<number | undefined> =>
      ((await home.json(['why', '--built', built])).value as { input: { age_days?: number } }).input.age_days;
    expect(await age('2 weeks ago')).toBe(14);
    expect(await age('3 months ago')).toBeGreaterThan(85);
    expect(await age('3 months')).toBe(await age('3 months ago'));
  });

  it.each([
    [['why', 'nowhere'], 'nowhere'],
    [['why', '--size', '1x1x1cm'], 'No heap measures “1x1x1cm”'],
    [['why', '--size', '100x100x100m'], 'No heap measures “100x100x100m”'],
    [
      ['why', '--hottest', '10C', '--reading', '18C', '--units', 'metric'],
      'The hottest it ever was can’t be 10 °C (--hottest), below the 18 °C that it reads now.',
    ],
    [
      ['why', '--turned', '10 days ago', '--built', '2 days ago'],
      'It can’t have been turned 10 days ago (--turned), before it was built 2 days ago.',
    ],
    [['why', '--squeeze', 'soggy'], 'streams (water runs out of it)'],
    [['why', '--size', 'huge'], 'can’t be read'],
    [['why', '--built', 'once'], '“once” (--built)'],
    [['why', '--turned', '2099-01-01'], 'lies ahead'],
    [['why', '--in', 'dog mess=1 bucket'], 'must never go on a heap'],
  ])('%j is asked again', async (args, words) => {
    const { code, err } = await home.run(args);
    expect(code).toBe(2);
    expect(flat(err)).toContain(words);
  });
});
