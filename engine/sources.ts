/** What kind of document a value comes from; `practice` marks a rule of the trade that no document of ours states. */
export type SourceKind = 'standard' | 'handbook' | 'paper' | 'practice' | 'own';

/** One entry of the bibliography: every table row and every check names one. */
export interface Source {
  readonly title: string;
  readonly kind: SourceKind;
}

/** The bibliography. Keys are what property records, tables and lessons cite. */
export const sources = {
  iec60028: { title: 'IEC 60028:1925, International standard of resistance for copper', kind: 'standard' },
  iec60228: { title: 'IEC 60228, Conductors of insulated cables', kind: 'standard' },
  iec60889: { title: 'IEC 60889, Hard-drawn aluminium wire for overhead line conductors', kind: 'standard' },
  'iec60287-1-1': { title: 'IEC 60287-1-1, Electric cables: current rating equations and losses', kind: 'standard' },
  'iec60287-2-1': { title: 'IEC 60287-2-1, Electric cables: calculation of thermal resistance', kind: 'standard' },
  'iec60853-2': { title: 'IEC 60853-2, Cyclic and emergency current rating of cables', kind: 'standard' },
  iec60949: {
    title: 'IEC 60949, Thermally permissible short-circuit currents, non-adiabatic effects',
    kind: 'standard',
  },
  'iec60364-4-41': { title: 'IEC 60364-4-41, Protection against electric shock', kind: 'standard' },
  'iec60364-4-42': { title: 'IEC 60364-4-42, Protection against thermal effects', kind: 'standard' },
  'iec60364-4-43': { title: 'IEC 60364-4-43, Protection against overcurrent', kind: 'standard' },
  'iec60364-5-52': { title: 'IEC 60364-5-52, Wiring systems', kind: 'standard' },
  'iec60364-5-54': { title: 'IEC 60364-5-54, Earthing arrangements and protective conductors', kind: 'standard' },
  'iec60335-1': { title: 'IEC 60335-1, Household and similar appliances: safety', kind: 'standard' },
  iec60724: { title: 'IEC 60724, Short-circuit temperature limits of cables up to 3 kV', kind: 'standard' },
  'iec60227-5': { title: 'IEC 60227-5, PVC insulated flexible cables (cords)', kind: 'standard' },
  'iec60227-3': { title: 'IEC 60227-3, PVC insulated non-sheathed cables for fixed wiring', kind: 'standard' },
  'iec60245-4': { title: 'IEC 60245-4, Rubber insulated cords and flexible cables', kind: 'standard' },
  'en50363-3': { title: 'EN 50363-3, PVC insulating compounds', kind: 'standard' },
  'iso13732-1': { title: 'ISO 13732-1, Contact with hot surfaces', kind: 'standard' },
  ul62: { title: 'UL 62 and NFPA 70 Table 400.4, flexible cords', kind: 'standard' },
  bs7671: { title: 'BS 7671, Requirements for electrical installations', kind: 'standard' },
  nfpa70: { title: 'NFPA 70, National Electrical Code', kind: 'standard' },
  bs1362: { title: 'BS 1362, General purpose fuse links for plugs', kind: 'standard' },
  'iec60269-1': { title: 'IEC 60269-1, Low-voltage fuses: general requirements', kind: 'standard' },
  'iec60127-2': { title: 'IEC 60127-2, Miniature fuses: cartridge fuse-links', kind: 'standard' },
  'iec60898-1': { title: 'IEC 60898-1, Circuit-breakers for household overcurrent protection', kind: 'standard' },
  ul248: { title: 'UL 248, Low-voltage fuses (Parts 1 to 16)', kind: 'standard' },
  ul489: { title: 'UL 489, Molded-case circuit breakers', kind: 'standard' },
  bs1363: { title: 'BS 1363-1, 13 A plugs', kind: 'standard' },
  iec61008: { title: 'IEC 61008-1 and 61009-1, Residual current devices', kind: 'standard' },
  ul943: { title: 'UL 943, Ground-fault circuit-interrupters', kind: 'standard' },
  ul1699: { title: 'UL 1699 and IEC 62606, Arc-fault circuit-interrupters', kind: 'standard' },
  loopTesterManual: { title: 'Tables of a multifunction tester’s manual: maximum loop impedance', kind: 'handbook' },
  'vde0298-4': { title: 'DIN VDE 0298-4, Current ratings of cables', kind: 'standard' },
  vde0295: { title: 'DIN VDE 0295, Conductors of cables', kind: 'standard' },
  astmB258: { title: 'ASTM B258, Standard nominal diameters of AWG sizes of solid round wires', kind: 'standard' },
  astmB496: { title: 'ASTM B496, Compact round concentric-lay-stranded copper conductors', kind: 'standard' },
  astmB566: { title: 'ASTM B566, Copper-clad aluminum wire', kind: 'standard' },
  astmB227: { title: 'ASTM B227, Hard-drawn copper-clad steel wire', kind: 'standard' },
  astmB869: { title: 'ASTM B869 and B910, Copper-clad steel conductors', kind: 'standard' },
  astmD1929: { title: 'ASTM D1929, Ignition temperature of plastics, values in a fire handbook', kind: 'handbook' },
  ieee80: { title: 'IEEE 80, Guide for safety in AC substation grounding', kind: 'standard' },
  ieee738: { title: 'IEEE 738, Current-temperature relationship of bare overhead conductors', kind: 'standard' },
  nbs100: { title: 'NBS Handbook 100, Copper wire tables (1966)', kind: 'handbook' },
  nbs31: { title: 'NBS Circular 31, Copper wire tables', kind: 'handbook' },
  incropera: { title: 'Incropera & DeWitt, Fundamentals of Heat and Mass Transfer, 6th ed.', kind: 'handbook' },
  cengel: { title: 'Çengel, Heat Transfer: A Practical Approach', kind: 'handbook' },
  holman: { title: 'Holman, Heat Transfer', kind: 'handbook' },
  crc: { title: 'CRC Handbook of Chemistry and Physics', kind: 'handbook' },
  eceHandbook: { title: 'Handbook for Electronics, Information and Communication Engineers, vol. 1', kind: 'handbook' },
  emissivityTables: { title: 'Total emissivity tables of temperature-instrument manuals', kind: 'handbook' },
  polymerHandbook: { title: 'Polymer data handbooks', kind: 'handbook' },
  hairerWanner: { title: 'Hairer & Wanner, Solving Ordinary Differential Equations II, 2nd ed.', kind: 'handbook' },
  carslawJaeger: { title: 'Carslaw & Jaeger, Conduction of Heat in Solids, 2nd ed.', kind: 'handbook' },
  usStandardAtmosphere: { title: 'US Standard Atmosphere 1976', kind: 'handbook' },
  codata: { title: 'CODATA 2018, fundamental constants', kind: 'handbook' },
  matula1979: { title: 'Matula, J. Phys. Chem. Ref. Data 8 (1979) 1147', kind: 'paper' },
  desai1984: { title: 'Desai, James & Ho, J. Phys. Chem. Ref. Data 13 (1984) 1131', kind: 'paper' },
  kuehn1976: { title: 'Kuehn & Goldstein, Int. J. Heat Mass Transfer 19 (1976) 1127', kind: 'paper' },
  churchillChu1975: { title: 'Churchill & Chu, Int. J. Heat Mass Transfer 18 (1975) 1049', kind: 'paper' },
  churchillBernstein1977: { title: 'Churchill & Bernstein, J. Heat Transfer 99 (1977) 300', kind: 'paper' },
  morgan1975: { title: 'Morgan, Advances in Heat Transfer 11 (1975) 199', kind: 'paper' },
  babrauskas2005: {
    title: 'Babrauskas, Mechanisms and modes for ignition of PVC wires, Fire and Materials (2005)',
    kind: 'paper',
  },
  pvcEvolvedGas: {
    title: 'TG/FTIR study of commercial PVC cable insulation in air, J. Therm. Anal. Calorim.',
    kind: 'paper',
  },
  ekelund2007: {
    title: 'Ekelund et al., Polymer Degradation and Stability (2007, 2008), ageing of PVC cables',
    kind: 'paper',
  },
  iec60216: { title: 'IEC 60216, Thermal endurance of electrical insulating materials', kind: 'standard' },
  nureg6850: { title: 'NUREG/CR-6850, Appendix H', kind: 'handbook' },
  preece: {
    title: 'Preece, Proc. Royal Society (1883–1888), as in the Standard Handbook for Electrical Engineers',
    kind: 'paper',
  },
  user: { title: 'Entered by the user', kind: 'own' },
  'common practice': { title: 'Common practice, no source', kind: 'practice' },
  own: { title: 'Our own choice or mixing, argued beside it', kind: 'own' },
} as const satisfies Record<string, Source>;

/** A key of the bibliography. */
export type SourceId = keyof typeof sources;
