import type { MetalId } from '../material/metals.ts';
import type { CableSpec } from '../scenario/schema.ts';
import type { CandidateId } from './identify/evidence.ts';
import type { Candidate, Identification } from './identify/identify.ts';
import type { FoundOnLead } from './job-schema.ts';

/** Copper share of a clad aluminium below which it is taken as the 10 % kind [1]: halfway to the 15 % kind. */
const halfway = 0.125;

const asMetal: Readonly<Record<Exclude<CandidateId, 'cladAluminium' | 'other'>, MetalId>> = {
  copper: 'copper',
  tinnedCopper: 'copper',
  aluminium: 'aluminium',
  ccs40: 'ccs40',
  ccs30: 'ccs30',
  ccs21: 'ccs21',
  steel: 'steel',
  brass: 'brass',
};

function metalOf({ metal, copperShare }: Candidate): MetalId | null {
  if (metal === 'other') return null;
  if (metal !== 'cladAluminium') return asMetal[metal];
  return (copperShare?.median ?? 0) < halfway ? 'cca10' : 'cca15';
}

const sixFigures = (value: number) => Number(value.toPrecision(6));

/**
 * `like`'s cable with the conductor that was identified: its likeliest metal, with area and resistance at the middle of their
 * intervals, marked as the lead is marked; walls stay those of `like`, which has to be a cable by own values. Null where none of the
 * metals fits, or where nothing tells of area or resistance.
 */
export function identifiedCable(
  like: Exclude<CableSpec, { table: string }>,
  found: FoundOnLead,
  { candidates, fit }: Identification,
): CableSpec | null {
  const first = candidates[0];
  const metal = first && metalOf(first);
  if (!first || !metal || fit.none || !first.area || !first.R20) return null;
  const { marking, strands, bundle_mm } = found;
  const counted =
    strands?.count !== undefined && strands.diameter_mm !== undefined
      ? { strands: { count: strands.count, diameter_mm: strands.diameter_mm } }
      : { area_mm2: sixFigures(first.area.median * 1e6) };
  return {
    ...like,
    conductor: {
      metal,
      ...counted,
      ...(marking?.size_mm2 !== undefined && { size_mm2: marking.size_mm2 }),
      ...(marking?.size_AWG !== undefined && { size_AWG: marking.size_AWG }),
      ...(bundle_mm !== undefined && { bundle_mm }),
      R20_ohmPerKm: sixFigures(first.R20.median * 1e3),
    },
  };
}
