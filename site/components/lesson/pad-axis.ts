import { hottestMoment, type Prediction, type SketchQuantity } from '#engine';
import type { PadAxis } from '../../widgets/sketch/axis.ts';
import { roundAbove } from '../../widgets/sketch/axis.ts';
import { padQuantities } from '../../widgets/sketch/quantities.ts';

/**
 * The axes of a pad, the same for both practices: from zero (or below it where the air is colder) to a round value well above
 * whatever happens, so that they tell nothing of the answer.
 */
export function padAxis(predictions: readonly Prediction[], quantity: SketchQuantity): PadAxis {
  const { shown } = padQuantities[quantity];
  const greatest = predictions.map(({ run: { curves } }) =>
    quantity === 'temperature' ? hottestMoment(curves).conductor : Math.max(...curves.I),
  );
  const coldest = predictions.map(({ scenario }) => scenario.surroundings.ambient_degC);
  return {
    end: Math.max(...predictions.map(({ run }) => run.end)),
    low: quantity === 'temperature' ? Math.min(0, 10 * Math.floor(Math.min(...coldest) / 10)) : 0,
    high: roundAbove(shown(Math.max(...greatest))),
  };
}
