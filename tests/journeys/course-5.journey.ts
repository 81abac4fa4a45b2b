import type { JourneyContext } from './support/journey.ts';
import { throughUnit } from './support/unit-by-keys.ts';

export const name = 'every lesson of unit 5 by keyboard alone: predicted, moved, answered, and told in the list';

export default function journey(context: JourneyContext): Promise<void> {
  return throughUnit(context, 5);
}
