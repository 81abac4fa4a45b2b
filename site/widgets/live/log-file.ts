// What writing a log takes, apart, so that it is fetched only when a log is saved.
import { probeHeader } from '#engine';

export { linesToCsv } from '#engine';

/** Header of the one thermometer of the live bench, on the sheath. */
export const usualProbe = probeHeader(1, 'probe 1', 'surface');
