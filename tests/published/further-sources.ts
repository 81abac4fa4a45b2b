import type { Source } from '#engine';

/** Documents that only checks cite; everything else is a key of the engine's own bibliography. */
export const furtherSources = {
  onSiteGuide: { title: 'On-site guides to BS 7671: resistance of copper conductors, R1 + R2', kind: 'handbook' },
  bs6500: { title: 'BS 6500 and older national tables of cord ratings', kind: 'standard' },
  cladDataSheets: { title: 'Data sheets of copper-clad aluminium wire', kind: 'handbook' },
  nbs109: { title: 'NBS Handbook 109, Aluminum wire tables (1972)', kind: 'handbook' },
  icea32382: { title: 'ICEA P-32-382, Short circuit characteristics of insulated cable', kind: 'standard' },
  stauffacher1928: { title: 'Stauffacher, General Electric Review (1928): Onderdonk’s formula', kind: 'paper' },
  problemCollections: {
    title: 'Solved problems on winding temperature, fault loops and least areas',
    kind: 'handbook',
  },
  bookInstallation: { title: 'A textbook of installation work: overcurrent and earth faults', kind: 'handbook' },
  designGuides: { title: 'Design guides: longest runs by the conventional method', kind: 'handbook' },
  ea402: { title: 'EA-4/02, Evaluation of the uncertainty of measurement in calibration', kind: 'handbook' },
  tn1297: { title: 'NIST Technical Note 1297, Guidelines for expressing uncertainty', kind: 'handbook' },
} as const satisfies Record<string, Source>;
