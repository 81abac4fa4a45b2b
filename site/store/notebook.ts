import { emptyNotebook, fromOldKeys, type Notebook, notebookFormat, oldKeys, present } from '#engine';

/** Where the notebook is kept, in this browser only. */
export const notebookKey = 'ampere-and-ember:notebook';

/** Said on the document when the notebook has changed, in this tab. */
export const notebookEvent = 'notebook-changed';

/** The present moment as the notebook writes it. */
export const moment = (): string => new Date().toISOString();

/**
 * The notebook of this device, read afresh: another tab may have written it. Undefined where nothing can be kept, or where a
 * later version of the site has written what this one would spoil.
 */
export function keptNotebook(): Notebook | undefined {
  try {
    const text = localStorage.getItem(notebookKey);
    return text === null ? broughtOver() : present(JSON.parse(text));
  } catch {
    return undefined;
  }
}

/** Changes the notebook as it stands now. False when this browser keeps nothing. */
export function changeNotebook(change: (notebook: Notebook) => Notebook): boolean {
  const before = keptNotebook();
  return before !== undefined && replaceNotebook(change(before));
}

/** Puts another notebook in the place of the one on this device. False when this browser keeps nothing. */
export function replaceNotebook(notebook: Notebook): boolean {
  try {
    localStorage.setItem(notebookKey, JSON.stringify(notebook));
  } catch {
    return false;
  }
  document.dispatchEvent(new CustomEvent(notebookEvent));
  return true;
}

/** The lesson of this page, as its layout says it; a page that is none has an empty one. */
export function lessonHere(): string {
  return document.querySelector<HTMLElement>('[data-lesson]')?.dataset.lesson ?? '';
}

/** What the version before the document kept, brought over once; the old keys go when the document stands. */
function broughtOver(): Notebook {
  const keys = Object.keys(localStorage).filter((key) => Object.values(oldKeys).some((begin) => key.startsWith(begin)));
  if (keys.length === 0) return emptyNotebook;
  const notebook = fromOldKeys(Object.fromEntries(keys.map((key) => [key, localStorage.getItem(key) ?? ''])), moment());
  localStorage.setItem(notebookKey, JSON.stringify(notebook));
  for (const key of keys) localStorage.removeItem(key);
  return notebook;
}

/**
 * In plain script, for a page that must know before it is painted: the ids of the predictions of this lesson that are locked
 * in. What version 0 kept counts too, until it is brought over.
 */
export const lockedHere = `(()=>{try{const l=document.querySelector('[data-lesson]')?.dataset.lesson,t=localStorage.getItem(${JSON.stringify(notebookKey)});
if(t===null)return Object.keys(localStorage).filter(k=>k.startsWith(${JSON.stringify(oldKeys.prediction)})).map(k=>k.slice(${oldKeys.prediction.length}));
const n=JSON.parse(t);return n.format===${JSON.stringify(notebookFormat)}?n.entries.filter(e=>e.kind==='prediction'&&e.lesson===l).map(e=>e.id):[]}catch{return[]}})()`;
