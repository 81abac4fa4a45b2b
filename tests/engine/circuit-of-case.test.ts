// Contacts and the fault path of a case: their sums, the loop they close, and what the conductor stands of the fault.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  allowedTime,
  type CableSpec,
  cableOf,
  cast,
  castScenario,
  celsius,
  clearsInTime,
  contactsAt,
  contactsOf,
  type Device,
  device,
  deviceEnergy,
  disconnectionTime,
  energyTest,
  faultCleared,
  faultLoop,
  faultOf,
  faultStatements,
  faultWithstand,
  heatMade,
  hottestMoment,
  kelvin,
  kOf,
  leadReading,
  loopOf,
  metals,
  outlasts,
  partOf,
  predict,
  prospectiveOf,
  type Scenario,
  slowest,
  socketCurrent,
  type TimeLimit,
} from '#engine';
import { buildCase } from '#engine/heating/thermal-case.ts';
import { parseScenario } from '#engine/scenario/parse.ts';
import { anyScenario } from './arbitrary.ts';

const of = (family: Parameters<typeof device>[0], In: number): Device => device(family, In) as Device;
const cord = (rest: Partial<Scenario> = {}, cable: CableSpec = cast.C150): Scenario => ({
  ...{ ...castScenario('C150', 10, 20), cable, lead: { length_m: 30 } },
  ...rest,
});
const fault = { Ze_ohm: 0.35, line_ohm: 0.15, earth_ohm: 0.25 };

describe('contacts', () => {
  const lead = {
    length_m: 10,
    contact_ohm: 0.002,
    contacts: [
      { kind: 'pin', R_ohm: 0.02 },
      { kind: 'fuse', name: 'plug fuse', R_ohm: 0.004 },
      { kind: 'pin', R_ohm: 0.0005 },
    ],
  } satisfies Scenario['lead'];

  it('add up, listed and not listed, to the R_contact of the supply', () => {
    const thermal = buildCase(cord({ lead }));
    expect(thermal.lead.contact).toBeCloseTo(0.0265, 12);
    expect(contactsOf(thermal.scenario).map(({ name }) => name)).toEqual([
      'plug pin 1',
      'plug fuse',
      'plug pin 2',
      'other contacts together',
    ]);
  });

  it('take volts from a lead as one resistance of the same ohms does', () => {
    const supply: Scenario['supply'] = [{ kind: 'voltage', U_V: 6 }];
    const listed = predict(cord({ lead, supply })).lead.start.I;
    const asOne = predict(cord({ lead: { length_m: 10, contact_ohm: 0.0265 }, supply })).lead.start.I;
    expect(listed).toBeCloseTo(asOne, 9);
    expect(listed).toBeLessThan(predict(cord({ lead: { length_m: 10 }, supply })).lead.start.I * 0.95);
  });

  it('make the heat of the lead’s reading, and as metres make the heat of that much lead', () => {
    const { thermal, run } = predict(cord({ lead }));
    const { I, conductor } = hottestMoment(run.curves);
    const beside = contactsAt(thermal, I, conductor);
    expect(beside?.W).toBeCloseTo(leadReading(thermal, I, conductor).contactHeat, 9);
    for (const { W, asMetres } of beside?.contacts ?? [])
      expect(asMetres * heatMade(thermal, I, conductor)).toBeCloseTo(W, 9);
  });

  it('are told as metres of lead without current, too', () => {
    const metres = (I: number) =>
      contactsAt(buildCase(cord({ lead })), I, kelvin(40))?.contacts.map(({ asMetres }) => asMetres);
    expect(metres(0)).toEqual(metres(13));
    expect(contactsAt(buildCase(cord()), 13, kelvin(40))).toBeNull();
  });
});

/** Zs, least and greatest current of the loop figure's three cases while it still composed its loop by itself. */
const former = [
  ['1.78341', '122.518', '148.579'],
  ['3.41774', '63.9311', '79.1383'],
  ['1.21502', '98.7638', '115.921'],
];

