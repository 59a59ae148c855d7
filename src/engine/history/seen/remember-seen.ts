/**
 * What the coach saw, as the recall of each exercise. HISTORY.md is the definition; free text is nobody's but the coach's.
 * A recall is read only where the row stays with its exercise: for a balance lost or a grip that goes first it is what is
 * done where no easier version for that is open.
 */
import type { Client, Seen } from '../../../model/client.js';
import { addDays, agesInYear, type Day, day, isoOfDay } from '../../../model/day.js';
import type { Exercise } from '../../../model/exercise.js';
import type { ExerciseId, Side } from '../../../model/identity.js';
import type { Tenths } from '../../../model/quantity.js';
import type { Reason, ReasonInput, Rule } from '../../../model/reason.js';
import { reasonOf } from '../../reason-of.js';
import type { Rulebook } from '../../rulebook.js';
import { FLOOR_ALONE } from '../../rules/floor-alone.js';
import { FLOOR_NOVICE } from '../../rules/floor-novice.js';
import { FLOOR_OLDER } from '../../rules/floor-older.js';
import { OLDER_FROM } from '../../rules/older-from.js';
import { SEEN_BALANCE } from '../../rules/seen-balance.js';
import { SEEN_BREATH } from '../../rules/seen-breath.js';
import { SEEN_GRIP } from '../../rules/seen-grip.js';
import { SEEN_HEAVY } from '../../rules/seen-heavy.js';
import { SEEN_HOLD_DAYS } from '../../rules/seen-hold-days.js';
import { SEEN_HURRYING } from '../../rules/seen-hurrying.js';
import { SEEN_LIGHT } from '../../rules/seen-light.js';
import { SEEN_MISSED_REPS } from '../../rules/seen-missed-reps.js';
import { SEEN_NEW } from '../../rules/seen-new.js';
import { SEEN_RESERVE } from '../../rules/seen-reserve.js';
import { SEEN_SHORTER_SIDE } from '../../rules/seen-shorter-side.js';
import { SEEN_WELL } from '../../rules/seen-well.js';
import { NO_RECALL, type Recall, type Remembered, type Remembering } from '../recall.js';
import { isOutdone, type StandingSeen, standingSeen } from './standing-seen.js';

/** Says nothing of cautions and versions: those for balance and grip are chosen with the rows, by `easierSeen`. */
export function rememberSeen(remembering: Remembering): Remembered {
  const recalls = new Map<ExerciseId, Recall>();
  for (const [id, seen] of standingSeen(remembering)) {
    const exercise = remembering.exercises.get(id);
    const recall = exercise === undefined ? NO_RECALL : recallOf(remembering, seen, exercise);
    if (recall !== NO_RECALL) recalls.set(id, recall);
  }
  return { client: remembering.client, recalls, findings: [], problems: [] };
}

/** One that says a movement is not yet ready for more. */
const CAREFUL: ReadonlySet<Seen> = new Set<Seen>([
  'new to the movement',
  'heavy',
  'missed reps',
  'hurrying',
  'shorter on one side',
  'loses balance',
  'holds the breath',
  'grip goes first',
]);

function recallOf(remembering: Remembering, seen: StandingSeen, exercise: Exercise): Recall {
  const told = seen.phrases.some(({ phrase }) => CAREFUL.has(phrase))
    ? seen.phrases.filter(({ phrase }) => CAREFUL.has(phrase))
    : seen.phrases;
  const outdone = isOutdone(remembering, seen);
  return told.reduce<Recall>((recall, { phrase, observation }) => {
    return withPhrase(recall, { remembering, seen, outdone, exercise, phrase, side: observation.side });
  }, NO_RECALL);
}

interface Saw {
  readonly remembering: Remembering;
  readonly seen: StandingSeen;
  readonly outdone: boolean;
  readonly exercise: Exercise;
  readonly phrase: Seen;
  readonly side: Side | 'both';
}

