import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { flat, type Garden, garden } from '../../testing/garden.ts';

let home: Garden;
beforeEach(() => {
  home = garden();
});
afterEach(() => home.remove());

describe('a test with beans, written down', () => {
  it('is told beside the stuff when it is asked about again, the newest one', async () => {
    await home.run(['safe', 'beans', '--hurt', 'severe', '--keep', 'hay', '--when', '3 days ago']);
    expect(flat((await home.run(['safe', 'input', 'hay'])).out)).toContain('Tested with beans on');
    expect(flat((await home.run(['daybook'])).out)).toContain('leaves badly hurt');
    await home.run(['safe', 'beans', '--hurt', 'none', '--keep', 'hay']);
    expect(flat((await home.run(['safe', 'input', 'hay'])).out)).toContain('Clear, as far as such a test shows');
    expect(flat((await home.run(['safe', 'input', 'straw'])).out)).not.toContain('Tested with beans');
  });

  it('may be of a heap', async () => {
    await home.run(['build', 'straw=8barrows', 'grass clippings=6barrows', '--name', 'Spring heap', '--bay', '1x1x1m']);
    await home.run(['safe', 'beans', '--hurt', 'slight', '--keep-heap', 'spring heap']);
    expect(flat((await home.run(['daybook'])).out)).toContain('Beans grown in Spring heap: leaves a little hurt');
  });

  it.each([
    [['--keep', 'hay'], '--hurt is missing'],
    [['--hurt', 'none', '--keep', 'no such stuff at all'], 'no such stuff'],
    [['--hurt', 'none', '--keep-heap', 'nowhere'], 'There is no heap called'],
  ])('%j is refused in words', async (more, said) => {
    const { code, err } = await home.run(['safe', 'beans', ...more]);
    expect(code).not.toBe(0);
    expect(flat(err)).toContain(said);
  });
});
