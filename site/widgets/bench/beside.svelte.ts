import { type Prediction, predictWithDevice, type Scenario, ScenarioFault, scenarioToLink } from '#engine';
import { readFragment, withFragment } from '../../lib/fragment.ts';

/** Letters of the cases that stand beside the bench's own, which is A. */
const letters = ['B', 'C', 'D'] as const;
type Letter = (typeof letters)[number];

/** A case kept beside the bench's own, to compare. */
export interface Beside {
  readonly letter: Letter;
  readonly prediction: Prediction;
}

/** Up to three cases beside the bench's own. They are part of the address, so that a link hands over the comparison. */
export class CasesBeside {
  #shown = $state.raw<readonly Beside[]>([]);
  readonly #id: string;

  constructor(id: string) {
    this.#id = id;
  }

  /** The cases, by their letters. */
  get all(): readonly Beside[] {
    return this.#shown;
  }

  /** False when all three places are taken. */
  get hasRoom(): boolean {
    return this.#shown.length < letters.length;
  }

  /** Reads the cases of the address; one that cannot be read or put together is left out. To be called in the browser. */
  async recall(): Promise<void> {
    const texts = letters.flatMap((letter) => {
      const text = readFragment(location.hash, this.#part(letter));
      return text === undefined ? [] : [{ letter, text }];
    });
    if (texts.length === 0) return;
    const { scenarioFromLink } = await import('../../lib/read-link.ts');
    this.#shown = texts.flatMap(({ letter, text }) => {
      const { scenario } = scenarioFromLink(text);
      const prediction = scenario && predicted(scenario);
      return prediction ? [{ letter, prediction }] : [];
    });
  }

  /** Keeps a case in the first free place. */
  keep(prediction: Prediction): void {
    const letter = letters.find((one) => this.#shown.every((beside) => beside.letter !== one));
    if (!letter) return;
    this.#shown = [...this.#shown, { letter, prediction }].sort((a, b) => a.letter.localeCompare(b.letter));
    this.#write(letter, scenarioToLink(prediction.scenario));
  }

  /** Lets a case go. */
  remove(letter: Letter): void {
    this.#shown = this.#shown.filter((beside) => beside.letter !== letter);
    this.#write(letter, undefined);
  }

  #part(letter: Letter): string {
    return `${this.#id}-${letter.toLowerCase()}`;
  }

  #write(letter: Letter, text: string | undefined): void {
    const hash = withFragment(location.hash, this.#part(letter), text);
    history.replaceState(history.state, '', `${location.pathname}${location.search}${hash}`);
  }
}

function predicted(scenario: Scenario): Prediction | undefined {
  try {
    return predictWithDevice(scenario);
  } catch (fault) {
    if (fault instanceof ScenarioFault) return undefined;
    throw fault;
  }
}
