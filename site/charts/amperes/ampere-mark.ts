/** A current on the line of amperes: what the circuit asks stands over it, what the cable gives under it. */
export interface AmpereMark {
  id: string;
  /** 'In', '1.45 Iz'. */
  symbol: string;
  /** [A] */
  I: number;
  side: 'asks' | 'gives';
  /** What the verdict turns on: drawn stronger. */
  strong: boolean;
}
