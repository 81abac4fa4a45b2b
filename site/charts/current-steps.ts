/** What one step of a current is, about two figures of it [A]. */
export function currentStep(I: number): number {
  return I < 1 ? 0.01 : I < 10 ? 0.1 : I < 100 ? 0.5 : I < 1000 ? 1 : 10;
}

/** The nearest whole step [A]. */
export function roundCurrent(I: number): number {
  const step = currentStep(I);
  return Number((Math.round(I / step) * step).toFixed(2));
}

/** Where a key moves a current within [low, high]; undefined for a key that moves nothing. */
export function movedCurrent(key: string, I: number, low: number, high: number): number | undefined {
  const up = (times: number) => roundCurrent(I + times * currentStep(I));
  const down = (times: number) => roundCurrent(I - times * currentStep(I - 1e-9));
  const to: Record<string, number> = {
    ArrowRight: up(1),
    ArrowUp: up(1),
    ArrowLeft: down(1),
    ArrowDown: down(1),
    PageUp: up(10),
    PageDown: down(10),
    Home: low,
    End: high,
  };
  const next = to[key];
  return next === undefined ? undefined : Math.min(high, Math.max(low, next));
}
