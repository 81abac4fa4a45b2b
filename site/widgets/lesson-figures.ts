// The figures of lessons as one module: they share most of what they need, so one file of script is smaller than four.

export { default as EmberTrace } from './EmberTrace.svelte';
export { default as OwnWords } from './OwnWords.svelte';
export { default as PredictFirst } from './PredictFirst.svelte';
