import type { FaultWithstand, WithstandAt } from '#engine';
import { timeInWords } from '../../lib/format.ts';
import { energy, kWords } from '../i2t-scale/words.ts';
import { amps } from '../loop-trace/words.ts';

/** Whether the lead's conductor outlasts the fault, in a sentence. */
export function survivesWords({ each, survives }: FaultWithstand): string {
  if (each.every((one) => one.energy === null)) return 'Without a device nothing ends the fault.';
  if (survives) return 'The conductor outlasts the device, at both ends of the lead.';
  if (survives === false) return 'The conductor does not outlast the device.';
  return 'Whether the conductor outlasts the device, its standard does not tell.';
}

/** What the conductor stands: k²S², with what k rests on. */
export function standsWords(of: FaultWithstand): string {
  return `It stands ${energy(of.stands)}, k²S² with k ${kWords(of)}.`;
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
