import { describe, expect, it } from 'vitest';
import { attachmentName, attachmentsOf } from './attachment.ts';
import { testId } from './testing/ids.ts';
import { testWriter } from './testing/writer.ts';

const [a, b, c] = ['a'.repeat(64), 'b'.repeat(64), 'c'.repeat(64)] as const;

describe('attachments', () => {
  it('are named by the SHA-256 of their bytes (FIPS 180-4, "abc")', () => {
    expect(attachmentName(new Uint8Array([0x61, 0x62, 0x63]))).toBe(
      'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad',
    );
  });

  it('are wanted by photos, series, entries out of force, and kinds not known here', () => {
    const writer = testWriter();
    const photo = writer.write('photo', null, { attachment: b, mediaType: 'image/jpeg' });
    writer.withdraw(photo.id);
    writer.write('note', null, { text: a });
    const { v: _v, n: _n, prev: _p, sum: _s, ...rest } = photo;
    writer.seal({ ...rest, id: testId(50), kind: 'recording', body: { attachment: c } });
    writer.seal({ ...rest, id: testId(51), kind: 'recording', body: { attachment: 'not a hash' } });
    expect(attachmentsOf(writer.entries)).toEqual({ wanted: [b, c], removed: [] });
  });

  it('removed by an entry are no longer wanted, until that entry is taken back', () => {
    const writer = testWriter();
    for (const attachment of [c, a]) writer.write('photo', null, { attachment, mediaType: 'image/jpeg' });
    const removal = writer.write('attachment-removed', null, { attachment: a, why: 'blurred' });
    expect(attachmentsOf(writer.entries)).toEqual({ wanted: [c], removed: [a] });
    writer.withdraw(removal.id);
    expect(attachmentsOf(writer.entries)).toEqual({ wanted: [a, c], removed: [] });
  });
});
