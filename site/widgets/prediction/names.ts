/** Said on the document when a prediction is locked in; `detail` is its id. */
export const lockedEvent = 'prediction-locked';

/** Where predictions are kept, in this browser only: followed by their id. */
export const predictionPrefix = 'ampere-and-ember:prediction:';
