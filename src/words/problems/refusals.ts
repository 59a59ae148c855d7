/** Why a version may not be planned, after its name: `goblet-squat (not signed off)`. */
import { BODY_PARTS } from '../../model/exercise.js';
import type { Refusal, RefusalCause, Unlock } from '../../model/problems-plan.js';
import { sayAsked } from '../english-asks.js';
import { sayMetres } from './said.js';

const CAUSES: Readonly<Record<RefusalCause, (detail: string) => string>> = {
  avoid: (detail) => `it asks for ${asked(detail)}, and a caution says avoid`,
  'take-care': (detail) => `it asks much ${isPart(detail) ? 'of ' : ''}${asked(detail)}, and a caution says take care`,
  thing: (detail) => `not in the kit: ${detail}`,
  load: (detail) => `the kit makes no load for it: ${detail}`,
  'ceiling-unknown': (detail) => `the ceiling is not stated, and it needs ${sayMetres(detail)}`,
  'ceiling-low': (detail) => `the ceiling is too low: it needs ${sayMetres(detail)}`,
  'floor-unknown': (detail) => `the clear floor is not stated, and it needs ${sayMetres(detail)}`,
  'floor-small': (detail) => `the clear floor is too small: it needs ${sayMetres(detail)}`,
  'sign-off-missing': () => 'not signed off',
  'sign-off-lapsed': (detail) => `the sign-off has lapsed: last seen on ${detail}`,
  'sign-off-load': (detail) => (detail === '' ? 'signed off without a load' : `signed off only up to ${detail}`),
  moderate: () => 'it is fast work, and only moderate effort is cleared',
  part: (detail) => `a part of it is not in the library: ${detail}`,
  pain: (detail) => (detail === 'elsewhere' ? 'it hurt' : `it hurt the ${detail}`),
};

const isPart = (what: string): boolean => BODY_PARTS.some((part) => part === what);
/** `the wrist`, `balance`. */
const asked = (what: string): string => (isPart(what) ? `the ${what}` : sayAsked(what));

/**
 * What takes the place of an exercise that hurt is looked for as if that part were to be avoided: no caution says so.
 * One that the coach wrote has its own way out among `unlocks`.
 */
const isFromPain = ({ exercise, cause, detail }: Refusal, refused: readonly Refusal[], unlocks: readonly Unlock[]) =>
  cause === 'avoid' &&
  refused.some((other) => other.cause === 'pain' && other.detail === detail) &&
  !unlocks.some(
    (unlock) =>
      unlock.kind === 'caution' && unlock.exercise === exercise && unlock.what === detail && unlock.degree === 'avoid',
  );

const isHurt = (exercise: string, refused: readonly Refusal[]): boolean =>
  refused.some((other) => other.exercise === exercise && other.cause === 'pain');

/** Each version with why it was refused. */
export const sayRefusals = (refused: readonly Refusal[], unlocks: readonly Unlock[]): string =>
  refused
    .flatMap((refusal) => {
      const { exercise, cause, detail } = refusal;
      if (!isFromPain(refusal, refused, unlocks)) return [`${exercise} (${CAUSES[cause](detail)})`];
      return isHurt(exercise, refused) ? [] : [`${exercise} (it asks for ${asked(detail)}, which hurt)`];
    })
    .join('; ');

/** Why a version was refused: `not signed off`; empty for a cause nobody knows. */
export function sayRefusal(cause: string, detail: string): string {
  const known = (text: string): text is RefusalCause => Object.hasOwn(CAUSES, text);
  return known(cause) ? CAUSES[cause](detail) : '';
}
