import { expect, it } from 'vitest';
import { shrinkPicture } from '#site/lib/shrink-picture.ts';

/** A picture of 2400 × 600 px with a note in it, as cameras put the place where it was taken. */
async function noted(): Promise<Blob> {
  const canvas = document.createElement('canvas');
  [canvas.width, canvas.height] = [2400, 600];
  const brush = canvas.getContext('2d');
  if (!brush) throw new Error('no canvas');
  brush.fillStyle = 'rgb(200 90 20)';
  brush.fillRect(0, 0, 2400, 600);
  const plain = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/jpeg'));
  const bytes = new Uint8Array(await (plain as Blob).arrayBuffer());
  const note = new TextEncoder().encode('Exif\0\0 latitude 51.0 longitude 7.0');
  const segment = new Uint8Array([0xff, 0xe1, 0, note.length + 2, ...note]); // APP1, where cameras write
  return new Blob([bytes.slice(0, 2), segment, bytes.slice(2)], { type: 'image/jpeg' });
}

it('makes a picture smaller, and leaves out where it was taken', async () => {
  const before = await noted();
  expect(await before.text()).toContain('latitude');
  const after = await shrinkPicture(before);
  if (!after) throw new Error('not read');
  expect(await after.text()).not.toContain('latitude');
  const { width, height } = await createImageBitmap(after);
  expect([width, height]).toEqual([1600, 400]);
});

it('says so when a file is no picture', async () => {
  expect(await shrinkPicture(new Blob(['no picture']))).toBeUndefined();
});
