import type { FaultWithstand, WithstandAt } from '#engine';
import { significant, thin, timeInWords } from '../../lib/format.ts';
import { amps } from '../loop-trace/words.ts';

const energy = (I2t: number): string => `${significant(I2t, 3)}${thin}A²s`;

/** Whether the lead's conductor outlasts the fault, in a sentence. */
export function survivesWords({ each, survives }: FaultWithstand): string {
  if (each.every((one) => one.energy === null)) return 'Without a device nothing ends the fault.';
  if (survives) return 'The conductor outlasts the device, at both ends of the lead.';
  if (survives === false) return 'The conductor does not outlast the device.';
  return 'Whether the conductor outlasts the device, its standard does not tell.';
}

/** What the conductor stands: k²S², with what k rests on. */
export function standsWords({ k, stands }: FaultWithstand): string {
  return `It stands ${energy(stands)}, k²S² with k ${significant(k.k / 1e6, 3)}${thin}A·s½/mm².`;
}

/** One end of the lead: how long the conductor stands the current, and what the device makes of it. */
export function endWords({ at, I, lasts, energy: of, survives }: WithstandAt): string {
  const stands = `${amps(I)} at the ${at}: the conductor stands it for ${timeInWords(lasts.value)}.`;
  if (!of) return stands;
  const told = Number.isFinite(of.t)
    ? of.atMost
      ? `The device lets at most ${energy(of.atMost.I2t)} through`
      : `The device may take ${timeInWords(of.t)}`
    : 'The device may hold for ever';
  const verdict = survives === null ? 'no answer' : survives ? 'holds' : 'fails';
  return `${stands} ${told}: ${verdict}.`;
}
