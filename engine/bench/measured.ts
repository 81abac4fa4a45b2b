/** A measured or derived quantity: its value, SI, with its standard uncertainty. */
export interface Measured {
  readonly value: number;
  /** Standard uncertainty, in the unit of the value. */
  readonly u: number;
  /** Effective degrees of freedom; infinite unless given. */
  readonly dof?: number;
}
