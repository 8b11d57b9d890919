import { type Attachment, attachmentName } from '@loamwright/daybook';
import { type Attempt, attempts, fitted, MOST_BYTES } from './fit.ts';

/** Why a file was not taken as a picture. */
export class PhotoRefused extends Error {
  override readonly name: string = 'PhotoRefused';
  readonly reason: 'unreadable' | 'too-large';
  constructor(reason: PhotoRefused['reason'], options?: ErrorOptions) {
    super(reason, options);
    this.reason = reason;
  }
}

/** Largest file that is opened: beyond it a phone may run out of memory. Its camera's pictures are well below. */
const LARGEST_FILE_BYTES = 60 * 1024 * 1024;
const MEDIA_TYPE = 'image/jpeg';

/**
 * Makes of a picture what is kept of it: at most 1600 pixels on its longer side, about 300 kB, upright.
 *
 * It is painted anew from its pixels, so nothing else of the file comes along: neither where nor when it was taken, nor
 * with what.
 * @throws PhotoRefused
 */
export async function downscaled(file: Blob): Promise<Attachment> {
  if (file.size > LARGEST_FILE_BYTES) throw new PhotoRefused('too-large');
  const picture = await opened(file);
  try {
    let made = new Uint8Array();
    for (const attempt of attempts) {
      made = await encoded(picture, attempt);
      if (made.length <= MOST_BYTES) break;
    }
    return { hash: attachmentName(made), mediaType: MEDIA_TYPE, bytes: made };
  } finally {
    picture.close();
  }
}

async function opened(file: Blob): Promise<ImageBitmap> {
  try {
    return await createImageBitmap(file, { imageOrientation: 'from-image' });
  } catch (cause) {
    throw new PhotoRefused('unreadable', { cause });
  }
}

async function encoded(picture: ImageBitmap, { longest_px, quality }: Attempt): Promise<Uint8Array<ArrayBuffer>> {
  const { width_px, height_px } = fitted({ width_px: picture.width, height_px: picture.height }, longest_px);
  const canvas = document.createElement('canvas');
  canvas.width = width_px;
  canvas.height = height_px;
  const brush = canvas.getContext('2d');
  if (brush === null) throw new PhotoRefused('unreadable');
  // JPEG knows nothing of transparency: what shows through is white, not black.
  brush.fillStyle = '#fff';
  brush.fillRect(0, 0, width_px, height_px);
  brush.imageSmoothingQuality = 'high';
  brush.drawImage(picture, 0, 0, width_px, height_px);
  const blob = await new Promise<Blob | null>((resolve) => canvas.toBlob(resolve, MEDIA_TYPE, quality));
  if (blob === null) throw new PhotoRefused('unreadable');
  return new Uint8Array(await blob.arrayBuffer());
}
