// Measurements whose uncertainty is worked in print, as models. Numbers are as printed there.
import { correlationOf, fromLimit, type Input, type Model, repeated } from '#engine';
import { readTable, text } from './table.ts';

const of = (name: string, value: number, u: number, more: Partial<Input> = {}): Input => ({
  name,
  unit: '1',
  value,
  u,
  ...more,
});
const rectangular = (name: string, value: number, limit: number): Input =>
  of(name, value, fromLimit(limit), { distribution: 'rectangular' });
const sum = (x: readonly number[]) => x.reduce((total, v) => total + v, 0);
const alike = (n: number, r: number) =>
  Array.from({ length: n }, (_, i) => Array.from({ length: n }, (_, j) => (i === j ? 1 : r)));

// GUM H.2: V [V], I [A], φ [rad]
type Impedance = 'R' | 'X' | 'Z';
const impedances: Record<Impedance, (x: readonly number[]) => number> = {
  R: ([V, I, phi]) => (V / I) * Math.cos(phi),
  X: ([V, I, phi]) => (V / I) * Math.sin(phi),
  Z: ([V, I]) => V / I,
};
const table = (VI: number, Vphi: number, Iphi: number) => [
  [1, VI, Vphi],
  [VI, 1, Iphi],
  [Vphi, Iphi, 1],
];

function rounded(which: Impedance): Model {
  const inputs = [of('V', 4.999, 3.2e-3), of('I', 19.661e-3, 9.5e-6), of('phi', 1.04446, 7.5e-4)];
  return { inputs, f: impedances[which], correlation: table(-0.36, 0.86, -0.65) };
}

/** Readings of a row, and of the row beside it after ' ; '. */
export const readingsOf = (list: string): number[][] => list.split(' ; ').map((part) => part.split(' ').map(Number));

function fromReadings(which: Impedance): Model {
  const rows = readTable('uncertainty.csv');
  const [V, I_mA, phi] = ['V', 'I', 'phi'].map((name) => {
    const row = rows.find(({ id }) => id === `H2-mean-${name}`);
    if (!row) throw new Error(`no readings of ${name}`);
    return readingsOf(text(row, 'readings'))[0];
  });
  const I = I_mA.map((x) => x * 1e-3);
  const inputs = [V, I, phi].map((x, i) => of(['V', 'I', 'phi'][i], repeated(x).value, repeated(x).u));
  return {
    inputs,
    f: impedances[which],
    correlation: table(correlationOf(V, I), correlationOf(V, phi), correlationOf(I, phi)),
  };
}

/** GUM H.1, lengths in nanometres, temperatures from 20 °C. */
const gauge: Model = {
  inputs: [
    of('length of the standard', 50000623, 25, { dof: 18 }),
    of('difference', 215, 9.7, { dof: 25.6 }),
    of('difference of expansion coefficients', 0, fromLimit(1e-6), { dof: 50 }),
    of('deviation of the temperature', -0.1, 0.41),
    of('expansion coefficient', 11.5e-6, 1.2e-6),
    of('difference of temperatures', 0, fromLimit(0.05), { dof: 2 }),
  ],
  f: ([ls, d, dAlpha, theta, alpha, dTheta]) => ls + d - ls * (dAlpha * theta + alpha * dTheta),
};

/** GUM G.4.1: a product of three, in per cent of each. */
const product: Model = {
  inputs: [of('X1', 100, 0.25, { dof: 9 }), of('X2', 100, 0.57, { dof: 4 }), of('X3', 100, 0.82, { dof: 14 })],
  f: ([a, b, c]) => (a * b * c) / 1e4,
};

const resistors = Array.from({ length: 10 }, (_, i) => of(`R${i + 1}`, 1000, 0.1));

/** JCGM 101, 9.3: milligrams and kilograms per cubic metre. */
const mass: Model = {
  inputs: [
    of('reference mass', 100000, 0.05),
    of('added mass', 1.234, 0.02),
    rectangular('air', 1.2, 0.1),
    rectangular('density of the weight', 8000, 1000),
    rectangular('density of the reference', 8000, 50),
  ],
  f: ([mR, dm, air, W, R]) => (mR + dm) * (1 + (air - 1.2) * (1 / W - 1 / R)) - 100000,
};

/** JCGM 101, 9.4: in millionths. */
const loss = (x1: number): Model => ({
  inputs: [of('X1', x1, 0.005), of('X2', 0, 0.005)],
  f: ([a, b]) => 1e6 * (a * a + b * b),
});

const additive = (kind: Input['distribution'], last = 1): Model => ({
  inputs: [1, 1, 1, last].map((u, i) => of(`X${i + 1}`, 0, u, { distribution: kind })),
  f: sum,
});

/** The printed measurements by name. */
export const uncertaintyCases: Readonly<Record<string, Model>> = {
  'H.1': gauge,
  'H.2 R': rounded('R'),
  'H.2 X': rounded('X'),
  'H.2 Z': rounded('Z'),
  'H.2 R from readings': fromReadings('R'),
  'H.2 X from readings': fromReadings('X'),
  'H.2 Z from readings': fromReadings('Z'),
  'ten resistors, one standard': { inputs: resistors, f: sum, correlation: alike(10, 1) },
  'ten resistors, independent': { inputs: resistors, f: sum },
  'product of three': product,
  'digital voltmeter': {
    inputs: [of('mean, µV', 928571, 12), rectangular('meter, µV', 0, 14 * 0.928571 + 2)],
    f: sum,
  },
  S9: {
    inputs: [
      of('shown', 100.1, 0),
      of('certificate', 100, 0.001),
      rectangular('resolution', 0, 0.05),
      rectangular('calibrator', 0, 0.011),
    ],
    f: ([shown, certificate, resolution, calibrator]) => shown - certificate + resolution - calibrator,
  },
  'four normal': additive('normal'),
  'four rectangular': additive('rectangular'),
  'one wide rectangular': additive('rectangular', 10),
  'mass calibration': mass,
  'comparison loss, x1 0.000': loss(0),
  'comparison loss, x1 0.010': loss(0.01),
  'comparison loss, x1 0.050': loss(0.05),
};
