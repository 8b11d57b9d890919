import type { Problem } from '@loamwright/science';
import { createSpeaker } from '@loamwright/words';
import { describe, expect, it } from 'vitest';
import { NotWritten } from './book.ts';
import { sayNotWritten } from './not-written.ts';
import { localMinute } from './time.ts';

const speaker = createSpeaker({ locale: 'en', system: 'metric' });
const told = (problem: Problem): string => speaker.tell(sayNotWritten(new NotWritten('not-valid', [problem])));

describe('what could not be written down', () => {
  it('tells a time that lies ahead by the clock in the garden', () => {
    const found = '2099-01-01T12:00:00.000Z';
    const text = told({ code: 'when-ahead', path: 'happened', found, wanted: '' });
    expect(text).toContain(localMinute(found).replace('T', ' '));
    expect(text).toMatch(/^It was not written down: The time/u);
  });

  it('tells figures that are beyond what can be, and names of the code in words', () => {
    expect(told({ code: 'water-beyond', path: 'body.volume_L', found: '50000', wanted: '20000' })).toContain('20000 L');
    const ratio = told({ code: 'figure-beyond', path: 'body.carbonToNitrogen', found: '1e9', wanted: '0.5 to 2000' });
    expect(ratio).toContain('No stuff has a C:N of 1e9');
    const empty = told({ code: 'out-of-bounds', path: 'body', found: '{}', wanted: 'at least one figure' });
    expect(empty).toBe('It was not written down: what was written is {}; it wants at least one figure.');
  });
});
