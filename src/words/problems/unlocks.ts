/** What would open a version that was refused, as a coach would say it: one short phrase for each kind. */
import type { Unlock } from '../../model/problems-plan.js';
import { untilPast } from '../rules/opening.js';
import { sayMetres } from './said.js';
import { sayDay } from './say-day.js';

/** For a hint: `for goblet-squat a bench; for box-squat a sign-off`. Each version once, in the order refused. */
export function sayUnlocks(unlocks: readonly Unlock[]): string {
  const exercises = [...new Set(unlocks.map(({ exercise }) => exercise))];
  return exercises
    .map((exercise) => {
      const own = unlocks.filter((unlock) => unlock.exercise === exercise).map(sayUnlock);
      return `for ${exercise} ${own.join(', and ')}`;
    })
    .join('; ');
}

function sayUnlock(unlock: Unlock): string {
  switch (unlock.kind) {
    case 'thing':
      return `a ${unlock.thing} in the kit`;
    case 'load':
      return `${unlock.load} in the kit`;
    case 'ceiling':
      return unlock.known
        ? `a ceiling of ${sayMetres(String(unlock.least))}`
        : `the height of the ceiling on file (${sayMetres(String(unlock.least))} or more)`;
    case 'floor':
      return unlock.known
        ? `a clear floor of ${sayMetres(unlock.least)}`
        : `the clear floor on file (${sayMetres(unlock.least)} or more)`;
    case 'sign-off':
      return saySignOff(unlock.beyond, unlock.seen);
    case 'caution':
      return unlock.what === 'lifting from the floor'
        ? 'an easier version that is lifted from a chair or a box'
        : `the end of the caution on ${unlock.what}${by(unlock.by)}`;
    case 'test':
      return 'a test of it';
    case 'clearance':
      return 'clearance for vigorous effort';
    case 'past':
      return untilPast(unlock.because, unlock.from === '' ? '' : sayDay(unlock.from));
    case 'part':
      return `its part ${unlock.part} in the library`;
    case 'cleared':
      return 'your word under observations that the pain is cleared';
  }
}

/** What a caution may follow from: a fact has nothing to say. */
const FACTS: readonly string[] = [
  'medicines',
  'blood pressure',
  'pregnancy',
  'birth',
  'vertebral fracture',
  'low bone density',
  'falls',
];

const by = (author: string): string =>
  author === '' ? '' : FACTS.includes(author) ? ` (${author})` : `, for ${author} to say`;

function saySignOff(beyond: string, seen: string): string {
  if (beyond !== '') return `a sign-off beyond ${beyond}`;
  return seen === '' ? 'a sign-off' : `a new sign-off (last seen ${sayDay(seen)})`;
}
