/** The ends of a ledger's axes: conductor temperature [°C] and heat [W/m]. */
export interface LedgerAxes {
  readonly low: number;
  readonly high: number;
  readonly most: number;
}

/** What the temperature axis must hold [°C]. */
export interface AxisNeeds {
  ambient: number;
  /** The hottest crossing there is to show; null where there is none, and then the axis goes on to melting. */
  crossing: number | null;
  melting: number;
  /** A limit worth showing where it is near. */
  rating: number | null;
}

const least = 40; // K above ambient, so that a nearly cold lead is not drawn as a drama
const beyond = 1.45; // the crossing stands at about two thirds of the axis
const near = 2.4; // a rating that lies this near above the crossing is shown too

/** Both ends of the temperature axis [°C], at round figures. */
export function temperatureEnds({ ambient, crossing, melting, rating }: AxisNeeds): [low: number, high: number] {
  const low = Math.min(0, Math.floor(ambient / 10) * 10);
  if (crossing === null) return [low, roundUp(melting, 100)];
  const rise = Math.max(least, beyond * (crossing - ambient));
  const shown = rating !== null && rating <= ambient + near * (crossing - ambient) ? rating + 5 : ambient;
  const high = Math.min(Math.max(ambient + rise, shown), Math.max(melting, ambient + least));
  return [low, roundUp(high, high > 800 ? 100 : high > 200 ? 50 : 10)];
}

/** The upper end of the heat axis [W/m] for the heat at the greatest crossing and the two curves' ends. */
export function heatEnd(flow: number | null, madeAtEnd: number, lostAtEnd: number): number {
  if (flow === null) return niceAbove(1.04 * Math.max(madeAtEnd, lostAtEnd));
  const lost = Math.min(lostAtEnd, Math.max(1.8 * flow, 0.5 * lostAtEnd));
  return niceAbove(Math.max(1.3 * flow, 1.08 * madeAtEnd, lost, 1e-6));
}

const roundUp = (value: number, step: number): number => Math.ceil(value / step - 1e-9) * step;

/** The next figure of 1, 1.2, 1.5, 2, 2.5, 3, 4, 5, 6, 8, 10 times a power of ten. */
function niceAbove(value: number): number {
  const decade = 10 ** Math.floor(Math.log10(value));
  const step = [1, 1.2, 1.5, 2, 2.5, 3, 4, 5, 6, 8].find((part) => part * decade >= value * (1 - 1e-9)) ?? 10;
  return Number((step * decade).toPrecision(2));
}
