import type { Place } from '../material/limits.ts';
import type { Scenario } from '../scenario/schema.ts';
import type { AnswerKind } from './answer.ts';
import type { MisconceptionId } from './misconceptions.ts';
import type { Random } from './random.ts';
import type { Words } from './words.ts';

/** Usage of the trade: `iec` has mm², 230 V and °C; `na` has AWG, 120 V and °C with °F beside it. */
export type Practice = 'iec' | 'na';

/** What a question is made of and nothing else: the same ref is the same question on every machine. */
export interface QuestionRef {
  /** The template: 'Q28'. */
  readonly id: string;
  /** The template's version; a template that would give other questions from the same seeds has a new one. */
  readonly version: number;
  readonly practice: Practice;
  /** Any short text. */
  readonly seed: string;
}

/** 1 one step, 2 two steps or a choice of law, 3 several laws at once. */
export type Difficulty = 1 | 2 | 3;

/** How far from the right answer still counts. Bounds of an `estimate` are in K; all are absolute once the answer is known. */
export type Tolerance =
  /** Part of the answer: 0.01 for arithmetic (a), 0.025 with table values (b). */
  | { readonly kind: 'relative'; readonly part: number }
  /** Either side by this many units of SI: an estimate of a temperature is ±max(5 K, 10 % of the rise) (e). */
  | { readonly kind: 'absolute'; readonly by: number }
  /** Times or divided by: an estimate of a time (e). */
  | { readonly kind: 'factor'; readonly by: number };

/** The right answer of a question that asks for a number with its unit. */
export interface NumberAnswer {
  /** SI. */
  readonly value: number;
  readonly kind: AnswerKind;
  /** The unit the answer is told in: '°C'. */
  readonly unit: string;
  readonly tolerance: Tolerance;
  /** Significant figures asked for: 3, or 2 for an estimate. */
  readonly figures: number;
  /** What 1 % is taken of when a mistake is matched, where that is not the mistake's own value: for a temperature the rise [K]. */
  readonly span?: number;
  /** The answer in words: '62 °C', with °F beside it in `na`. */
  readonly text: string;
}

/** What a learner with a wrong idea would answer to this very case, and what to say to that. */
export interface WrongValue {
  readonly id: MisconceptionId;
  /** SI. */
  readonly value: number;
  /** Where the slip gives another value in another unit (63 % of a °F figure), the one unit this value belongs to. */
  readonly onlyIn?: string;
  /** What that answer is true of, to follow the amount typed: 'is where the cord settles in the end.' */
  readonly trueOf: string;
  /** Why not here, where the record's own words are not close enough. */
  readonly whyNot?: string;
  /** The question that would make the learner notice. */
  readonly ask: string;
}

/** What is said of a wrong answer that is chosen or put in order, not typed. */
export interface Said {
  /** The idea that leads there, where the curriculum knows one. */
  readonly id?: MisconceptionId;
  /** What that answer is true of, to follow 'Not yet: '; begins small and ends with a full stop. */
  readonly trueOf: string;
  /** Why not here, where the record's own words are not close enough or there is no record. */
  readonly whyNot?: string;
  /** The question that would make the learner notice. */
  readonly ask: string;
}

/** One of the answers to choose from. */
export interface ChooseOption {
  /** Says what it is, the same in every draw: 'half the length'. */
  readonly id: string;
  readonly text: string;
  /** What is said when it is chosen; the right option has none. */
  readonly said?: Said;
}

/** One choice among two to five options, of which one is right. */
export interface ChoosePart {
  readonly id: string;
  /** What is chosen here: 'Heat in each metre'. */
  readonly label: string;
  /** As they are shown: dealt by the seed, or in their own order where they are steps of a scale (up, same, down). */
  readonly options: readonly ChooseOption[];
  /** The right option's id, found by the engine. */
  readonly right: string;
}

/** One of the things to put in order. */
export interface OrderItem {
  readonly id: string;
  /** Short enough for a button's name: '2.5 mm²'. */
  readonly name: string;
}

