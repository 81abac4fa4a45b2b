import { celsius, coldReadingShare, type FaultCleared, type FaultLoop } from '#engine';
import { fixed, quantity, significant, temperature, thin, three, timeInWords } from '../../lib/format.ts';
import { shortName } from '../figure/devices.ts';
import { lengthWords } from '../figure/length-words.ts';

/** Ohms as the trade tells a loop: '1.79 Ω'. */
export const ohms = (R: number): string => (R < 0.1 ? `${fixed(R, 3)}${thin}Ω` : three(R, 'Ω'));

/** A fault current: three figures. */
export const amps = (I: number): string => `${significant(I, 3)}${thin}A`;

/** A time that a device may take, in words. */
export function opensWithin(t: number | null): string {
  if (t === null) return 'no time is told';
  return Number.isFinite(t) ? `within ${timeInWords(t)}` : 'it may hold for ever';
}

/** What the device does, as a clause of its own: 'it opens within 0.10 s'. */
export function opensWords(t: number | null): string {
  return t !== null && Number.isFinite(t) ? `it opens ${opensWithin(t)}` : opensWithin(t);
}

/** Whether the fault clears, pass or fail in words, or that the code sets no number. */
export function verdictWords({ clearing, limit }: FaultCleared): string {
  if (!limit) return 'The code gives no ohms and no seconds to pass or fail by';
  if (clearing.outcome === 'met') return 'Passes: the fault clears in time';
  return clearing.outcome === 'not met' ? 'Fails: the fault does not surely clear in time' : 'Not shown either way';
}

function inTime({ clearing, device, limit, loop }: FaultCleared): string {
  const name = shortName(device);
  const { t, I } = clearing;
  if (limit === null) {
    const said =
      t !== null && Number.isFinite(t)
        ? `Its standard promises only that the ${name} opens within ${timeInWords(t)}. The maker’s curve tells more.`
        : `At that current the ${name} may hold for ever.`;
    return `${said} The code sets no ohms and no seconds. It asks for a path that opens the device.`;
  }
  const allowed = `${fixed(limit.t, 1)}${thin}s`;
  if (clearing.outcome === 'met')
    return `The ${name} surely opens within ${timeInWords(t ?? 0)}, and ${allowed} are allowed: the fault clears in time.`;
  const may =
    t === null
      ? `No standard tells when the ${name} opens.`
      : Number.isFinite(t)
        ? `At ${amps(I)} the ${name} may take ${timeInWords(t)}, and ${allowed} are allowed.`
        : `At ${amps(I)} the ${name} may hold for ever.`;
  const most =
    clearing.greatestLoop === null
      ? ''
      : ` The loop may be ${ohms(clearing.greatestLoop)} at most; this is ${ohms(loop.Zs)}.`;
  return `${may}${most} The fault does not surely clear in time.`;
}

/** What flows round a loop, in two sentences. */
export function currentSentence({ loop, T, usage }: FaultLoop): string {
  const least = usage === 'na' ? '' : ' at least';
  return `All the way round it is ${ohms(loop.Zs)} with the conductors at ${temperature(celsius(T), usage)}, and ${ohms(loop.cold)} cold. So ${amps(loop.least)} flow${least}.`;
}

/** What the loop does, in three or four sentences. */
export const loopSentence = (of: FaultCleared): string => `${currentSentence(of)} ${inTime(of)}`;

/** The lead in words: '30 m, 3 × 1.5 mm², copper'. */
export function leadWords({ length, usage }: FaultLoop, cable: string): string {
  return `${lengthWords(length, usage)} of ${cable}`;
}

/** What may be read on cold conductors, after common practice. */
export function coldWords({ clearing }: FaultCleared): string {
  return clearing.greatestLoop === null
    ? '–'
    : `${ohms(coldReadingShare * clearing.greatestLoop)} at most, common practice`;
}

/** What a share of the time is: '0.1 s of 0.4 s'. */
export function timeMeaning(of: FaultCleared): string {
  const { limit, clearing } = of;
  if (!limit) return 'the code sets no time';
  return `${quantity(limit.t, 's', 1)} allowed: ${clearing.outcome === 'met' ? 'passes' : clearing.outcome === 'not met' ? 'fails' : 'not shown'}`;
}
