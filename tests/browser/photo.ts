import type { Page } from 'playwright-core';

/** A word that a camera writes into a picture's metadata, to be looked for afterwards. */
export const cameraMark = 'SECRETCAM';

/**
 * A picture as a phone takes it: 2400 × 1600 pixels as they are stored, red on the left and blue on the right, with noise
 * on it, held sideways (Orientation 6) and with the place where it was taken. Painted by the browser; its metadata is
 * written here after Exif 2.32 (CIPA DC-008-2019), sections 4.5.4, 4.6.4 (tags 271, 274, 34853) and 4.6.6 (GPS).
 */
export async function photoTaken(page: Page): Promise<Buffer> {
  const painted = await page.evaluate(async () => {
    const canvas = document.createElement('canvas');
    canvas.width = 2400;
    canvas.height = 1600;
    const brush = canvas.getContext('2d');
    if (brush === null) throw new Error('no canvas');
    const pixels = brush.createImageData(canvas.width, canvas.height);
    let seed = 1;
    for (let at = 0; at < pixels.data.length; at += 4) {
      seed = (seed * 1103515245 + 12345) % 2147483648;
      const noise = seed % 120;
      const isLeft = (at / 4) % canvas.width < canvas.width / 2;
      pixels.data.set([isLeft ? 255 - noise : noise, noise, isLeft ? noise : 255 - noise, 255], at);
    }
    brush.putImageData(pixels, 0, 0);
    const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, 'image/jpeg', 0.95));
    const reader = new FileReader();
    await new Promise((resolve) => {
      reader.onload = resolve;
      reader.readAsDataURL(blob ?? new Blob());
    });
    return String(reader.result);
  });
  const jpeg = Buffer.from(painted.slice(painted.indexOf(',') + 1), 'base64');
  return Buffer.concat([jpeg.subarray(0, 2), exif(), jpeg.subarray(2)]);
}

/** An APP1 segment with maker, orientation 6 and a place. */
function exif(): Buffer {
  const maker = Buffer.from(`${cameraMark}\0`);
  const headSize = 8;
  const mainSize = 2 + 3 * 12 + 4;
  const makerAt = headSize + mainSize;
  const placeAt = makerAt + maker.length;
  const placeSize = 2 + 4 * 12 + 4;
  const latitudeAt = placeAt + placeSize;
  const longitudeAt = latitudeAt + 24;
  const tiff = Buffer.concat([
    Buffer.from([0x4d, 0x4d, 0, 42, 0, 0, 0, headSize]),
    directory(field(271, ascii, maker.length, makerAt), field(274, short, 1, 6 << 16), field(34853, long, 1, placeAt)),
    maker,
    directory(
      field(1, ascii, 2, 0x4e << 24),
      field(2, rational, 3, latitudeAt),
      field(3, ascii, 2, 0x57 << 24),
      field(4, rational, 3, longitudeAt),
    ),
    rationals(51, 28, 12),
    rationals(2, 35, 9),
  ]);
  const content = Buffer.concat([Buffer.from('Exif\0\0'), tiff]);
  const head = Buffer.from([0xff, 0xe1, 0, 0]);
  head.writeUInt16BE(content.length + 2, 2);
  return Buffer.concat([head, content]);
}

const ascii = 2;
const short = 3;
const long = 4;
const rational = 5;

function field(tag: number, type: number, count: number, value: number): Buffer {
  const bytes = Buffer.alloc(12);
  bytes.writeUInt16BE(tag, 0);
  bytes.writeUInt16BE(type, 2);
  bytes.writeUInt32BE(count, 4);
  bytes.writeUInt32BE(value >>> 0, 8);
  return bytes;
}

function directory(...fields: readonly Buffer[]): Buffer {
  const count = Buffer.alloc(2);
  count.writeUInt16BE(fields.length);
  return Buffer.concat([count, ...fields, Buffer.alloc(4)]);
}

function rationals(...values: readonly number[]): Buffer {
  const bytes = Buffer.alloc(values.length * 8);
  for (const [i, value] of values.entries()) {
    bytes.writeUInt32BE(value, i * 8);
    bytes.writeUInt32BE(1, i * 8 + 4);
  }
  return bytes;
}

/** The markers of a JPEG's segments up to its pixels (ITU-T T.81, table B.1). */
export function segmentsOf(jpeg: Buffer): readonly number[] {
  const found: number[] = [];
  let at = 2;
  while (at + 4 <= jpeg.length) {
    const marker = jpeg.readUInt16BE(at);
    found.push(marker);
    if (marker === 0xffda) return found;
    at += 2 + jpeg.readUInt16BE(at + 2);
  }
  return found;
}

/** What a picture is once it is decoded: its size, and the colours at the middle of its top and bottom. */
export function looked(
  page: Page,
  jpeg: Buffer,
): Promise<{ width: number; height: number; top: readonly number[]; bottom: readonly number[] }> {
  return page.evaluate(async (base64) => {
    const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
    const bitmap = await createImageBitmap(new Blob([bytes], { type: 'image/jpeg' }));
    const canvas = document.createElement('canvas');
    canvas.width = bitmap.width;
    canvas.height = bitmap.height;
    const brush = canvas.getContext('2d');
    if (brush === null) throw new Error('no canvas');
    brush.drawImage(bitmap, 0, 0);
    const middle = bitmap.width / 2;
    const at = (y: number): readonly number[] => [...brush.getImageData(middle, y, 1, 1).data];
    return { width: bitmap.width, height: bitmap.height, top: at(20), bottom: at(bitmap.height - 20) };
  }, jpeg.toString('base64'));
}
