import { describe, expect, it } from 'vitest';
import { castScenario } from '#engine/examples/cast.ts';
import { type AlongRun, alongRun, type SettledRun, voltsAt } from '#engine/heating/along-run.ts';
import { dropGuides } from '#engine/heating/drop-guides.ts';
import { type LoadKind, loadAs, loadOf, nominalVolts, sourceVolts, stepOfLoad } from '#engine/heating/nominal-load.ts';
import { steadyFlow } from '#engine/heating/steady.ts';
import { leadResistance } from '#engine/heating/thermal-case.ts';
import type { Scenario } from '#engine/scenario/schema.ts';
import { sources } from '#engine/sources.ts';

const run = (I: number, length_m: number, key: 'C150' | 'A14' | 'SUS' = 'C150'): Scenario => ({
  ...castScenario(key, I, 20),
  lead: { length_m },
});
const told = (kind: LoadKind, I: number, length_m: number): Scenario => ({
  ...run(I, length_m),
  supply: [stepOfLoad(loadAs(kind, { kind: 'amps', value: I }, 230), 230)],
});

function settled(of: AlongRun): SettledRun {
  if (of.kind !== 'settled') throw new Error(of.kind);
  return of;
}

describe('volts along a run', () => {
  it.each(['amps', 'ohms', 'watts'] as const)('balance for a load in %s: volts, watts and heat', (kind) => {
    const of = settled(alongRun(told(kind, 12, 60)));
    const { thermal, chain, I, R, lost, atLoad } = of;
    expect(R).toBeCloseTo(leadResistance(thermal, chain.conductor), 12);
    expect(lost).toBeCloseTo(I * R, 10);
    expect(atLoad).toBeCloseTo(230 - lost, 10);
    expect(of.heat + of.delivered).toBeCloseTo(230 * I, 8);
    // the lead is as warm as its own current makes it
    expect(of.heatPerMetre).toBeCloseTo(steadyFlow(thermal, chain.conductor), 6);
    expect(of.heatPerMetre * 60).toBeCloseTo(of.heat, 8);
  });

  it('gives each load what it is: its amps, its ohms, its watts', () => {
    expect(settled(alongRun(told('amps', 12, 60))).I).toBe(12);
    const ohms = settled(alongRun(told('ohms', 12, 60)));
    expect(ohms.atLoad / ohms.I).toBeCloseTo(230 / 12, 9);
    const watts = settled(alongRun(told('watts', 12, 60)));
    expect(watts.delivered).toBeCloseTo(2760, 7);
  });

  it('orders the three: fewer volts mean fewer amps for ohms, and more for watts', () => {
    const [amps, ohms, watts] = (['amps', 'ohms', 'watts'] as const).map(
      (kind) => settled(alongRun(told(kind, 12, 60))).I,
    ) as [number, number, number];
    expect(ohms).toBeLessThan(amps);
    expect(watts).toBeGreaterThan(amps);
  });

  it('takes the stable root of a constant-power load: most of the volts are at the load', () => {
    const of = settled(alongRun({ ...run(0, 60), supply: [stepOfLoad({ kind: 'watts', value: 5000 }, 230)] }));
    expect(of.atLoad).toBeGreaterThan(115);
    const { I, R, source } = of;
    expect(I).toBeCloseTo((source - Math.sqrt(source ** 2 - 4 * 5000 * R)) / (2 * R), 8);
  });

  it('falls evenly, as much on the way back as on the way out', () => {
    const of = settled(alongRun(run(12, 60)));
    const [start, half, end] = [0, 30, 60].map((x) => voltsAt(of, x)) as [
      ReturnType<typeof voltsAt>,
      ReturnType<typeof voltsAt>,
      ReturnType<typeof voltsAt>,
    ];
    expect(start.between).toBe(230);
    expect(half.between).toBeCloseTo((start.between + end.between) / 2, 10);
    expect(end.between).toBeCloseTo(of.atLoad, 10);
    expect(end.out).toBeCloseTo(end.back, 12);
  });

  it('loses twice the volts over twice the length, and is no hotter', () => {
    const [short, long] = [settled(alongRun(run(8, 30))), settled(alongRun(run(8, 60)))];
    expect(long.lost).toBeCloseTo(2 * short.lost, 9);
    expect(long.chain.conductor).toBeCloseTo(short.chain.conductor, 9);
    expect(long.share).toBeCloseTo(long.lost / 230, 12);
  });

  it('knows 120 V, and the resistance of the loop while it is cold', () => {
    const of = settled(alongRun(run(12, 30.48, 'A14')));
    expect(of.source).toBe(120);
    const sus = settled(alongRun(run(5, 60, 'SUS')));
    expect(sus.cold).toBeCloseTo(2 * 60 * sus.thermal.cable.conductor.R20, 12);
    expect(sus.R).toBeGreaterThan(sus.cold);
  });
});

describe('a load that the lead cannot feed', () => {
  it('is none where the watts ask for more than U²/4R even cold', () => {
    const of = alongRun({ ...run(0, 60), supply: [stepOfLoad({ kind: 'watts', value: 20_000 }, 230)] });
    if (of.kind !== 'no such load') throw new Error(of.kind);
    expect(of.mostCold).toBeCloseTo(230 ** 2 / (4 * leadResistance(of.thermal, of.thermal.T0)), 6);
    expect(of.atFirst).toBe(false);
  });

  it('is one at first and none later where warming takes it away', () => {
    const most = alongRun({ ...run(0, 60), supply: [stepOfLoad({ kind: 'watts', value: 20_000 }, 230)] });
    const value = most.kind === 'no such load' ? most.mostCold * 0.99 : 0;
    const of = alongRun({ ...run(0, 60), supply: [stepOfLoad({ kind: 'watts', value }, 230)] });
    expect(of).toMatchObject({ kind: 'no such load', atFirst: true });
  });

  it('is none where the lead alone would take all the volts', () => {
    const of = alongRun(run(30, 500));
    expect(of).toMatchObject({ kind: 'no such load', source: 230 });
  });

  it('is another thing than a lead that melts', () => {
    expect(alongRun(run(300, 1)).kind).toBe('melts first');
  });
});

describe('a load at the end of a run', () => {
  it.each(['amps', 'ohms', 'watts'] as const)('is read back from its step as %s', (kind) => {
    const load = { kind, value: kind === 'watts' ? 2000 : 14 };
    const read = loadOf({ ...run(1, 1), supply: [stepOfLoad(load, 230)] });
    expect(read?.kind).toBe(kind);
    expect(read?.value).toBeCloseTo(load.value, 10);
  });

  it('is none where volts are held across the lead', () => {
    const held: Scenario = { ...run(1, 1), supply: [{ kind: 'voltage', U_V: 6 }] };
    expect(loadOf(held)).toBeNull();
    expect(sourceVolts(held)).toBe(6);
    expect(settled(alongRun(held)).atLoad).toBeCloseTo(0, 9);
  });
});

it('cites where guides and nominal volts are from', () => {
  for (const practice of ['iec', 'na'] as const) {
    expect(sources[nominalVolts[practice].source]).toBeDefined();
    expect(dropGuides[practice].map(({ share }) => share)).toEqual([0.03, 0.05]);
    for (const guide of dropGuides[practice]) for (const id of guide.sources) expect(sources[id]).toBeDefined();
  }
});
