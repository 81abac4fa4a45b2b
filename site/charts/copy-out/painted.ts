/** Paints a picture anew onto another canvas, in the colours that the page's tokens have at that moment. */
export type PaintOn = (canvas: HTMLCanvasElement) => void;

const painters = new WeakMap<HTMLCanvasElement, PaintOn>();

/** Says how the picture on `canvas` is painted again, for those who copy it out. */
export function paintedBy(canvas: HTMLCanvasElement, paint: PaintOn): void {
  painters.set(canvas, paint);
}

/** How the picture on a canvas is painted again; undefined where nobody said. */
export function painterOf(canvas: HTMLCanvasElement): PaintOn | undefined {
  return painters.get(canvas);
}
