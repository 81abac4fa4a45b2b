/** Said on the document when a prediction is locked in; `detail` is its id. */
export const lockedEvent = 'prediction-locked';
