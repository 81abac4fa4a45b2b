// Special functions and series that exact solutions of the heat equation need; nothing here comes from the engine.

/** e^(−x) I_n(x), x ≥ 0, by the trapezoid rule on (1/π) ∫ e^(x cos θ) cos nθ dθ, which converges faster than any power. */
export function besselIScaled(n: number, x: number): number {
  const points = 40 + Math.ceil(8 * Math.sqrt(x));
  let sum = 0.5 * (1 + Math.exp(-2 * x) * (n % 2 === 0 ? 1 : -1));
  for (let i = 1; i < points; i++) {
    const angle = (Math.PI * i) / points;
    sum += Math.exp(x * (Math.cos(angle) - 1)) * Math.cos(n * angle);
  }
  return sum / points;
}

/** e^x K_n(x), x > 0, by the trapezoid rule on ∫ e^(−x (cosh t − 1)) cosh nt dt. */
export function besselKScaled(n: number, x: number): number {
  const h = 0.02;
  let sum = 0.5;
  for (let i = 1; ; i++) {
    const t = i * h;
    const term = Math.exp(-x * (Math.cosh(t) - 1)) * Math.cosh(n * t);
    sum += term;
    if (term < 1e-18 * sum) return sum * h;
  }
}

/** J_n(x) by the trapezoid rule on (1/π) ∫ cos(nθ − x sin θ) dθ. */
export function besselJ(n: number, x: number): number {
  const points = 60 + Math.ceil(2 * x);
  let sum = 0.5 * (1 + Math.cos(n * Math.PI));
  for (let i = 1; i < points; i++) {
    const angle = (Math.PI * i) / points;
    sum += Math.cos(n * angle - x * Math.sin(angle));
  }
  return sum / points;
}

const factorial = (n: number): number => (n < 2 ? 1 : n * factorial(n - 1));
const terms = 14;
const stehfestWeights = Array.from({ length: terms }, (_, index) => {
  const i = index + 1;
  const half = terms / 2;
  let sum = 0;
  for (let k = Math.floor((i + 1) / 2); k <= Math.min(i, half); k++) {
    sum +=
      (k ** half * factorial(2 * k)) /
      (factorial(half - k) * factorial(k) * factorial(k - 1) * factorial(i - k) * factorial(2 * k - i));
  }
  return (-1) ** (half + i) * sum;
});

/** The function of time whose Laplace transform is `F(s)`, at `t` > 0: Stehfest 1970 with 14 terms, good to 1e-5 for smooth functions. */
export function inverseLaplace(F: (s: number) => number, t: number): number {
  const step = Math.LN2 / t;
  return step * stehfestWeights.reduce((sum, V, i) => sum + V * F((i + 1) * step), 0);
}

/** The root of `f` between `a` and `b` by halving. */
export function rootBetween(f: (x: number) => number, a: number, b: number): number {
  const sign = Math.sign(f(a));
  let [low, high] = [a, b];
  for (let i = 0; i < 200 && high - low > 1e-14 * Math.abs(high); i++) {
    const middle = (low + high) / 2;
    if (Math.sign(f(middle)) === sign) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}
