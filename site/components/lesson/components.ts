import Caution from '../Caution.astro';
import Formula from '../Formula.astro';
import AfterPrediction from './AfterPrediction.astro';
import Cite from './Cite.astro';
import EmberTrace from './EmberTrace.astro';
import Num from './Num.astro';
import OwnWords from './OwnWords.astro';
import Predict from './Predict.astro';
import type { LessonComponent } from './props.ts';
import Question from './Question.astro';
import Worked from './Worked.astro';

/** The components that a lesson may use by name, without importing them. */
export const components = {
  AfterPrediction,
  Caution,
  Cite,
  EmberTrace,
  Formula,
  Num,
  OwnWords,
  Predict,
  Question,
  Worked,
} satisfies Record<LessonComponent, unknown>;
