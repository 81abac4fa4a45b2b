import { conductorResistance, type ThermalCase } from './thermal-case.ts';

const panels = 16;
const offset = Math.sqrt(0.15); // of the three-point Gauss rule

/**
 * Time [s] in which current `I` [A] in each loaded core warms the conductor from `from` to `to` [K] when no heat leaves it:
 * t = C'/(n I²) ∫ dθ/R'(θ), the adiabatic bound of a short circuit. Infinite without current. Sound below about 5 s.
 */
export function adiabaticTime(of: ThermalCase, I: number, from: number, to: number): number {
  const width = (to - from) / panels;
  let sum = 0;
  for (let i = 0; i < panels; i++) {
    const middle = from + (i + 0.5) * width;
    const at = (x: number) => 1 / conductorResistance(of, middle + x * width);
    sum += (width * (5 * at(-offset) + 8 * at(0) + 5 * at(offset))) / 18;
  }
  return (of.conductorCapacity * sum) / (of.n * I * I);
}
