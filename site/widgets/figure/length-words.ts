import { foot } from '#engine';
import { fixed, type Practice, quantity } from '../../lib/format.ts';

/** A length in the practice's unit: '30 m', or '100 ft'; whole where it is, else to a tenth. `length_m` in metres. */
export function lengthWords(length_m: number, practice: Practice): string {
  const [value, unit] = practice === 'na' ? [length_m / foot, 'ft'] : [length_m, 'm'];
  const tenth = fixed(value, 1);
  return quantity(value, unit, tenth.endsWith('.0') ? 0 : 1);
}

/** A conductor's resistance as the practice tells it: `R` in Ω/m, told in mΩ/m, or in Ω per 1000 ft. */
export function perLength(R: number, practice: Practice): { value: number; unit: string } {
  return practice === 'na' ? { value: R * 1000 * foot, unit: 'Ω/1000 ft' } : { value: R * 1000, unit: 'mΩ/m' };
}
