/** What would open each version that was refused: for the coach to settle, never filled in silently. */
import { addDays, isoOfDay } from '../../model/day.js';
import type { Refusal, Unlock } from '../../model/problems-plan.js';
import type { ReasonInput } from '../../model/reason.js';
import type { BlockContext } from '../block-context.js';
import { BIRTH_WINDOW } from '../rules/birth-window.js';
import { holdsInBlock } from './meet-caution.js';

/** In the order of the refusals, each unlock once. A version is open only when all of its own are settled. */
export function unlocksOf(refused: readonly Refusal[], context: BlockContext): readonly Unlock[] {
  const unlocks = refused.flatMap((refusal) => unlocksOfOne(refusal, context));
  const written = unlocks.map((unlock) => JSON.stringify(unlock));
  return unlocks.filter((_, index) => written.indexOf(written[index] ?? '') === index);
}

function unlocksOfOne({ exercise, cause, detail }: Refusal, context: BlockContext): readonly Unlock[] {
  switch (cause) {
    case 'avoid':
    case 'take-care':
      return cautionsOn(exercise, detail, cause === 'avoid' ? 'avoid' : 'take care', context);
    case 'thing':
      return [{ kind: 'thing', exercise, thing: detail }];
    case 'load':
      return [{ kind: 'load', exercise, load: detail }];
    case 'ceiling-unknown':
    case 'ceiling-low':
      return [{ kind: 'ceiling', exercise, least: Number(detail), known: cause === 'ceiling-low' }];
    case 'floor-unknown':
    case 'floor-small':
      return [{ kind: 'floor', exercise, least: detail, known: cause === 'floor-small' }];
    case 'sign-off-missing':
      return [{ kind: 'sign-off', exercise, beyond: '', seen: '' }];
    case 'sign-off-lapsed':
      return [{ kind: 'sign-off', exercise, beyond: '', seen: detail }];
    case 'sign-off-load':
      return [{ kind: 'sign-off', exercise, beyond: detail, seen: '' }];
    case 'moderate':
      return moderateUnlocks(exercise, context);
    case 'part':
      return [{ kind: 'part', exercise, part: detail }];
    case 'pain':
      return [{ kind: 'cleared', exercise }];
  }
}

/** What would make the plan more than moderate: a clearance only where it alone would. */
function moderateUnlocks(exercise: string, { standing, client, rules }: BlockContext): readonly Unlock[] {
  const regular = client.screening?.regularExercise === 'yes';
  const past = standing.moderateBecause.filter(
    (because) => because !== 'clearance' && (because !== 'known disease' || !regular),
  );
  if (past.length === 0) return [{ kind: 'clearance', exercise }];
  const { birth } = client.health;
  const after = birth === undefined ? '' : isoOfDay(addDays(birth.date, rules.valueOf(BIRTH_WINDOW) + 1));
  return past.map((because) => ({ kind: 'past', exercise, because, from: because === 'birth' ? after : '' }));
}

/** Each caution that holds in the block on what refused it, by its author's name and dates. */
function cautionsOn(
  exercise: string,
  of: string,
  degree: 'avoid' | 'take care',
  { standing, firstDay, lastDay }: BlockContext,
): readonly Unlock[] {
  const iso = (day: Parameters<typeof isoOfDay>[0] | undefined) => (day === undefined ? '' : isoOfDay(day));
  return standing.cautions
    .filter((caution) => caution.what === of && caution.degree === degree && holdsInBlock(caution, firstDay, lastDay))
    .map(({ what, side, by, until, review }): Unlock => {
      return { kind: 'caution', exercise, what, degree, side, by, until: iso(until), review: iso(review) };
    });
}

/** An unlock as a reason carries it: its kind, and what it comes to. */
export function inputOfUnlock(unlock: Unlock): ReasonInput {
  const input = (value: string | number, unit = ''): ReasonInput => ({ name: `unlock: ${unlock.kind}`, value, unit });
  switch (unlock.kind) {
    case 'thing':
      return input(unlock.thing);
    case 'load':
      return input(unlock.load);
    case 'ceiling':
      return input(unlock.least, 'mm');
    case 'floor':
      return input(`${unlock.least} mm`);
    case 'sign-off':
      return input(unlock.beyond === '' ? 'seen and passed' : `passed beyond ${unlock.beyond}`);
    case 'caution':
      return input(unlock.by === '' ? unlock.what : `${unlock.what} (${unlock.by})`);
    case 'test':
      return input('tested');
    case 'clearance':
      return input('vigorous');
    case 'past':
      return input(unlock.because);
    case 'part':
      return input(unlock.part);
    case 'cleared':
      return input('cleared');
  }
}
