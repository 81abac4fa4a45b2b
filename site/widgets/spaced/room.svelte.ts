import {
  type Ask,
  comesBack,
  emptyNotebook,
  type Grade,
  gradeOf,
  type Listed,
  lessonsBegun,
  memoriesOf,
  type Notebook,
  practiceSettings,
  randomOf,
  type Sureness,
  session,
} from '#engine';
import type { Practice } from '../../lib/format.ts';
import { changeNotebook, keptNotebook, moment } from '../../store/notebook.ts';
import { today } from '../../store/today.ts';
import type { CountedAnswer } from '../question/asked.ts';
import { afterAnswer } from '../question/remember.ts';

const longest = 10 * 60_000; // of a session [ms]

/** Where a session stands, and what came of it. */
export class Room {
  stage = $state<'waiting' | 'start' | 'asking' | 'done'>('waiting');
  /** This browser keeps what is done here. */
  keeps = $state(true);
  notebook = $state.raw<Notebook>(emptyNotebook);
  asks = $state.raw<readonly Ask[]>([]);
  at = $state(0);
  /** Said before the answer; '' while nothing is said. */
  sure = $state<Sureness | ''>('');
  /** The question that stands was answered. */
  answered = $state(false);
  /** The last answer was sure and wrong: it comes back. */
  returns = $state(false);
  /** The first grade of each objective that was asked in this session. */
  grades = $state.raw<ReadonlyMap<string, Grade>>(new Map());
  /** The ten minutes were over before the questions were. */
  timeUp = $state(false);
  readonly ask = $derived(this.asks[this.at]);
  #random = randomOf('');
  #began = 0;
  #catalogue: readonly Listed[];
  #practice: () => Practice;

  constructor(catalogue: readonly Listed[], practice: () => Practice) {
    this.#catalogue = catalogue;
    this.#practice = practice;
  }

  /** Opens the notebook of this device. */
  open(): void {
    const kept = keptNotebook();
    this.keeps = kept !== undefined;
    this.notebook = kept ?? this.notebook;
    this.#random = randomOf(moment());
    if (this.stage === 'waiting') this.stage = 'start';
  }

  /** What would be asked now: of all lessons begun, or of one. */
  planned(lesson: string | undefined): Ask[] {
    return session({
      catalogue: this.#catalogue,
      memories: memoriesOf(this.notebook),
      begun: lessonsBegun(this.notebook),
      today: today(),
      settings: practiceSettings(this.notebook),
      practice: this.#practice(),
      random: this.#random,
      lesson,
    });
  }

  /** Begins to ask what was planned. */
  begin(asks: readonly Ask[]): void {
    this.asks = asks;
    this.grades = new Map();
    this.#began = Date.now();
    this.timeUp = false;
    this.#turnTo(0);
  }

  /** An answer was marked: it is remembered, and one that was sure and wrong is asked again later. */
  marked(answer: CountedAnswer): void {
    const told = { ...answer, sure: this.sure || undefined };
    this.notebook = afterAnswer(this.notebook, told);
    this.keeps = changeNotebook((kept) => afterAnswer(kept, told));
    const fresh = answer.question.objectives.filter((objective) => !this.grades.has(objective));
    if (!answer.copied) this.grades = new Map([...this.grades, ...fresh.map((one) => [one, gradeOf(told)] as const)]);
    if (answer.tries === 1 && answer.marks === 0 && this.sure === 'sure') {
      const before = this.asks.length;
      const drawing = { catalogue: this.#catalogue, practice: this.#practice(), random: this.#random };
      this.asks = comesBack(this.asks, this.at, drawing);
      this.returns = this.asks.length > before;
    }
    this.answered = true;
  }

  /** To the next question, or to the end: after the last one, or when ten minutes are over. */
  next(): void {
    const over = Date.now() - this.#began > longest;
    if (this.at + 1 >= this.asks.length) this.stage = 'done';
    else if (over && !this.timeUp) {
      this.timeUp = true;
      this.stage = 'done';
    } else this.#turnTo(this.at + 1);
  }

  /** Goes on after the ten minutes. */
  goOn(): void {
    this.#turnTo(this.at + 1);
  }

  stop(): void {
    this.stage = this.grades.size > 0 ? 'done' : 'start';
  }

  /** New numbers: another question, for which nothing is said yet. */
  fresh(): void {
    this.sure = '';
    this.returns = false;
  }

  #turnTo(at: number): void {
    this.at = at;
    this.answered = false;
    this.fresh();
    this.stage = this.asks.length > 0 ? 'asking' : 'start';
  }
}
