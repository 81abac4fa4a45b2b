import type { Prediction, SectionPart } from '#engine';
import { clock, fahrenheit, fixed, type Practice, rise, significant, temperature, thin } from '../../lib/format.ts';
import { offTheRamp } from '../../lib/ramp.ts';
import type { Cell, TableTwin } from '../sheet.ts';
import { conductorLooks } from './conductors.ts';
import { halfChord, stretches } from './cut.ts';
import { type SectionState, sectionState } from './state.ts';

const inch = 25.4; // mm

/** A time of the run as the picture's title has it: '0:50', or '0.05 s' for a short circuit. */
export function timeWords(t: number, end: number): string {
  return end < 20 ? `${significant(t, 3)}${thin}s` : clock(t);
}

/** A length in words of the practice: '2.3 mm', '2.3 mm (0.09 in)'. `x` in m. */
export function lengthWords(x: number, practice: Practice): string {
  const mm = x * 1e3;
  const metric = `${fixed(mm, mm < 10 ? 2 : 1)}${thin}mm`;
  return practice === 'na' ? `${metric} (${fixed(mm / inch, 3)}${thin}in)` : metric;
}

function letterOf({ thermal }: Prediction, core: number, practice: Practice): string {
  return conductorLooks(thermal.cable.cores, practice)[core]?.letter ?? '';
}

/** Where a point of the cut lies: 'conductor L', 'insulation of N', 'sheath'. */
export function placeWords(
  prediction: Prediction,
  part: SectionPart,
  core: number | undefined,
  practice: Practice,
): string {
  const { cores, insulation } = prediction.thermal.cable;
  if (part === 'filling') return 'plastic between the cores';
  if (part !== 'conductor' && part !== 'insulation') return part;
  if (cores === 1) return part === 'conductor' && !insulation ? 'bare conductor' : part;
  const letter = letterOf(prediction, core ?? 0, practice);
  return part === 'conductor' ? `conductor ${letter}` : `insulation of ${letter}`;
}

/** Which side of the middle: '2.1 mm left of the middle'. */
export function sideWords(x: number, practice: Practice): string {
  if (Math.abs(x) < 5e-6) return 'in the middle';
  return `${lengthWords(Math.abs(x), practice)} ${x < 0 ? 'left' : 'right'} of the middle`;
}

/** What the reading point says: where it is, in what, how hot. */
export function readingWords(prediction: Prediction, state: SectionState, x: number, practice: Practice): string {
  const { part, core } = state.shape.partAt(x, state.shape.cut);
  const place = placeWords(prediction, part, core, practice);
  return `${sideWords(x, practice)}, ${place}: ${temperature(state.atPoint(x, state.shape.cut), practice)}`;
}

const uneven = 1; // K between the hottest and the coolest of a surface from which it is worth a word

/** Hottest and coolest of the surface [°C]. */
function surfaceRange({ shape, atPoint }: SectionState): [low: number, high: number] {
  let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
  const reach = 2 * (shape.halfRun + shape.outerRadius);
  for (let i = 0; i < 180; i++) {
    const angle = (i * Math.PI) / 90;
    const T = atPoint(reach * Math.cos(angle), reach * Math.sin(angle));
    [low, high] = [Math.min(low, T), Math.max(high, T)];
  }
  return [low, high];
}

/** The section in two or three sentences made from its data. */
export function sectionSentence(prediction: Prediction, t: number, practice: Practice): string {
  const { cable } = prediction.thermal;
  const state = sectionState(prediction, t);
  const say = (T: number) => temperature(T, practice);
  const when = `At ${timeWords(state.t, prediction.run.end)}`;
  const loaded = cable.loaded.map((core) => letterOf(prediction, core, practice));
  const named = cable.cores > 1 ? ` (${listed(loaded)} loaded)` : '';
  const beyond = offTheRamp(state.conductor) ? ' (off the ramp)' : '';
  if (!cable.insulation) return `${when} the bare conductor is at ${say(state.conductor)} all through${beyond}.`;
  const [low, high] = surfaceRange(state);
  const spread = high - low >= uneven ? `, from ${say(low)} to ${say(high)} round it` : '';
  const first = `${when} the hottest conductor${named} is at ${say(state.conductor)}${beyond} and the cable’s surface at ${say(state.surface)} on average${spread}.`;
  const idle = Array.from({ length: cable.cores }, (_, i) => i).filter((i) => !cable.loaded.includes(i));
  const inIdle = (core: number) => state.atPoint(state.shape.x[core] as number, state.shape.y[core] as number);
  const resting = idle.map((i) => `${letterOf(prediction, i, practice)} at ${say(inIdle(i))}`);
  const second = idle.length > 0 ? ` Idle: ${listed(resting)}.` : '';
  const drop = state.conductor - state.surface;
  const third =
    Math.abs(drop) < 0.5
      ? ''
      : ` From conductor to surface it ${drop > 0 ? 'falls' : 'rises'} by ${rise(Math.abs(drop))}.`;
  return `${first}${second}${third}`;
}

function listed(words: readonly string[]): string {
  const last = words.at(-1) ?? '';
  return words.length < 2 ? last : `${words.slice(0, -1).join(', ')} and ${last}`;
}

/** The title block's cell on how the picture is made. */
export function sectionCell({ run }: Prediction, t: number): Cell {
  return { name: 'Field', value: `steady field, scaled to ${timeWords(Math.min(t, run.end), run.end)}` };
}

/** The section's table twin: the walls along the cut A–A and the middle of each part, left to right. */
export function sectionTable(prediction: Prediction, t: number, practice: Practice): TableTwin {
  const state = sectionState(prediction, t);
  const { cut } = state.shape;
  const also = practice === 'na' ? (T: number) => [fixed(fahrenheit(T), 0)] : () => [];
  const row = (x: number, where: string) => {
    const T = state.atPoint(x, cut);
    return [fixed(x * 1e3, 2), where, fixed(T, 1), ...also(T)];
  };
  const along = stretches(state);
  const half = halfChord(state);
  const rows = along.flatMap(({ from, to, part, core }, i) => {
    const name = placeWords(prediction, part, core, practice);
    const before = along[i - 1];
    const wall = before
      ? `between ${placeWords(prediction, before.part, before.core, practice)} and ${name}`
      : 'surface, left';
    const width = to - from;
    const middle = width > 0.02 * half ? [row((from + to) / 2, name)] : [];
    return [row(from, wall), ...middle];
  });
  return {
    caption: `${prediction.thermal.cable.name}: temperatures along the cut A–A at ${timeWords(state.t, prediction.run.end)}`,
    columns: ['From the middle, mm', 'Where', 'Temperature, °C', ...(practice === 'na' ? ['Temperature, °F'] : [])],
    rows: [...rows, row(half, 'surface, right')],
  };
}
