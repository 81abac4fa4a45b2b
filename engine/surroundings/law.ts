/** Stefan–Boltzmann constant [W/(m²·K⁴)], CODATA 2018. */
export const stefanBoltzmann = 5.670374419e-8;

/** Heat shed by the outermost solid surface at temperature `T` [K], per metre of cable [W/m]; 0 at ambient, rising with T. */
export type SurfaceLaw = (T: number) => number;

/**
 * Temperature [K] behind a thermal resistance `R` [K·m/W] from `Ti` [K] to a surface that sheds by `law` into `Ta` [K]:
 * the root of (Ti − T)/R = law(T), found by secants on T = Ta + (Ti − Ta)/(1 + R·h(T)), h = law/(T − Ta), held inside
 * [Ta, Ti]. Good to 1e-9 K.
 */
export function behindResistance(law: SurfaceLaw, Ti: number, R: number, Ta: number): number {
  const span = Ti - Ta;
  if (R <= 0 || span === 0) return Ti;
  const next = (x: number) => {
    const rise = x * span;
    return 1 / (1 + (R * law(Ta + rise)) / rise);
  };
  let x0 = 1 / (1 + (R * law(Ti)) / span);
  if (!(x0 > 0)) return Ta;
  let f0 = next(x0) - x0;
  let x1 = x0 + f0;
  for (let i = 0; i < 60; i++) {
    const f1 = next(x1) - x1;
    if (Math.abs(f1 * span) < 1e-10 || f1 === f0) return Ta + (x1 + f1) * span;
    let x2 = x1 - (f1 * (x1 - x0)) / (f1 - f0);
    if (!(x2 > 0 && x2 <= 1)) x2 = x1 + f1 / 2;
    x0 = x1;
    f0 = f1;
    x1 = x2;
    if (Math.abs((x1 - x0) * span) < 1e-11) break;
  }
  return Ta + x1 * span;
}
