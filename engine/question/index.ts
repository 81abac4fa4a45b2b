// Questions, their marks, practice. Sorted by file.

export { type AnswerKind, type AnswerReading, readAnswer } from './answer.ts';
export { fetchTemplates } from './fetch-templates.ts';
export { questions11 } from './lesson-1-1.ts';
export { questions12 } from './lesson-1-2.ts';
export { questions13 } from './lesson-1-3.ts';
export { questions14 } from './lesson-1-4.ts';
export { questions21 } from './lesson-2-1.ts';
export { questions22 } from './lesson-2-2.ts';
export { questions23 } from './lesson-2-3.ts';
export { questions24 } from './lesson-2-4.ts';
export { questions31 } from './lesson-3-1.ts';
export { questions32 } from './lesson-3-2.ts';
export { questions33 } from './lesson-3-3.ts';
export { questions41 } from './lesson-4-1.ts';
export { questions42 } from './lesson-4-2.ts';
export { questions43 } from './lesson-4-3.ts';
export { questions44 } from './lesson-4-4.ts';
export { questions45 } from './lesson-4-5.ts';
export { questions51 } from './lesson-5-1.ts';
export { questions52 } from './lesson-5-2.ts';
export { questions53 } from './lesson-5-3.ts';
export { questions54 } from './lesson-5-4.ts';
export { mark } from './mark.ts';
export { type Misconception, type MisconceptionId, misconceptions } from './misconceptions.ts';
export { boxAfter, boxDays } from './practice/boxes.ts';
export { catalogueOf, type Listed, lessonOf, objectivesOf, serving } from './practice/catalogue.ts';
export { dateOf, dayNumber } from './practice/days.ts';
export { type Answered, type Grade, gradeOf, type Sureness } from './practice/grade.ts';
export { mastery, type Recurring, recurringMistakes, type Standing, standingOf } from './practice/mastered.ts';
export { chanceOf, dueDay, keepsFor, reviewed } from './practice/memory.ts';
export {
  type Memory,
  type MemoryState,
  mostReviews,
  type PracticeSettings,
  type Review,
  retentions,
} from './practice/review.ts';
export { type Ask, comesBack, type SessionPlan, session, sessionLength } from './practice/session.ts';
export { weights } from './practice/weights.ts';
export { type Random, randomOf } from './random.ts';
export { type QuestionFault, questionOf, refFromText, refToText } from './ref.ts';
export {
  type CurveFacts,
  curveFacts,
  type SketchKnot,
  type SketchQuantity,
  sketchAt,
  sketchFacts,
} from './sketch.ts';
export { questionFrom, templates, templatesOfLesson } from './templates.ts';
export type {
  ChooseOption,
  ChoosePart,
  ChooseQuestion,
  Difficulty,
  Feedback,
  Figure,
  Given,
  GivenChoice,
  GivenOrder,
  NamedScenario,
  NumberAnswer,
  NumberQuestion,
  OrderItem,
  OrderQuestion,
  Practice,
  Question,
  QuestionKind,
  QuestionRef,
  ReadQuestion,
  Said,
  Template,
  Tolerance,
  TraceFigure,
  TypedQuestion,
  Verdict,
  WrongOrder,
  WrongValue,
} from './types.ts';
export { plainText, type Segment, type Words } from './words.ts';
