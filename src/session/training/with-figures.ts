/** A planned set with other figures in it. */
import type { ClientSet } from '../../model/client-plan.js';

export type Figured = Pick<ClientSet, 'reps' | 'seconds' | 'metres' | 'steps' | 'then' | 'load'>;

/** A plain `then` in an object would be taken for a promise's. */
const THEN = 'then';

export function withFigures(set: ClientSet, { reps, seconds, metres, steps, then: next, load }: Figured): ClientSet {
  const { key, kind, round, side, deadStop, optional, stopAt } = set;
  return {
    key,
    kind,
    round,
    ...(side === undefined ? {} : { side }),
    ...(deadStop === undefined ? {} : { deadStop }),
    ...(optional === undefined ? {} : { optional }),
    ...(stopAt === undefined ? {} : { stopAt }),
    ...(reps === undefined ? {} : { reps }),
    ...(seconds === undefined ? {} : { seconds }),
    ...(metres === undefined ? {} : { metres }),
    ...(steps === undefined ? {} : { steps }),
    ...(next === undefined ? {} : { [THEN]: next }),
    ...(load === undefined ? {} : { load }),
  };
}