describe('the fault path of a case', () => {
  it('closes the loop that its parts make by hand', () => {
    const thermal = buildCase(cord({ fault }));
    const { conductor } = thermal.cable;
    const copper = metals.copper.alpha20.value;
    const byHand = loopOf({
      ...{ U0: 230, Ze: 0.35, T: kelvin(70) },
      parts: [
        { name: 'line, fixed', R20: 0.15, alpha20: copper },
        partOf('line, lead', conductor, 30),
        partOf('earth, lead', conductor, 30),
        { name: 'earth, fixed', R20: 0.25, alpha20: copper },
      ],
    });
    const loop = faultOf(thermal);
    expect(loop?.loop).toEqual(byHand);
    expect(loop?.loop.Zs).toBeCloseTo(1.79, 1);
    const limit = disconnectionTime(230) as TimeLimit;
    const slow = (I: number) => slowest(of('B', 16), I, 'guaranteed');
    expect(loop && faultCleared(loop, of('B', 16)).clearing).toEqual(clearsInTime(byHand, slow, limit));
  });

  it('keeps every value of the loops that lessons show', () => {
    const at = (cable: CableSpec, U0: number, Ze: number, length: number, usage: 'iec' | 'na') =>
      faultLoop(cableOf(cable), { U0, Ze, fixed: { line: 0.15, earth: 0.25 }, T: kelvin(70) }, length, usage).loop;
    const told = ({ Zs, least, greatest }: ReturnType<typeof at>) => [Zs, least, greatest].map((x) => x.toPrecision(6));
    expect([
      told(at(cast.C150, 230, 0.35, 30, 'iec')),
      told(at(cast.SUS, 230, 0.35, 30, 'iec')),
      told(at(cast.A14, 120, 0.12, 30.48, 'na')),
    ]).toEqual(former);
  });

  it('is driven by the mains of the case, by its own volts, else by the nominal ones; never by volts held across a lead', () => {
    const volts = (rest: Partial<Scenario>) => faultOf(buildCase(cord({ fault, ...rest })))?.loop.U0;
    expect(volts({})).toBe(230);
    expect(volts({ practice: 'na' })).toBe(120);
    expect(volts({ supply: [{ kind: 'mains', U_V: 240, load_W: 2000 }] })).toBe(240);
    expect(volts({ supply: [{ kind: 'voltage', U_V: 6 }] })).toBe(230);
    expect(volts({ fault: { ...fault, U0_V: 110 } })).toBe(110);
  });

  it('gives the harm set its upper end, and without it the choice for a socket stands', () => {
    expect(prospectiveOf(cord({ fault }))).toEqual({ I: 230 / 0.35, from: 'fault path' });
    expect(prospectiveOf(cord())).toEqual({ I: socketCurrent.value, from: 'our choice' });
  });

  it('says what the lead has no core for, and that contacts are left out', () => {
    const ids = (scenario: Scenario) => {
      const thermal = buildCase(scenario);
      const loop = faultOf(thermal);
      return loop && faultStatements(thermal, loop).map(({ id }) => id);
    };
    expect(ids(cord({ fault }))).toEqual(['way back', 'TN']);
    expect(
      ids(cord({ fault, practice: 'na', lead: { contact_ohm: 0.1 } }, { table: 'H05VV-F', cores: 2, size_mm2: 1 })),
    ).toEqual(['no way back', 'contacts']);
  });

  it('of any scenario at all comes to ohms and amperes, with its currents in order', () => {
    fc.assert(
      fc.property(anyScenario, (given) => {
        const { scenario } = parseScenario(given);
        if (!scenario?.fault) return;
        const loop = faultOf(buildCase(scenario));
        if (!loop) throw new Error('a fault path was told');
        const { loop: round, nearEnd } = loop;
        expect(round.Zs).toBeGreaterThanOrEqual(round.Ze);
        expect(nearEnd).toBeGreaterThanOrEqual(round.greatest);
        expect(Number.isFinite(nearEnd) && round.least > 0).toBe(true);
      }),
      { seed: 5, numRuns: 1500 },
    );
  });
});

describe('what the conductor stands of the fault', () => {
  const tested = (cable: CableSpec, family: Parameters<typeof device>[0], In: number, Ze_ohm: number) => {
    const thermal = buildCase(cord({ fault: { Ze_ohm } }, cable));
    const loop = faultOf(thermal);
    const stands = loop && faultWithstand(thermal.cable, loop, of(family, In));
    if (!stands) throw new Error('PVC has a limit for a short circuit');
    return stands;
  };

  it('is k²S² of its own metal from the temperature of the fault', () => {
    const { k, stands, each } = tested(cast.C150, 'B', 16, 0.35);
    const { conductor, insulation } = cableOf(cast.C150);
    const own = insulation && kOf(conductor.metal, insulation, conductor.area);
    expect(k.k).toBeCloseTo(own?.k ?? Number.NaN, 3);
    expect(celsius(k.from)).toBeCloseTo(70, 9);
    expect(stands).toBeCloseTo((k.k * conductor.area) ** 2, 6);
    expect(each[0].I).toBeCloseTo(230 / 0.35, 9);
    expect(each[0].lasts.value).toBeCloseTo(stands / each[0].I ** 2, 12);
  });

  it('survives behind a breaker that is small for it, and not behind a fuse far too great for it', () => {
    expect(tested(cast.C150, 'B', 10, 0.5).survives).toBe(true);
    // nearer the source the breaker's standard no longer tells enough
    expect(tested(cast.C150, 'B', 10, 0.35).survives).toBeNull();
    const poor = tested(cast.C075, 'gG', 100, 0.1);
    expect(poor.survives).toBe(false);
    expect(poor.each[0].lasts.range).toBe('let-through');
  });

  it('is never said to fail on the word of k²S² alone where heat has time to leave', () => {
    const { conductor, insulation } = cableOf(cast.C150);
    const k = insulation && kOf(conductor.metal, insulation, conductor.area);
    if (!k) throw new Error('PVC has a limit for a short circuit');
    for (const I of [20, 30, 40, 60, 100, 300, 1000]) {
      const energy = deviceEnergy(of('gG', 16), I);
      const said = outlasts(k.k, conductor.area, I, energy);
      if (allowedTime(k.k, conductor.area, I).value > 5) expect(said).not.toBe(false);
      if (said)
        expect(
          energy.atMost === null || energyTest(k.k, conductor.area, energy.atMost.I2t).holds || energy.t <= 5,
        ).toBe(true);
    }
  });
});
