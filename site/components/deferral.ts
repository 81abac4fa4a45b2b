/** Said on every page: this teaches; others decide. */
export const deferral =
  'This is for learning. The rules where you work, the maker’s instructions and a licensed or competent electrician decide what may be installed, tested or put back in use. Editions change: check yours.';
