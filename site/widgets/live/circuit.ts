/** What the circuit shows at one moment; figures as the instruments write them. */
export interface CircuitState {
  readonly I: string;
  readonly U: string;
  readonly sheath: string;
  /** What the thermometer lies on. */
  readonly skin: 'sheath' | 'surface';
  /** The abort contact is open. */
  readonly open: boolean;
  readonly contactWords: string;
  /** Two short lines at the supply. */
  readonly supplyWords: readonly [string, string];
}
