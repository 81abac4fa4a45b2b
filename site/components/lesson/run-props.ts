import * as v from 'valibot';
import { amount, either, leadParts, oneOf, sizesByPractice } from './prop-parts.ts';

// What the figures of a lead with a length accept: sizes side by side, volts along a run, one cord in four metals.

const lead = { ...leadParts, sizes: v.optional(sizesByPractice) };
const amps = either(amount(0, 1000, 'A'));
const length_m = either(amount(0.5, 1000, 'm'));

/** Cords of many sizes side by side at one current. */
export const sizeLadderProps = v.strictObject({
  ...lead,
  amps,
  length_m,
  controls: v.optional(v.array(oneOf(['size', 'length', 'current', 'ambient']))),
});

/** Volts along a run; `load` says how the load at its end is told. */
export const voltsAlongProps = v.strictObject({
  ...lead,
  amps,
  length_m,
  load: v.optional(oneOf(['amps', 'ohms', 'watts'])),
  controls: v.optional(v.array(oneOf(['length', 'size', 'current', 'load', 'ambient']))),
});

/** One cord in four metals, with amps or volts held; volts are those given, or what its copper cord takes at these amps. */
export const metalQuartetProps = v.pipe(
  v.strictObject({
    ...lead,
    amps: v.optional(amps),
    volts: v.optional(either(amount(0.1, 50, 'V'))),
    length_m: v.optional(length_m),
    held: v.optional(oneOf(['amps', 'volts'])),
    controls: v.optional(v.array(oneOf(['held', 'current', 'size', 'copper share', 'ambient']))),
  }),
  v.check(
    ({ amps: I, volts, held }) => (volts === undefined ? I !== undefined : I === undefined && held !== 'amps'),
    'has amps, or volts alone where volts are held',
  ),
);
