import { type CastKey, cast } from '../../examples/cast.ts';
import { ratingOf } from '../../heating/limits-of.ts';
import { ratingAt } from '../../heating/rating.ts';
import { buildCase } from '../../heating/thermal-case.ts';
import { fastest } from '../../protection/band.ts';
import type { Device, DeviceFamily, Gate } from '../../protection/device.ts';
import { timeToLimit } from '../../protection/time-to-limit.ts';
import { celsius } from '../../quantity.ts';
import { carrying } from '../carrying.ts';
import { cordOf, cordsOf } from '../cords.ts';
import { dealt, mostDeals } from '../deal.ts';
import { given, temperatureText, timeText } from '../figures.ts';
import type { Random } from '../random.ts';
import { defineTemplate } from '../template.ts';
import type { BuiltChoose, ChooseOption, Practice, Said, TemplateSpec } from '../types.ts';
import { quantity, words } from '../words.ts';
import { askedDevice, gapCaution, silentOf, spanText, withArticle } from './asked-devices.ts';

// Q55b: where the gap first closes, by the points of the device's standard and nothing between them.

interface Case {
  readonly family: DeviceFamily;
  readonly In: number;
  readonly cord: CastKey;
  readonly ambient_degC: number;
  readonly deal: number;
}

const devices: Readonly<Record<Practice, readonly (readonly [DeviceFamily, readonly number[]])[]>> = {
  iec: [
    ['bs1362', [3, 13]],
    ['gG', [6, 10, 16]],
    ['B', [6, 10, 16]],
    ['C', [6, 10]],
  ],
  na: [
    ['ul489', [15, 20, 25]],
    ['ul248', [10, 15, 20, 25]],
    ['ul248 delay', [15, 20, 25]],
  ],
};

/** How far apart the cord's and the device's time have to be at a point, in parts (our choice: no reading shall decide). */
const near = 0.08;

function drawnCase(random: Random, practice: Practice): Case | null {
  const [family, ratings] = random.pick(devices[practice]);
  const drawn = {
    family,
    In: random.pick(ratings),
    cord: random.pick(cordsOf(practice)).key,
    ambient_degC: random.whole(5, 45),
    deal: random.whole(0, mostDeals),
  };
  const { Iz, points, of } = factsOf(drawn, practice);
  // so that each point, and none, is the answer about as often
  const wanted = random.pick([1, 2, 3]);
  const closing = closesAt(points, slow);
  if ((closing ? points.indexOf(closing) : points.length) !== Math.min(wanted, points.length)) return null;
  const clear = points.every(({ t, cord }) => Math.abs(Math.log(cord / t)) > near && Number.isFinite(cord));
  return Iz > of.In * 0.5 && Iz < (points[0] as Point).I * (1 - near) && clear && points.length <= 4 ? drawn : null;
}

/** A point by which the device must have acted, with the cord's own time to its limit there [s]. */
interface Point extends Gate {
  readonly cord: number;
  /** The least time of the device there; 0 where its standard names none. */
  readonly least: number;
}

function factsOf({ family, In, cord, ambient_degC }: Case, practice: Practice) {
  const of = askedDevice(family, In);
  const thermal = buildCase(carrying(cast[cord], ambient_degC, 1, practice));
  const T = ratingOf(thermal.cable) as number;
  const limit = thermal.limits.find(({ kind }) => kind === 'rating');
  if (!limit) throw new Error('a cord has a rating');
  const time = timeToLimit(thermal, limit, { T: thermal.Ta, flow: 0 }, 2 * (of.by[0] as Gate).t);
  const least = (I: number) => fastest(of, I, 'guaranteed');
  const points = asked(of).map((gate): Point => ({ ...gate, cord: time(gate.I), least: least(gate.I) }));
  return { of, T_degC: celsius(T), Iz: ratingAt(thermal, T) as number, points };
}

/** The points asked about: as told, to three figures; of several at one time the last would only repeat. */
const asked = ({ by }: Device): Gate[] => by.slice(0, 4);

/** The first point from which the device must have acted before the cord is past its limit; undefined where none is. */
const closesAt = (points: readonly Point[], device: (point: Point) => number): Point | undefined =>
  points.find((point) => device(point) < point.cord);

const slow = ({ t }: Point) => t;
const middle = ({ t, least }: Point) => Math.sqrt(t * least);
const notFound = 'not found';
const currentText = (I: number) => given(Number(I.toPrecision(3)), 'A');

function saidOf(of: Device, points: readonly Point[], I: number, right: Point | undefined): Said {
  if (I === of.In)
    return {
      id: 'M30',
      trueOf: `${currentText(I)} is the number on the ${of.kind}.`,
      ask: `Must the ${of.kind} open there, or must it hold?`,
    };
  const point = points.find((one) => one.I === I) as Point;
  const between = point.least > 0 && middle(point) < point.cord;
  const device = timeText(point.t);
  if (point.cord < point.t) {
    const trueOf = `at ${currentText(I)} the ${of.kind} may take ${device}, and the cord needs ${timeText(point.cord)}.`;
    const ask = 'Which comes first there, if the sample is a slow one?';
    if (between) return { id: 'M36', trueOf, ask };
    return { trueOf, whyNot: 'The cord can pass its limit there while the device still holds.', ask };
  }
  return {
    trueOf: 'the device does come first there.',
    whyNot: right ? `It already does so at ${currentText(right.I)}.` : 'No point says so.',
    ask: 'Which is the first point at which the device comes first?',
  };
}

