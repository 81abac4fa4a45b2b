import { rampMix } from '../../lib/ramp.ts';
import type { Field } from './lines.ts';
import type { Scene } from './scene.ts';
import type { SectionState } from './state.ts';

/** Stops of the ramp as a theme has them, 0 to 255. */
export type Stops = readonly (readonly [number, number, number])[];

const shades = 2048;

/** px from point to point of the field that pixels are painted from; between them it is straight. */
export const fieldStep = 2.5;

/**
 * Paints a section and the layer round it, pixel by pixel.
 * @param pixels takes the colours, row by row, 4 bytes each: red, green, blue, opacity
 * @param width,height of the painted rectangle in device pixels
 */
export function paintSection(
  pixels: Uint32Array,
  width: number,
  height: number,
  state: SectionState,
  scene: Scene,
  field: Field,
  stops: Stops,
): void {
  const { halfWidth, halfHeight, run, radius, film } = scene;
  const { columns, rows, values } = field;
  const colour = colourer(values, state.ambient, stops);
  const air = airTable(state);
  const rowOf = new Float32Array(columns);
  const perPixelX = (columns - 1) / width;
  const dx = (2 * halfWidth) / width;
  const dy = (2 * halfHeight) / height;
  let n = 0;
  for (let py = 0; py < height; py++) {
    const gy = (py + 0.5) * ((rows - 1) / height);
    const j = Math.min(rows - 2, gy | 0);
    const down = gy - j;
    for (let i = 0, at = j * columns; i < columns; i++, at++)
      rowOf[i] = (values[at] as number) * (1 - down) + (values[at + columns] as number) * down;
    const y = Math.abs(halfHeight - (py + 0.5) * dy);
    for (let px = 0; px < width; px++) {
      const x = Math.abs((px + 0.5) * dx - halfWidth) - run;
      const away = (x > 0 ? Math.sqrt(x * x + y * y) : y) - radius;
      if (away >= film) {
        pixels[n++] = 0;
        continue;
      }
      const gx = (px + 0.5) * perPixelX;
      const i = Math.min(columns - 2, gx | 0);
      const T = (rowOf[i] as number) + (gx - i) * ((rowOf[i + 1] as number) - (rowOf[i] as number));
      if (away <= 0) {
        pixels[n++] = colour(T) | 0xff000000;
      } else {
        const s = ((away / film) * depths) | 0;
        pixels[n++] = colour((air.base[s] as number) + (air.gain[s] as number) * T) | (air.shown[s] as number);
      }
    }
  }
}

const depths = 128;

/** The layer outside by depth: its temperature is base + gain · the surface's; opacity as the top byte of a pixel. */
function airTable({ film, surface }: SectionState): { base: Float32Array; gain: Float32Array; shown: Uint32Array } {
  const table = {
    base: new Float32Array(depths + 1),
    gain: new Float32Array(depths + 1),
    shown: new Uint32Array(depths + 1),
  };
  for (let i = 0; i <= depths; i++) {
    const s = Math.min(1, (i + 0.5) / depths);
    const base = film(s, 0).T;
    table.base[i] = base;
    table.gain[i] = film(s, 1).T - base;
    table.shown[i] = Math.round(255 * film(s, surface).shown) << 24;
  }
  return table;
}

/** Colours by look-up between the coldest and the hottest that can occur; red lowest, as canvases keep their bytes. */
function colourer(temperatures: ArrayLike<number>, ambient: number, stops: Stops): (T: number) => number {
  let low = ambient;
  let high = ambient;
  for (let i = 0; i < temperatures.length; i++) {
    const T = temperatures[i] as number;
    if (T < low) low = T;
    if (T > high) high = T;
  }
  const slope = high > low ? shades / (high - low) : 0;
  const table = Uint32Array.from({ length: shades + 1 }, (_, i) => {
    const [r, g, b] = rampMix(stops, low + (i * (high - low)) / shades);
    return r | (g << 8) | (b << 16);
  });
  return (T) => table[Math.max(0, Math.min(shades, Math.round((T - low) * slope)))] as number;
}