function withPhrase(recall: Recall, saw: Saw): Recall {
  const { remembering, seen, outdone, exercise, phrase, side } = saw;
  const { rules } = remembering;
  const add = (change: Partial<Recall>, reasons: readonly Reason[]): Recall => {
    return { ...recall, ...change, reasons: [...recall.reasons, ...reasons] };
  };
  const lighter = (loads: number): Pick<Recall, 'lighter'> => ({ lighter: Math.max(recall.lighter, loads) });
  switch (phrase) {
    case 'new to the movement': {
      const loads = outdone || isFast(exercise) ? 0 : rules.valueOf(SEEN_NEW);
      const inputs = [...loadsDown(loads), untilOf(saw)];
      return add({ weak: true, ...lighter(loads), ...held(saw) }, tell(saw, SEEN_NEW, inputs));
    }
    case 'light':
      return outdone || rules.valueOf(SEEN_LIGHT) < 1
        ? recall
        : add({ earned: rules.valueOf(SEEN_LIGHT) > 1 ? 2 : 1 }, tell(saw, SEEN_LIGHT, []));
    case 'heavy': {
      const loads = rules.valueOf(SEEN_HEAVY);
      return outdone ? recall : add(lighter(loads), tell(saw, SEEN_HEAVY, loadsDown(loads)));
    }
    case 'missed reps': {
      const loads = outdone ? 0 : rules.valueOf(SEEN_MISSED_REPS);
      const floor = floorAbove(saw, SEEN_MISSED_REPS, recall);
      const inputs = [...loadsDown(loads), reserveOf(floor.floor.reserve), untilOf(saw)];
      return add({ ...lighter(loads), ...floor }, tell(saw, SEEN_MISSED_REPS, inputs));
    }
    case 'hurrying':
      return rules.valueOf(SEEN_HURRYING) < 1
        ? recall
        : add({ tempo: 'slow lowering', ...held(saw) }, tell(saw, SEEN_HURRYING, [untilOf(saw)]));
    case 'shorter on one side': {
      if (side === 'both') return recall;
      const inputs = [words('side', side), untilOf(saw)];
      return add({ side, ...held(saw) }, tell(saw, SEEN_SHORTER_SIDE, inputs));
    }
    case 'holds the breath': {
      const floor = floorAbove(saw, SEEN_BREATH, recall);
      const inputs = [reserveOf(floor.floor.reserve), untilOf(saw)];
      return add({ ...floor, ...held(saw) }, tell(saw, SEEN_BREATH, inputs));
    }
    case 'grip goes first': {
      const loads = rules.valueOf(SEEN_GRIP);
      return outdone ? recall : add(lighter(loads), tell(saw, SEEN_GRIP, loadsDown(loads)));
    }
    case 'loses balance':
      return add(held(saw), [coachOnly(saw, SEEN_BALANCE, [untilOf(saw)])]);
    case 'moves well': {
      if (seen.ended.length === 0) return recall;
      const inputs = seen.ended.map((one) => words('ended', one));
      return add({}, [coachOnly(saw, SEEN_WELL, inputs)]);
    }
  }
}

const words = (name: string, value: string): ReasonInput => ({ name, value, unit: '' });
const dateOf = (day: Day): ReasonInput => words('seen', isoOfDay(day));
const loadsDown = (loads: number): readonly ReasonInput[] =>
  loads === 0 ? [] : [{ name: 'loads', value: loads, unit: 'loads' }];
const reserveOf = (reserve: Tenths): ReasonInput => ({ name: 'floor', value: reserve, unit: 'tenths' });
const untilOf = (saw: Saw): ReasonInput => words('until', isoOfDay(lastDayOf(saw)));

const about = ({ seen, exercise }: Saw): readonly ReasonInput[] => [words('exercise', exercise.id), dateOf(seen.day)];

const coachOnly = (saw: Saw, rule: Rule, inputs: readonly ReasonInput[]): Reason =>
  reasonOf(rule, 'coach', [...about(saw), ...inputs], 'measured');

const tell = (saw: Saw, rule: Rule, inputs: readonly ReasonInput[]): readonly Reason[] => [
  reasonOf(rule, 'client', [...about(saw), ...inputs], 'measured'),
  coachOnly(saw, rule, inputs),
];

/** So many days from the day it was seen, or from the block's first one where that is later; both are counted. */
const lastDayOf = ({ remembering: { client, rules }, seen }: Saw): Day =>
  addDays(day(Math.max(client.starts, seen.day)), rules.valueOf(SEEN_HOLD_DAYS) - 1);

const held = (saw: Saw): Pick<Recall, 'hold'> => ({
  hold: { until: lastDayOf(saw), why: 'seen', maxReps: null },
});

/**
 * One rep above the floor that holds for them in every week. A first block's first weeks, the weeks after a break and
 * what health asks leave more already, and are not raised further.
 */
function floorAbove(saw: Saw, rule: Rule, { floor }: Recall): { readonly floor: NonNullable<Recall['floor']> } {
  const { client, rules } = saw.remembering;
  if (floor !== null) return { floor };
  const reserve = everyWeeksFloor(client, rules) + rules.valueOf(SEEN_RESERVE);
  return { floor: { until: lastDayOf(saw), reserve, rule: rule.id } };
}

function everyWeeksFloor(client: Client, rules: Rulebook): Tenths {
  const { oldest } = agesInYear(client.birthYear, Number(isoOfDay(client.starts).slice(0, 4)));
  return Math.max(
    rules.valueOf(FLOOR_ALONE),
    client.experience === 'novice' ? rules.valueOf(FLOOR_NOVICE) : 0,
    oldest >= rules.valueOf(OLDER_FROM) ? rules.valueOf(FLOOR_OLDER) : 0,
  );
}

/** Too light a bell teaches a fast lift wrongly: those begin from a dead stop with few reps instead. */
const isFast = ({ facts }: Exercise): boolean => facts.way === 'swing' || facts.asks.some(({ of }) => of === 'speed');