/** The order that a wrong idea puts the items in. */
export interface WrongOrder extends Said {
  readonly id: MisconceptionId;
  readonly order: readonly string[];
}

/** A case that can be opened on the bench. */
export interface NamedScenario {
  readonly name: string;
  readonly scenario: Scenario;
}

/** A live figure a question is read from. The page runs the scenario and gives the figure a reading cursor. */
export interface TraceFigure {
  readonly kind: 'trace';
  readonly scenario: Scenario;
  /** The curve to read. */
  readonly place: Place;
  /** What is asked for; the page keeps this value of its own event marks hidden until an answer is marked. */
  readonly read: 'time' | 'temperature';
  /** The level drawn across, when a time is asked for [K]. */
  readonly level?: number;
  /** The time axis [s]. */
  readonly span: readonly [number, number];
  /** The figure in words, without the answer. */
  readonly words: string;
}

/** One way of showing a question's figure; later kinds join here. */
export type Figure = TraceFigure;

/** What every question has, whatever is asked. */
export interface QuestionBase {
  readonly ref: QuestionRef;
  readonly lesson: string;
  readonly difficulty: Difficulty;
  readonly objectives: readonly string[];
  /** Drawn from the list of fallbacks, because no draw within the cap met the guard. */
  readonly fallback: boolean;
  /** A short name: 'Temperature on the way up'. */
  readonly title: string;
  /** Paragraphs of the question. */
  readonly stem: readonly Words[];
  /** What goes with the field: 'in °C; two figures are enough'. */
  readonly ask: string;
  readonly figure?: Figure;
  /** Cases the learner may open after answering; the first is the question's own. */
  readonly scenarios: readonly NamedScenario[];
  /** Shown one by one by 'Show a step' before an answer; none gives the answer. */
  readonly hints: readonly Words[];
  /** The worked solution, shown after an honest try; its last step states the answer. */
  readonly solution: readonly Words[];
  /** Where to look when an answer is wrong and no slip is recognised. */
  readonly look: string;
  /** Hazard, what it does, what to do; to be shown with the question. */
  readonly cautions: readonly string[];
}

/** A number with its unit. */
export interface NumberQuestion extends QuestionBase {
  readonly kind: 'number';
  readonly answer: NumberAnswer;
  readonly wrong: readonly WrongValue[];
}

/** A number with its unit, read off a figure. */
export interface ReadQuestion extends QuestionBase {
  readonly kind: 'read';
  readonly figure: Figure;
  readonly answer: NumberAnswer;
  readonly wrong: readonly WrongValue[];
}

/** One choice, or several on one case; all of them must be right. */
export interface ChooseQuestion extends QuestionBase {
  readonly kind: 'choose';
  readonly parts: readonly ChoosePart[];
  /** The right answer in words, to follow 'Right: '. */
  readonly answer: { readonly text: string };
}

/** Three to six items to put in order. */
export interface OrderQuestion extends QuestionBase {
  readonly kind: 'order';
  /** As they are shown: dealt by the seed, never in the right order, its reverse or that of a wrong idea. */
  readonly items: readonly OrderItem[];
  /** What the first place is and what the last: 'coolest', 'hottest'. */
  readonly ends: readonly [string, string];
  /** The ids in their right order, found by the engine, and that order in words. */
  readonly answer: { readonly order: readonly string[]; readonly text: string };
  readonly wrong: readonly WrongOrder[];
}

/**
 * A question. To add a kind: give it an interface here, its marking in `mark.ts` (the compiler asks for it), and what a
 * learner gives in `Given` where text does not do.
 */
export type Question = NumberQuestion | ReadQuestion | ChooseQuestion | OrderQuestion;

/** A question whose answer is typed: a number with its unit. */
export type TypedQuestion = NumberQuestion | ReadQuestion;

/** The kinds of question there are. */
export type QuestionKind = Question['kind'];

