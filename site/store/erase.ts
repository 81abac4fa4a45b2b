import { notebookEvent } from './notebook.ts';

const ours = 'ampere-and-ember';

/** Erases all that this site keeps on this device: notebook, choices, bench job and its pictures. False where some of it stayed. */
export async function eraseEverything(): Promise<boolean> {
  try {
    for (const key of Object.keys(localStorage).filter((name) => name.startsWith(ours))) localStorage.removeItem(key);
    const { forgetJob } = await import('./job.ts');
    await forgetJob();
    return true;
  } catch {
    return false;
  } finally {
    document.dispatchEvent(new CustomEvent(notebookEvent));
  }
}
