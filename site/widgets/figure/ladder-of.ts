import { celsius, type ThermalCase } from '#engine';
import { shownLimit } from '../../lib/view-of.ts';
import { ladderKinds } from './ladder-kinds.ts';
import type { Followed } from './page-ladder.svelte.ts';

/** Where a case is [K]: its conductor, and the surface of its cable or the outside of what lies round it. */
interface At {
  readonly conductor: number;
  readonly surface?: number;
  readonly outside?: number;
}

/** What the ladder beside the page shows of a figure's case: the limits of its own insulation, and where the lead is. */
export function ladderOf(number: string, thermal: ThermalCase | undefined, at: At | null | undefined): Followed {
  const insulation = thermal?.cable.insulation?.name.replace(/,.*$/, '');
  return {
    note: `${insulation ? `${insulation}, ` : ''}°C. Follows Fig. ${number}`,
    limits: (thermal?.limits ?? [])
      .filter(({ kind }) => ladderKinds.includes(kind))
      .map((limit) => ({ ...shownLimit(limit), place: limit.place })),
    pointers: (['conductor', 'surface', 'outside'] as const).flatMap((place) => {
      const T = at?.[place];
      const kind = place === 'conductor' ? 'conductor' : 'surface';
      return T === undefined ? [] : [{ id: place, name: place, T: celsius(T), kind }];
    }),
  };
}
