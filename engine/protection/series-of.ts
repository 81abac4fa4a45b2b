import { type Prediction, predict } from '../heating/predict.ts';
import type { RunOptions } from '../heating/run.ts';
import type { Scenario } from '../scenario/schema.ts';
import { deviceOf } from './devices.ts';
import { type InSeries, inSeries } from './operation.ts';

/** The device of a case in series with one run, new for each run; null where the case has none. Throws `ScenarioFault` for a rating that is not made. */
export const seriesOf = ({ device }: Scenario): InSeries | null => (device ? inSeries(deviceOf(device)) : null);

/** `predict`, with the case's own device in series. Apart from it, so that pages without devices do not fetch their tables. */
export const predictWithDevice = (scenario: Scenario, options: RunOptions = {}): Prediction =>
  predict(scenario, { ...options, series: seriesOf(scenario) });
