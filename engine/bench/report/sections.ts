/** Sections of a report, in order; the annex is last. */
export const reportSections = [
  { id: 'verdict', title: 'Summary and verdict' },
  { id: 'sample', title: 'Sample and chain of custody' },
  { id: 'question', title: 'Question' },
  { id: 'identification', title: 'Identification' },
  { id: 'prediction', title: 'Prediction' },
  { id: 'set-up', title: 'Set-up and instruments' },
  { id: 'readings', title: 'Readings' },
  { id: 'comparison', title: 'Comparison' },
  { id: 'device', title: 'Device check and the gap' },
  { id: 'limits', title: 'Limits of the model and of the test' },
  { id: 'recommendation', title: 'Recommendation' },
  { id: 'people', title: 'People, dates, signatures' },
  { id: 'annex', title: 'Annex' },
] as const;

/** A section of a report. */
export type ReportSectionId = (typeof reportSections)[number]['id'];

/** Something a section lacks. */
export interface Missing {
  /** To follow 'Not established: '. */
  readonly words: string;
  /** The step of the job that makes it; null where it is written in the report itself. */
  readonly step: 'identify' | 'plan' | 'log' | null;
}

/** What each section lacks; empty where it lacks nothing. */
export type MissingBySection = Readonly<Record<ReportSectionId, readonly Missing[]>>;
