import type { Page } from '@playwright/test';

/** What a picture is of: red on the left and blue on the right, in dots. */
export interface Halves {
  readonly width: number;
  readonly height: number;
}

/** A JPEG that the browser itself makes: red on the left, blue on the right. The page must be one of the site. */
export async function jpegOf(page: Page, { width, height }: Halves): Promise<Buffer> {
  const text = await page.evaluate(
    ([width, height]) => {
      const canvas = document.createElement('canvas');
      [canvas.width, canvas.height] = [width, height];
      const pen = canvas.getContext('2d');
      if (!pen) throw new Error('found no canvas, expected one');
      pen.fillStyle = '#f00';
      pen.fillRect(0, 0, width / 2, height);
      pen.fillStyle = '#00f';
      pen.fillRect(width / 2, 0, width / 2, height);
      return canvas.toDataURL('image/jpeg', 0.9);
    },
    [width, height] as const,
  );
  return Buffer.from(text.slice(text.indexOf(',') + 1), 'base64');
}

/** The make of the camera that `withExif` writes. */
export const MAKE = 'HarrowCam';

/**
 * The same JPEG as a phone held upright writes it: with a note (Exif, little-endian TIFF) that it is to be turned by a quarter to the
 * right to be seen, orientation 6, and with the make of the camera.
 */
export function turned(jpeg: Buffer): Buffer {
  const make = Buffer.from(`${MAKE}\0`);
  const tiff = Buffer.alloc(8 + 2 + 2 * 12 + 4 + make.length);
  tiff.write('II', 0);
  tiff.writeUInt16LE(42, 2);
  tiff.writeUInt32LE(8, 4);
  tiff.writeUInt16LE(2, 8);
  // Make: text, its length, where it stands.
  tiff.writeUInt16LE(0x010f, 10);
  tiff.writeUInt16LE(2, 12);
  tiff.writeUInt32LE(make.length, 14);
  tiff.writeUInt32LE(38, 18);
  // Orientation: one short number.
  tiff.writeUInt16LE(0x0112, 22);
  tiff.writeUInt16LE(3, 24);
  tiff.writeUInt32LE(1, 26);
  tiff.writeUInt16LE(6, 30);
  make.copy(tiff, 38);
  const body = Buffer.concat([Buffer.from('Exif\0\0'), tiff]);
  const head = Buffer.alloc(4);
  head.writeUInt16BE(0xffe1, 0);
  head.writeUInt16BE(body.length + 2, 2);
  return Buffer.concat([jpeg.subarray(0, 2), head, body, jpeg.subarray(2)]);
}
