/**
 * The published default weights of the open scheduler, w0 to w20, as its sixth version has them. They stand here and not only in the
 * library, so that a memory kept in a notebook does not change under its owner when the library is brought up to date.
 */
export const weights = {
  version: 'FSRS-6, defaults of ts-fsrs 5.4.2',
  w: [
    0.212, 1.2931, 2.3065, 8.2956, 6.4133, 0.8334, 3.0194, 0.001, 1.8722, 0.1666, 0.796, 1.4835, 0.0614, 0.2629, 1.6483,
    0.6014, 1.8729, 0.5425, 0.0912, 0.0658, 0.1542,
  ],
} as const;
