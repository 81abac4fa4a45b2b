import { describe, expect, it } from 'vitest';
import { buildCase, cast, device, harmSet, judge, kelvin, mend, type VerdictFacts, verdictWords } from '#engine';

const question = { prospective: 1000, Ib: 12 };

function behind(rating: number): VerdictFacts['device'] {
  const of = buildCase({
    cable: cast.SUS,
    practice: 'iec',
    surroundings: { kind: 'stillAir', ambient_degC: 25 },
    supply: [{ kind: 'current', I_A: 12 }],
  });
  const limit = of.limits.find(({ kind }) => kind === 'rating');
  if (!limit) throw new Error('no rating');
  const fuse = device('bs1362', rating);
  if (!fuse) throw new Error('no such fuse');
  return {
    harm: harmSet(of, fuse, limit, question),
    rule: judge(of, fuse, limit, question).rule,
    instead: mend(of, fuse, limit, question).words,
  };
}

const facts: VerdictFacts = {
  practice: 'iec',
  R20: { value: 36e-3, u: 0.3e-3 },
  metal: { name: 'clad aluminium', probability: 0.99 },
  reached: { I: 12, place: 'laid straight in still air', T: { value: kelvin(62), u: 1.4 }, rating: kelvin(70) },
  device: behind(13),
  agrees: true,
};
const text = (of: VerdictFacts, id: string) => verdictWords(of).find((one) => one.id === id)?.text ?? '';
const plain = (words: string) => words.replaceAll('\u00A0', ' ');

describe('the words of a verdict', () => {
  it('claim what was shown: copper by resistance, the plateau, the gap', () => {
    // 17.241/36.0 = 0.479 mm² (IEC 60028), 0.3 mΩ/m of 36 is 0.83 %
    expect(plain(text(facts, 'behaves as'))).toBe(
      'This sample behaves as clad aluminium (equal to 0.48 mm² copper by resistance, ± 0.008 mm²).',
    );
    expect(plain(text(facts, 'reaches'))).toBe(
      'At 12 A, laid straight in still air, its conductor reached 62 °C, ± 3 K; its insulation is rated 70 °C.',
    );
    expect(plain(text(facts, 'device'))).toMatch(/may carry 20\.8 A for ever; in that time this lead passes 70 °C/);
    expect(text(facts, 'suitable')).toMatch(
      /^Not suitable by the rule for use behind a 13\u00A0A plug fuse\. Instead: /,
    );
  });

  it('say what was not found out, and claim nothing of it', () => {
    const nothing: VerdictFacts = { ...facts, R20: null, metal: null, reached: null, device: null, agrees: null };
    expect(verdictWords(nothing).map(({ id }) => id)).toEqual(['not established']);
    expect(text(nothing, 'not established')).toMatch(/resistance.*metal.*temperature.*device/);
    expect(text({ ...facts, metal: { name: 'clad aluminium', probability: 0.6 } }, 'behaves as')).not.toMatch(/clad/);
  });

  it('never say safe, nor accuse anybody', () => {
    for (const of of [facts, { ...facts, device: behind(3) }, { ...facts, agrees: false }])
      for (const sentence of verdictWords(of))
        expect(sentence.text).not.toMatch(/\b(safe|illegal|counterfeit|fake|caused|guilty|maker)\b/i);
  });

  it('give degrees Fahrenheit beside, in North American practice', () => {
    expect(plain(text({ ...facts, practice: 'na' }, 'reaches'))).toContain('62 °C (144 °F)');
  });
});
