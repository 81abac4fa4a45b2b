import type { Outside } from '../surroundings/outside.ts';
import type { Cable } from './cable.ts';
import type { Layer } from './section.ts';
import { prepareField, type SectionField } from './section-field.ts';
import { shapeFactorFinite } from './section-finite.ts';
import { prepareFlatField } from './section-flat.ts';
import { shapeFactorImages } from './section-images.ts';

/** The shape factor of the hottest loaded core by both levels of the model; `used` enters the heat model. */
export interface ShapeLevels {
  readonly lineSources: number;
  readonly finiteConductors: number;
  readonly used: number;
}

const none: ShapeLevels = { lineSources: 0, finiteConductors: 0, used: 0 };

const sheathLayer = ({ sheath, outerRadius }: Cable): Layer[] =>
  sheath ? [{ k: 1 / sheath.rhoT.value, r1: outerRadius }] : [];

const layersOf = (cable: Cable, outside: Outside): Layer[] => [...sheathLayer(cable), ...outside.rings];

/** What was last computed for a cable, and for which surroundings: a drag of the current asks for the same again and again. */
type Last<T> = WeakMap<Cable, { readonly key: string; readonly value: T }>;
const levels: Last<ShapeLevels> = new WeakMap();
const fields: Last<SectionField | null> = new WeakMap();

function lastOf<T>(last: Last<T>, cable: Cable, outside: Outside, h: number, compute: () => T): T {
  const key = [h, ...outside.rings.flatMap(({ k, r1 }) => [k, r1])].join();
  const before = last.get(cable);
  if (before?.key === key) return before.value;
  const value = compute();
  last.set(cable, { key, value });
  return value;
}

/**
 * G of a cable's hottest loaded core. One centred core: ln(R/rc). Round: finite conductors and a real surface. Flat with both
 * of two cores loaded: the image formula with R = P/2π. Any other flat: a numerical solution of its section, since the image
 * formula is then up to 48 % low (one of two) or 70 % high (three in a row).
 * @param h heat transfer coefficient of the outermost surface [W/(m²·K)]
 */
export function shapeLevels(cable: Cable, outside: Outside, h: number): ShapeLevels {
  return lastOf(levels, cable, outside, h, () => levelsOf(cable, outside, h));
}

function levelsOf(cable: Cable, outside: Outside, h: number): ShapeLevels {
  const { cores, loaded, conductor, bodyRadius: R, insulation } = cable;
  if (!insulation) return none;
  if (cores === 1) {
    const G = Math.log(R / conductor.rc);
    return { lineSources: G, finiteConductors: G, used: G };
  }
  const section = { x: cable.x, y: cable.y, rc: conductor.rc, R, loaded };
  const lineSources = shapeFactorImages(section).hottest;
  if (cable.layout === 'round') {
    const k = 1 / insulation.rhoT.value;
    const finite = shapeFactorFinite({ ...section, k, layers: layersOf(cable, outside), h }).hottest;
    return { lineSources, finiteConductors: finite, used: finite };
  }
  if (cores === 2 && loaded.length === 2) return { lineSources, finiteConductors: lineSources, used: lineSources };
  const numerical = flatField(cable, h).hottest;
  return { lineSources, finiteConductors: numerical, used: numerical };
}

const kept = new Map<string, SectionField>();
const mostKept = 24;

/** The numerical section of a flat cable, kept for the geometries last asked for (a solution takes some milliseconds). */
function flatField(cable: Cable, h: number): SectionField {
  const k = 1 / (cable.insulation?.rhoT.value ?? 1);
  const thickness = cable.outerRadius - cable.bodyRadius;
  const sheath = cable.sheath ? { k: 1 / cable.sheath.rhoT.value, thickness } : undefined;
  const { conductor, halfRun, halfHeight, loaded } = cable;
  const key = [conductor.rc, halfRun, halfHeight, k, sheath?.k, thickness, h.toPrecision(6), ...loaded].join();
  const known = kept.get(key);
  if (known) return known;
  const field = prepareFlatField({
    x: cable.x,
    rc: conductor.rc,
    loaded,
    halfRun,
    halfHeight,
    k,
    h,
    ...(sheath ? { sheath } : {}),
  });
  if (kept.size >= mostKept) kept.delete(kept.keys().next().value as string);
  kept.set(key, field);
  return field;
}

/** The true two-dimensional field of a cable's section; null for a bare conductor. */
export function sectionField(cable: Cable, outside: Outside, h: number): SectionField | null {
  return lastOf(fields, cable, outside, h, () => fieldOf(cable, outside, h));
}

function fieldOf(cable: Cable, outside: Outside, h: number): SectionField | null {
  if (!cable.insulation) return null;
  if (cable.layout === 'flat') return flatField(cable, h);
  const { x, y, bodyRadius: R, loaded, conductor, insulation, outerRadius } = cable;
  const k = 1 / insulation.rhoT.value;
  return prepareField({ x, y, rc: conductor.rc, R, loaded, k, layers: layersOf(cable, outside), h }, outerRadius);
}
