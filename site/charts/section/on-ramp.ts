// Where black and white stand out equally on the ramp (luminance 0.179), by theme; a test holds them to the tokens.

/** By day, hotter than this [°C] the ramp is dark and what lies on it is light. */
export const dayTurns = 208;
/** By lamp, hotter than this [°C] the ramp is light and what lies on it is dark. */
export const lampTurns = 116;

/** Classes of an element drawn on the colour of `T` [°C]; the stylesheet of the picture turns them into black or white. */
export function onRamp(T: number): string {
  return `on-ramp${T > dayTurns ? ' light-by-day' : ''}${T > lampTurns ? ' dark-by-lamp' : ''}`;
}
