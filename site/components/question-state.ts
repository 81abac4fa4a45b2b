/** Where an answer stands. */
export type QuestionState = 'empty' | 'unit missing' | 'unreadable' | 'right' | 'not yet';
