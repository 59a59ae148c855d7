/** How exercises are called inside a sentence: short, unless two of those in play would then go by one name. */
import type { EasierItem, Item, Plan } from '../model/plan.js';
import type { Reason } from '../model/reason.js';
import { NAMES_OF_EXERCISES } from './say-figures.js';
import type { Speech } from './speech.js';

/**
 * `front squat`; beside another front squat, `front squat (two bells)`.
 *
 * @param ids those in play
 * @param called a name as its heading has it
 */
export function namesAmong(
  ids: Iterable<string>,
  called: (id: string) => string,
  { words }: Speech,
): (id: string) => string {
  const { inSentence, inSentenceWhole } = words.sets;
  const whole = new Map<string, Set<string>>();
  for (const id of ids) {
    const name = called(id);
    const short = inSentence(name);
    whole.set(short, (whole.get(short) ?? new Set()).add(inSentenceWhole(name)));
  }
  return (id) => {
    const name = called(id);
    const short = inSentence(name);
    return (whole.get(short)?.size ?? 0) > 1 ? inSentenceWhole(name) : short;
  };
}

/** Every exercise that a plan plans, offers or speaks of. */
export function exercisesIn(plan: Plan): ReadonlySet<string> {
  const ids = new Set<string>();
  for (const { sessions } of plan.weeks)
    for (const { groups } of sessions) for (const { items } of groups) for (const item of items) noteItem(ids, item);
  for (const { reason } of plan.findings) noteReason(ids, reason);
  return ids;
}

function noteItem(ids: Set<string>, item: Item): void {
  ids.add(item.exercise);
  for (const { exercise } of item.allowed) ids.add(exercise);
  for (const other of [...item.easier, ...item.harder]) noteEasier(ids, other);
  for (const { exercise, otherwise = [], gate, choose = [] } of item.sets) {
    if (exercise !== undefined) ids.add(exercise);
    if (gate !== undefined) ids.add(gate.needs.exercise);
    for (const one of [...otherwise, ...choose]) ids.add(one.exercise);
  }
  for (const reason of item.reasons) noteReason(ids, reason);
}

function noteEasier(ids: Set<string>, { exercise }: EasierItem): void {
  if (exercise !== undefined) ids.add(exercise);
}

function noteReason(ids: Set<string>, { inputs }: Reason): void {
  for (const { name, value } of inputs) {
    if (typeof value === 'string' && NAMES_OF_EXERCISES.includes(name)) ids.add(value);
  }
}
