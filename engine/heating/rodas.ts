/**
 * RODAS, a stiffly accurate, L-stable Rosenbrock method of order 4 with an embedded order 3 (Hairer & Wanner II, section
 * IV.7), in the form that needs no product with the Jacobian: stage i solves
 *   (M/(hγ) − J) U_i = f(y + Σ_j a_ij U_j) + M Σ_j (c_ij/h) U_j,
 * the new value is y + Σ_j m_j U_j, the error estimate U_6. Coefficients from memory of the book; a test checks all of the
 * method's order conditions on them.
 */
export const gamma = 0.25;

/** a_ij of stages 2 to 5; stage 6 uses a_5j and 1. */
export const a = {
  a21: 1.544,
  a31: 0.9466785280815826,
  a32: 0.2557011698983284,
  a41: 3.314825187068521,
  a42: 2.896124015972201,
  a43: 0.9986419139977817,
  a51: 1.221224509226641,
  a52: 6.019134481288629,
  a53: 12.53708332932087,
  a54: -0.687886036105895,
} as const;

/** c_ij. */
export const c = {
  c21: -5.6688,
  c31: -2.430093356833875,
  c32: -0.2063599157091915,
  c41: -0.1073529058151375,
  c42: -9.594562251023355,
  c43: -20.47028614809616,
  c51: 7.496443313967647,
  c52: -10.24680431464352,
  c53: -33.99990352819905,
  c54: 11.7089089320616,
  c61: 8.083246795921522,
  c62: -7.981132988064893,
  c63: -31.52159432874371,
  c64: 16.31930543123136,
  c65: -6.058818238834054,
} as const;

/** Dense output: y(t + s h) = (1 − s) y0 + s (y1 + (1 − s)(Σ d_2j U_j + s Σ d_3j U_j)), of order 3. */
export const d = {
  d21: 10.12623508344586,
  d22: -7.487995877610167,
  d23: -34.80091861555747,
  d24: -7.992771707568823,
  d25: 1.025137723295662,
  d31: -0.6762803392801253,
  d32: 6.087714651680015,
  d33: 16.43084320892478,
  d34: 24.76722511418386,
  d35: -6.594389125716872,
} as const;
