import * as v from 'valibot';
import { awgSizes, type DeviceFamily, deviceFamilies, type MetalId, standardRatings, standardSizes } from '#engine';
import { ends, wireMetals } from '../../widgets/i2t-scale/energy-case.ts';
import { amount, castPair, either, figureNumber, named, oneOf, sizesByPractice, words } from './prop-parts.ts';

// What the figures of a circuit accept: choosing a size, the loop of a fault, and I²t of conductor and devices.

const figure = { id: named, number: figureNumber, title: words('title') };

const family = oneOf(deviceFamilies.map(({ id }) => id) as DeviceFamily[]);

/** A device by its family and a rating that the family is made in. */
export const namedDevice = v.pipe(
  v.strictObject({ family, rating: v.number('is a rating in A, in braces') }),
  v.check(
    ({ family: of, rating }) => standardRatings(of).includes(rating),
    ({ input }) => {
      const { family: of, rating } = input as { family: DeviceFamily; rating: number };
      return `${rating} A is no rating of ${of}; there are ${standardRatings(of).join(', ')}`;
    },
  ),
);
const devicePair = v.strictObject({ iec: namedDevice, na: namedDevice }, 'is a device for iec and for na');
const amps = either(amount(0.1, 1000, 'A'));

/** What a size is chosen for. The load is told in `watts`, at `volts`, or in `amps`. */
export const chooserParts = {
  watts: v.optional(either(amount(1, 20_000, 'W'))),
  volts: v.optional(either(amount(50, 480, 'V'))),
  amps: v.optional(amps),
  device: devicePair,
  /** How the cable lies in UK and IEC practice; flat twin and earth, clipped, unless given. */
  laid: v.optional(oneOf(['flat twin', 'A2', 'B2', 'C', 'E'])),
  metal: v.optional(either(oneOf(['copper', 'aluminium']))),
  ambient: either(amount(0, 85, '°C')),
  /** Circuits in one bunch for iec, conductors that carry current together for na. */
  together: v.optional(either(v.pipe(amount(1, 20, 'circuits or conductors'), v.integer('is a whole number')))),
  lagged_mm: v.optional(amount(0, 1000, 'mm')),
  /** A load of three hours or more; it counts for more in North American practice. */
  continuous: v.optional(v.boolean('is true or false, in braces')),
  column: v.optional(v.picklist([60, 75, 90], 'is 60, 75 or 90, in braces')),
  terminals: v.optional(v.picklist([60, 75], 'is 60 or 75, in braces')),
};

/** From a load to a size. */
export const sizeChooserProps = v.pipe(
  v.strictObject({
    ...figure,
    ...chooserParts,
    /** All cards open from the start. */
    all: v.optional(v.boolean('is true or false, in braces')),
    controls: v.optional(
      v.array(oneOf(['load', 'device', 'method', 'metal', 'ambient', 'together', 'lagging', 'terminals'])),
    ),
  }),
  v.check(({ watts, amps: I }) => (watts === undefined) !== (I === undefined), 'has watts or amps, one of the two'),
);

const fixed = v.strictObject({ line: amount(0, 20, 'Ω'), earth: amount(0, 20, 'Ω') }, 'has ohms of line and of earth');

/** A fault to earth at the far end of a lead. `origin` is Ze [Ω]; `fixed` the wiring before the lead, cold [Ω]. */
export const loopTraceProps = v.strictObject({
  ...figure,
  cast: castPair,
  length_m: either(amount(0.5, 1000, 'm')),
  origin: either(amount(0, 20, 'Ω')),
  fixed: v.optional(either(fixed)),
  device: devicePair,
  /** Conductor temperature; the rating of its insulation unless given. */
  warm: v.optional(amount(20, 160, '°C')),
  sizes: v.optional(sizesByPractice),
  controls: v.optional(v.array(oneOf(['length', 'size', 'metal', 'origin', 'temperature', 'device']))),
});

/** What a conductor stands against what two devices let through. `amps` is the fault current; `earth` another size of its protective conductor. */
export const i2tScaleProps = v.strictObject({
  ...figure,
  cast: castPair,
  amps: either(amount(ends.amps.least, ends.amps.most, 'A')),
  down: devicePair,
  up: devicePair,
  metal: v.optional(oneOf(wireMetals as readonly MetalId[])),
  earth: v.optional(
    v.strictObject({
      iec: v.picklist(
        standardSizes.map(({ area_mm2 }) => area_mm2),
        'is a size in mm²',
      ),
      na: v.picklist(awgSizes, 'is a size in AWG'),
    }),
  ),
  sizes: v.optional(sizesByPractice),
  controls: v.optional(v.array(oneOf(['current', 'metal', 'size', 'downstream', 'upstream', 'maker']))),
});
