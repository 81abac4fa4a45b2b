import { type Cited, cite } from './cited.ts';

/** A device that sees something other than too much current, told in words. */
export interface OtherSense extends Cited {
  readonly id: 'rcd' | 'gfci' | 'afci';
  readonly name: string;
  readonly practice: 'iec' | 'na' | 'both';
  /** What it looks at, when it opens, and what it cannot see; a sentence each. */
  readonly sees: string;
  readonly opens: string;
  readonly blindTo: string;
  /** What it does at any overload current. It is the device's row on a hold-or-open line. */
  readonly onOverload: 'holds';
}

/** Residual current and arc-fault devices. None of them protects a lead from overload. */
export const otherSenses: readonly OtherSense[] = [
  {
    id: 'rcd',
    name: 'RCD',
    practice: 'iec',
    sees: 'It compares the current that goes out with the current that comes back.',
    opens: 'A 30 mA type opens between 15 and 30 mA of difference, within 0.3 s.',
    blindTo:
      'An overload is the same in both conductors. So is a short circuit between line and neutral. It sees neither.',
    onOverload: 'holds',
    ...cite('iec61008', 'residual operating current and break times', 'from memory'),
  },
  {
    id: 'gfci',
    name: 'GFCI',
    practice: 'na',
    sees: 'It compares the current in the hot conductor with the current in the neutral.',
    opens: 'A class A type opens at 4 to 6 mA of difference.',
    blindTo: 'An overload is equal out and back. The device carries it for as long as it lasts.',
    onOverload: 'holds',
    ...cite('ul943', 'class A', 'from memory'),
  },
  {
    id: 'afci',
    name: 'AFCI (arc-fault device)',
    practice: 'both',
    sees: 'It listens for the ragged shape that an arc gives the current.',
    opens: 'It opens when that shape lasts, at currents a breaker would carry.',
    blindTo: 'A smooth overload has no such shape. A glowing contact may have none either.',
    onOverload: 'holds',
    ...cite('ul1699', 'arc detection', 'from memory'),
  },
];
