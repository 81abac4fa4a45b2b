// Verdicts that want mending: how each sentence stands is worked out from the facts, so other facts give other standings.
import { describe, expect, it } from 'vitest';
import {
  buildCase,
  cast,
  celsius,
  device,
  faultyVerdicts,
  harmSet,
  suspectFacts,
  suspectVerdict,
  verdictOrigin,
  verdictWords,
  type WholeFacts,
} from '#engine';

const practices = ['iec', 'na'] as const;
const claimOf = (facts: WholeFacts, id: string) =>
  faultyVerdicts(facts)
    .flatMap(({ claims }) => claims)
    .find((one) => one.id === id)!;

describe.each(practices)('of the suspect lead (%s)', (practice) => {
  const facts = suspectFacts(practice);
  const told = suspectVerdict(practice);

  it('one verdict is too bold and one too timid, and both have sentences that are right', () => {
    const standings = (id: string) => told.faulty.find((one) => one.id === id)!.claims.map(({ standing }) => standing);
    expect(standings('bold')).toContain('too much');
    expect(standings('bold')).not.toContain('too little');
    expect(standings('timid')).toContain('too little');
    expect(standings('timid')).not.toContain('too much');
    for (const id of ['bold', 'timid']) expect(standings(id)).toContain('rightly');
  });

  it('rightly claimed figures are those of our own verdict', () => {
    const ours = verdictWords(facts)
      .map(({ text }) => text)
      .join(' ');
    const figure = /[\d.]+\u00A0mm²/.exec(claimOf(facts, 'equal').text)![0];
    expect(ours).toContain(figure);
    expect(ours).toContain(`${Math.round(celsius(facts.reached.T.value))}\u00A0°C`);
  });

  it('every sentence of ours says where its numbers come from', () => {
    for (const { id, text, from } of told.ours) {
      if (/\d/.test(text)) expect(from, text).toMatch(/[a-z]{3}/);
      expect(from).toBe(verdictOrigin(id, facts));
    }
  });

  it('three sentences say why the device never opened: it carries more than the lead does', () => {
    expect(told.neverOpened).toHaveLength(3);
    const [flowed, carried] = told.neverOpened.map((text) =>
      Number(/([\d.]+)\u00A0A (?:for ever|before)/.exec(text)?.[1]),
    );
    expect(flowed).toBeGreaterThan(carried as number);
  });

  it('is plain data, which a page can hand over', () => {
    expect(JSON.parse(JSON.stringify(told))).toEqual(told);
  });
});

describe('other facts, another standing', () => {
  const facts = suspectFacts('iec');

  it('of the metal, where it is not probable enough', () => {
    expect(claimOf(facts, 'no metal').standing).toBe('too little');
    const unsure = { ...facts, metal: { ...facts.metal, probability: 0.6 } };
    expect(claimOf(unsure, 'no metal').standing).toBe('rightly');
  });

  it('of the device, where it surely acts first', () => {
    expect(claimOf(facts, 'would open').standing).toBe('too much');
    const of = buildCase({
      ...{ cable: cast.C150, practice: 'iec', supply: [{ kind: 'current', I_A: 3 }] },
      surroundings: { kind: 'stillAir', ambient_degC: 20 },
    });
    const limit = of.limits.find(({ kind }) => kind === 'rating')!;
    const harm = harmSet(of, device('bs1362', 3)!, limit, { prospective: 40 });
    expect(harm.spans).toEqual([]);
    const sure = { ...facts, device: { ...facts.device, harm } };
    expect(claimOf(sure, 'would open').standing).toBe('rightly');
  });
});

it('nothing of ours accuses anybody, and none of it uses the words a report leaves out', () => {
  for (const practice of practices) {
    const { ours, neverOpened } = suspectVerdict(practice);
    const words = [...ours.map(({ text }) => text), ...neverOpened].join(' ');
    expect(words).not.toMatch(/\b(?:safe|illegal|counterfeit|caused|maker|cheat)/i);
  }
});