function optionsOf(drawn: Case, practice: Practice): { options: readonly ChooseOption[]; right: string } {
  const { of, points } = factsOf(drawn, practice);
  const closing = closesAt(points, slow);
  const right = closing ? String(closing.I) : notFound;
  const at = closing ? points.indexOf(closing) : points.length - 1;
  const shown = points.slice(Math.max(0, at - 2), at + 2);
  const currents = [...new Set([of.In, ...shown.map(({ I }) => I)])].sort((a, b) => a - b).slice(-4);
  const options = currents.map((I): ChooseOption => {
    const option = { id: String(I), text: `At ${currentText(I)}.` };
    return option.id === right ? option : { ...option, said: saidOf(of, points, I, closing) };
  });
  const none: ChooseOption = { id: notFound, text: 'The standard’s points do not say.' };
  const noneSaid: Said = {
    trueOf: 'above its last point the standard is silent.',
    whyNot: `Here a point does say it: at ${closing ? currentText(closing.I) : ''} the device comes first.`,
    ask: 'At which point is the device’s time shorter than the cord’s?',
  };
  return { options: dealt([...options, closing ? { ...none, said: noneSaid } : none], drawn.deal), right };
}

/** 'from 24.7 A within 30 min, from 30 A within 6 min 40 s' */
const list = (parts: readonly string[]) =>
  parts.length < 2 ? (parts[0] ?? '') : `${parts.slice(0, -1).join(', ')} and ${parts.at(-1)}`;

function built(drawn: Case, practice: Practice): BuiltChoose {
  const { of, points, T_degC, Iz } = factsOf(drawn, practice);
  const cord = cordOf(drawn.cord);
  const { options, right } = optionsOf(drawn, practice);
  const closing = closesAt(points, slow);
  const opens = of.kind === 'fuse' ? 'opens' : 'trips';
  const by = points.map(({ I, t }) => `${currentText(I)} within ${spanText(t)}`);
  const early = points
    .filter(({ least }) => least > 0)
    .map(({ I, least }) => `${spanText(least)} at ${currentText(I)}`);
  const needs = points.map(({ I, cord: t }) => `${spanText(t)} at ${currentText(I)}`);
  const text = closing
    ? `it closes at ${currentText(closing.I)}: the ${of.kind} needs ${spanText(closing.t)} at most, the cord ${spanText(closing.cord)}.`
    : `no point of the standard closes it; only the maker’s curve can say.`;
  return {
    kind: 'choose',
    stem: [
      words`${cord.words.replace('a ', 'A ')} lies in still air at ${quantity(temperatureText(drawn.ambient_degC, practice))}, behind ${withArticle(of.name)}. Its limit is ${quantity(temperatureText(T_degC, practice))}. The gap begins at ${quantity(currentText(Iz))}.`,
      words`The ${of.kind} surely ${opens} at these currents: ${list(by)}.${early.length > 0 ? ` It does not act before ${list(early)}.` : ''}`,
      words`From cold, the cord passes its limit in ${list(needs)}. By these points alone, where does the gap first close?`,
    ],
    ask: 'Choose one.',
    parts: [{ id: 'current', label: 'Where it closes', options, right }],
    answer: { text },
    scenarios: [],
    hints: [
      words`Harm is judged by the slowest sample. Which of the two times of the device is that?`,
      words`Go from point to point. At each, compare the device’s longest time with the cord’s.`,
      words`The gap closes at the first point where the device comes first.`,
    ],
    solution: [
      words`A cord is at risk where its own time is shorter than the longest time of the device.`,
      words`The ${of.kind} needs at most: ${list(by)}.`,
      words`The cord needs ${list(needs)}.`,
      words`So ${text}`,
      words`At higher currents, in a short circuit, the cord may be sooner again. ${silentOf(of)}`,
    ],
    look: 'Write both times side by side at each current. Which is the shorter?',
    cautions: [gapCaution],
  };
}

/** How Q55b is drawn and built. */
export const gapClosesSpec: TemplateSpec<Case> = {
  id: 'Q55b',
  version: 1,
  lesson: '4.3',
  kind: 'choose',
  title: 'Where the gap closes',
  difficulty: 3,
  practices: ['iec', 'na'],
  objectives: ['4.3 find the upper end'],
  misconceptions: ['M30', 'M36'],
  draw: drawnCase,
  fallbacks: {
    iec: [{ family: 'bs1362', In: 13, cord: 'C125', ambient_degC: 25, deal: 1 }],
    na: [{ family: 'ul489', In: 20, cord: 'A16', ambient_degC: 25, deal: 1 }],
  },
  build: built,
};

/** Q55b: where the gap of a cord behind a device first closes. */
export const gapCloses = defineTemplate(gapClosesSpec);
