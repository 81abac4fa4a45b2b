import { emptyNotebook, entryOf, type Notebook, type PredictionEntry, withEntry } from '#engine';
import { notebookKey } from '#site/store/notebook.ts';

/** The notebook of this browser, as its text says. */
function notebook(): Notebook {
  const text = localStorage.getItem(notebookKey);
  return text === null ? emptyNotebook : (JSON.parse(text) as Notebook);
}

/** Puts a prediction into the notebook, as if it had been locked in on an earlier visit. */
export function keepPrediction(id: string, said: unknown): void {
  const entry: PredictionEntry = {
    kind: 'prediction',
    id,
    lesson: '',
    at: '2031-05-04T09:30:00.000Z',
    said: said as PredictionEntry['said'],
  };
  localStorage.setItem(notebookKey, JSON.stringify(withEntry(notebook(), entry)));
}

/** What the notebook has of a prediction; undefined where it has none. */
export const keptPrediction = (id: string): unknown => entryOf(notebook(), 'prediction', '', id)?.said;
