const longestEdge = 1600; // px
const quality = 0.82;

/**
 * A picture drawn anew, no edge longer than 1600 px, as JPEG. Only what is seen is left: where and when it was taken, and on what,
 * is not drawn and so not kept. Undefined where the file is no picture that this browser can read.
 */
export async function shrinkPicture(file: Blob): Promise<Blob | undefined> {
  const bitmap = await createImageBitmap(file, { imageOrientation: 'from-image' }).catch(() => undefined);
  if (!bitmap) return undefined;
  const part = Math.min(1, longestEdge / Math.max(bitmap.width, bitmap.height));
  const canvas = document.createElement('canvas');
  canvas.width = Math.max(1, Math.round(bitmap.width * part));
  canvas.height = Math.max(1, Math.round(bitmap.height * part));
  const brush = canvas.getContext('2d');
  if (!brush) return undefined;
  brush.fillStyle = 'white';
  brush.fillRect(0, 0, canvas.width, canvas.height);
  brush.drawImage(bitmap, 0, 0, canvas.width, canvas.height);
  bitmap.close();
  const drawn = await new Promise<Blob | null>((done) => canvas.toBlob(done, 'image/jpeg', quality));
  return drawn ?? undefined;
}
