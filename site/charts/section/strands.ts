import { awgArea, type Scenario, standardSize } from '#engine';

/** The wires of one conductor: how many, and their diameter [m]. */
export interface Strands {
  readonly count: number;
  readonly diameter: number;
}

const bunched = 0.2546e-3; // m: cords by wire gauge are bunched of 30 AWG wires (from memory)

/** The wires a scenario's conductor is made of: as it says, else the usual make-up of its class and size. */
export function strandsOf({ cable }: Scenario, area: number): Strands {
  const spec = cable.conductor;
  if (spec?.strands) return { count: spec.strands.count, diameter: spec.strands.diameter_mm * 1e-3 };
  const kind = spec?.class ?? 5;
  const solid = 2 * Math.sqrt(area / Math.PI);
  if (kind === 1) return { count: 1, diameter: solid };
  if (kind === 2) return { count: 7, diameter: solid / Math.sqrt(7) };
  const { size_AWG, size_mm2 } = 'table' in cable ? cable : cable.conductor;
  if (size_AWG !== undefined) return bunch(awgArea(size_AWG), bunched);
  const row = size_mm2 === undefined ? undefined : standardSize(size_mm2);
  if (!row) return bunch(area, kind === 6 ? 0.15e-3 : 0.2e-3);
  const [count, diameter_mm] = kind === 6 ? row.class6 : row.class5;
  return { count, diameter: diameter_mm * 1e-3 };
}

const wire = (diameter: number): number => (Math.PI / 4) * diameter * diameter;
const bunch = (area: number, diameter: number): Strands => ({
  count: Math.max(1, Math.round(area / wire(diameter))),
  diameter,
});

/**
 * Where `count` equal wires lie in a bundle of radius 1, and how large they may be drawn: in layers round the middle, as
 * large as lets all of them in; what a layer has room for beyond the count is left free in the outer ones, evenly.
 */
export function bundle(count: number): { places: [x: number, y: number][]; radius: number } {
  let [radius, tooLarge] = [0, 1];
  for (let i = 0; i < 40; i++) {
    const middle = (radius + tooLarge) / 2;
    if (layersOf(middle).reduce((sum, { room }) => sum + room, 0) >= count) radius = middle;
    else tooLarge = middle;
  }
  if (count === 1) return { places: [[0, 0]], radius: 1 };
  const layers = layersOf(radius);
  let spare = layers.reduce((sum, { room }) => sum + room, 0) - count;
  for (const layer of layers) {
    const less = Math.min(spare, Math.ceil(layer.room / 4));
    layer.room -= less;
    spare -= less;
  }
  const places = layers.flatMap(({ at, room }, ring) =>
    Array.from({ length: room }, (_, i): [number, number] => {
      const angle = (2 * Math.PI * (i + (ring % 2) / 2)) / room + Math.PI / 2;
      return [at * Math.cos(angle), at * Math.sin(angle)];
    }),
  );
  return { places, radius };
}

/** Layers of wires of a radius, from the outermost in: how far out, and how many go there. */
function layersOf(radius: number): { at: number; room: number }[] {
  const layers: { at: number; room: number }[] = [];
  for (let at = 1 - radius; at > -1e-6; at -= 2 * radius)
    layers.push(
      at < radius * (1 - 1e-6)
        ? { at: 0, room: 1 }
        : { at, room: Math.max(1, Math.floor(Math.PI / Math.asin(Math.min(1, radius / at)) + 1e-6)) },
    );
  return layers;
}
