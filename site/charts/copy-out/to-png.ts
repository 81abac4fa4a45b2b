import { embeddedFaces } from './page-fonts.ts';
import type { SheetFile } from './sheet-svg.ts';

const scale = 2; // pixels for each px, as sharp as print and slides need
const families = ['Source Sans 3 Variable', 'Literata Variable'];

/** A sheet's file drawn to pixels, in the page's own faces. */
export async function toPng({ svg, width, height }: SheetFile): Promise<Blob> {
  const faces = await embeddedFaces(families, svg.replace(/<[^>]*>/g, ''));
  const whole = faces ? svg.replace('</title>', `</title>\n<style>${faces}</style>`) : svg;
  const address = URL.createObjectURL(new Blob([whole], { type: 'image/svg+xml' }));
  try {
    const image = new Image();
    image.src = address;
    await image.decode();
    return await painted(image, width * scale, height * scale);
  } finally {
    URL.revokeObjectURL(address);
  }
}

function painted(image: HTMLImageElement, width: number, height: number): Promise<Blob> {
  const canvas = document.createElement('canvas');
  canvas.width = Math.round(width);
  canvas.height = Math.round(height);
  canvas.getContext('2d')?.drawImage(image, 0, 0, canvas.width, canvas.height);
  return new Promise((resolve, reject) => {
    canvas.toBlob((blob) => (blob ? resolve(blob) : reject(new Error('the picture could not be drawn'))), 'image/png');
  });
}