/** What was chosen: the option's id by the part's; a part without an entry is still open. */
export interface GivenChoice {
  readonly kind: 'choice';
  readonly chosen: Readonly<Record<string, string>>;
}

/** The items' ids as they were put; empty while nothing has been moved. */
export interface GivenOrder {
  readonly kind: 'order';
  readonly ids: readonly string[];
}

/** What a learner gives for an answer: the text as typed, what was chosen, or the order made. */
export type Given = string | GivenChoice | GivenOrder;

/** How an answer stands. The last three are handed back without loss, so that it can be given again. */
export type Verdict = 'right' | 'right, over-precise' | 'not yet' | 'unit missing' | 'wrong kind' | 'unreadable';

/** What is said of an answer. */
export interface Feedback {
  readonly verdict: Verdict;
  /** Full marks are 1; null when the answer was handed back and does not count as a try. */
  readonly marks: 0 | 1 | null;
  /** One line: 'Not yet: 82 °C is where it settles.' */
  readonly headline: string;
  /** How the text was read: 'read as 20.8 A', '20.8 of what?'. */
  readonly readAs: string;
  /** Every slip that fits, the more common first. */
  readonly tags: readonly MisconceptionId[];
  /** Of a choice in several parts: whether each is right, by its id. */
  readonly parts?: Readonly<Record<string, boolean>>;
  /** The slip, when exactly one fits. */
  readonly misconception?: { readonly id: MisconceptionId; readonly thinks: string };
  /** What is right about an answer that is not right yet. */
  readonly good?: string;
  /** What the answer is true of: '82 °C is where the cord settles in the end.' */
  readonly trueOf?: string;
  /** Why it is not so here; for an answer handed back, what is missing. */
  readonly whyNot?: string;
  /** The question that would make the learner notice. */
  readonly notice?: string;
  /** Where to look; `scenario` counts in the question's scenarios. */
  readonly look?: { readonly words: string; readonly scenario: number };
  /** The worked solution may be shown: the answer is right, or an honest try was made. */
  readonly solutionOpen: boolean;
}

/** What a template's `build` returns: a question without what the template itself knows. */
export type Built = BuiltNumber | BuiltRead | BuiltChoose | BuiltOrder;
type OfTemplate = 'ref' | 'lesson' | 'difficulty' | 'objectives' | 'fallback' | 'title';
/** A number question without what its template knows. */
export type BuiltNumber = Omit<NumberQuestion, OfTemplate>;
/** A reading question without what its template knows. */
export type BuiltRead = Omit<ReadQuestion, OfTemplate>;
/** A choice without what its template knows. */
export type BuiltChoose = Omit<ChooseQuestion, OfTemplate>;
/** An ordering without what its template knows. */
export type BuiltOrder = Omit<OrderQuestion, OfTemplate>;

/** How a template is written. `C` is its case: plain data, drawn, from which everything else follows. */
export interface TemplateSpec<C> {
  readonly id: string;
  readonly version: number;
  readonly lesson: string;
  readonly kind: QuestionKind;
  readonly title: string;
  readonly difficulty: Difficulty;
  readonly practices: readonly Practice[];
  readonly objectives: readonly string[];
  readonly misconceptions: readonly MisconceptionId[];
  /** One case from the seed, or null when the case does not pass the guard and is to be drawn again. */
  draw(random: Random, practice: Practice): C | null;
  /** Cases known to pass, for a seed that meets the cap on draws. */
  readonly fallbacks: Readonly<Partial<Record<Practice, readonly C[]>>>;
  /** The whole question of a case. */
  build(drawn: C, practice: Practice): Built;
}

/** A template as it is used: what it is about, and its questions by seed. */
export interface Template extends Omit<TemplateSpec<never>, 'draw' | 'fallbacks' | 'build'> {
  /** The question of a seed. `OutOfRange` is never thrown: any text is a seed. */
  question(seed: string, practice: Practice): Question;
}
