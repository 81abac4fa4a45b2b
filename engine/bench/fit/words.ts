import type { FitParameter, FitParameterId } from './parameters.ts';
import type { FitWords, LogFit, Untold } from './result.ts';

const ended: Record<Exclude<LogFit['ended'], 'converged'>, string> = {
  'no better step': 'The search found no better step before it had settled. Take these values with care.',
  'ran out of steps': 'The search ran out of steps before it had settled. Take these values with care.',
  stopped: 'The fit was stopped before it had settled.',
  'too few readings': 'The log holds too few readings to fit anything.',
  melts: 'On this current the model melts the metal, so nothing can be fitted. Check the case and the log’s current.',
};

/** Below this a widening goes without saying. */
const widenedNoticeably = 1.1;

/** What a reader must know of a fit, in sentences. */
export function fitWords(
  fit: Omit<LogFit, 'words'>,
  parameters: Readonly<Record<FitParameterId, FitParameter>>,
): FitWords[] {
  const name = (id: FitParameterId) => parameters[id].name;
  const words: FitWords[] = [];
  const add = (id: string, text: string) => words.push({ id, text });
  if (fit.ended !== 'converged') add('ended', ended[fit.ended]);
  if (fit.groups < fit.rows)
    add('means', `The fit took ${fit.groups} means of the ${fit.rows} rows. Residuals are of every row.`);
  for (const one of fit.untold)
    add(one.held === null ? `bound together ${one.from.join(' ')}` : `untold ${one.held}`, untoldText(one, name));
  for (const { id, state, value, bounds } of fit.parameters)
    if (state === 'at bound')
      add(
        `bound ${id}`,
        `${capital(name(id))} lies at its ${value === bounds[0] ? 'least' : 'greatest'} allowed value.`,
      );
  if (fit.widened > widenedNoticeably)
    add(
      'widened',
      `The readings scatter ${fit.widened.toPrecision(2)} times as far as their uncertainty. The intervals are widened by that.`,
    );
  if (fit.parameters.some(({ u, uModel }) => u !== null && uModel !== null && uModel > u))
    add(
      'astray',
      'Some values hang on the plastics’ own data more than on the readings. Look at their wide intervals.',
    );
  const wrong = fit.residuals.filter(({ white }) => !white).map(({ observable }) => observable);
  if (wrong.length > 0)
    add(
      'not noise',
      `What is left of ${listed(wrong)} is not noise: neighbouring rows err alike. The model may be wrong.`,
    );
  return words;
}

function untoldText({ held, from, why }: Untold, name: (id: FitParameterId) => string): string {
  if (held === null) return `The log binds ${listed(from.map(name))} together. If one is off, so is the other.`;
  const start = `${capital(name(held))} is held at its start.`;
  if (why === 'moves nothing') return `${start} It moves nothing that this log reads.`;
  if (from.length > 0) return `${start} This log cannot tell it from ${listed(from.map(name))}.`;
  return `${start} This log tells it no closer than its bounds.`;
}

const capital = (text: string) => text.charAt(0).toUpperCase() + text.slice(1);

function listed(items: readonly string[]): string {
  return items.length < 2 ? items.join() : `${items.slice(0, -1).join(', ')} and ${items.at(-1)}`;
}
