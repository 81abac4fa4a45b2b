import { type PlaceKind, placeKindOf, type Scenario, type SurroundingsSpec } from '#engine';

/** What the reader has changed of surroundings that are not picked now. */
export type PlaceEdits = Readonly<Partial<Record<PlaceKind, SurroundingsSpec>>>;

/**
 * The surroundings a case is shown in: the page's own, or as the reader changed them; the case's own in the place of their
 * kind, or after the others; all at the case's ambient.
 */
export function placesOf(
  { surroundings }: Scenario,
  own: readonly SurroundingsSpec[],
  edits: PlaceEdits,
): SurroundingsSpec[] {
  const picked = placeKindOf(surroundings);
  const kinds = own.map(placeKindOf);
  const shown = own.map((spec, i) => (kinds[i] === picked ? surroundings : (edits[kinds[i] as PlaceKind] ?? spec)));
  const all = kinds.includes(picked) ? shown : [...shown, surroundings];
  return all.map((spec) => ({ ...spec, ambient_degC: surroundings.ambient_degC }));
}

/** The spec of a kind among several; undefined where there is none. */
export function ofKind<K extends SurroundingsSpec['kind']>(
  places: readonly SurroundingsSpec[],
  kind: K,
): Extract<SurroundingsSpec, { kind: K }> | undefined {
  return places.find((spec): spec is Extract<SurroundingsSpec, { kind: K }> => spec.kind === kind);
}
