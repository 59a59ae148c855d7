/** Whether one line of a case holds: where it looks, and what it claims there. */

import { planClaim } from './claims-of-plans.js';
import { itemClaim, setClaim } from './claims-of-sets.js';
import { orderClaim, weekClaim } from './claims-of-weeks.js';
import type { Placed, Planned, Spot, Told } from './plan-of-case.js';
import type { Claim } from './read-case.js';
import { fail, slugOf } from './read-library.js';

interface Where {
  readonly exercise?: string;
  readonly row?: string;
  readonly weeks?: readonly number[];
  readonly easy?: boolean;
  readonly session?: string;
  readonly spots?: readonly Spot[];
}

const SPOTS: Readonly<Record<string, readonly Spot[]>> = {
  work: ['work'],
  test: ['test'],
  'warm-up': ['warm-up'],
  'cool-down': ['cool-down'],
  easier: ['easier'],
  anywhere: ['work', 'test', 'warm-up', 'cool-down', 'easier', 'harder', 'otherwise', 'choose', 'then'],
};

/** `undefined` where it holds, else what was found instead. */
export function whyNot({ would, text }: Claim, planned: Planned): string | undefined {
  const at = text.indexOf(': ');
  const [where, claim] = [text.slice(0, at), text.slice(at + 2)];
  const holds =
    where === 'plan' ? planClaim(claim, planned) : claimAt(readWhere(where, planned), claim, would, planned);
  if (holds === would) return undefined;
  return `${would ? 'a careful coach would' : 'a careful coach would not'}: ${text}\n${sayPlan(planned)}`;
}

function readWhere(text: string, { of }: Planned): Where {
  return Object.assign(
    {},
    ...text.split(', ').map((part): Where => {
      const weeks = /^weeks? (\d)(?:–(\d))?$/.exec(part);
      if (weeks) return { weeks: countUp(Number(weeks[1]), Number(weeks[2] ?? weeks[1])) };
      if (part === 'easy week') return { easy: true };
      if (part.startsWith('session ')) return { session: part.slice(8) };
      const spots = SPOTS[part];
      if (spots !== undefined) return { spots };
      const row = part.startsWith('row ');
      const id = slugOf(row ? part.slice(4) : part);
      if (!of.library.exercises.some((exercise) => exercise.id === id)) fail(`${of.name}: where is ${part}?`);
      return row ? { row: id } : { exercise: id };
    }),
  );
}

const countUp = (from: number, to: number): readonly number[] =>
  Array.from({ length: to - from + 1 }, (_, i) => from + i);

/** Under *would* everywhere there, and somewhere; under *would not* anywhere at all. */
function claimAt(where: Where, claim: string, would: boolean, planned: Planned): boolean {
  const told = planned.told.filter((one) => isThere(where, one));
  const order = where.exercise === undefined ? undefined : orderClaim(claim, where.exercise, planned);
  const weeks = order ?? weekClaim(claim, told);
  if (weeks !== undefined) return weeks;
  const done = /^done as (.+)$/.exec(claim)?.[1];
  if (done !== undefined)
    return everyOrSome(itemsAt(where, planned), ({ item }) => item.exercise === slugOf(done), would);
  const ofItem = itemClaim(claim);
  if (ofItem !== undefined) return everyOrSome(itemsAt(where, planned), ofItem, would);
  // A set that finds the load promises nothing of what it leaves.
  const judged = /^at (?:most|least) [\d.]+ left$/.test(claim)
    ? told.filter(({ reserve }) => reserve !== undefined)
    : told;
  return everyOrSome(judged, setClaim(claim) ?? fail(`${planned.of.name}: cannot be judged: ${claim}`), would);
}

const everyOrSome = <Of>(all: readonly Of[], holds: (of: Of) => boolean, every: boolean): boolean =>
  every ? all.length > 0 && all.every(holds) : all.some(holds);

const isIn = (where: Where, week: number, easy: boolean, session: string, row: string): boolean =>
  (where.weeks === undefined || where.weeks.includes(week)) &&
  (where.easy === undefined || easy) &&
  (where.session === undefined || where.session === session) &&
  (where.row === undefined || where.row === row);

function isThere(where: Where, told: Told): boolean {
  const spots = where.spots ?? ['work', 'test'];
  const named = where.exercise === undefined || where.exercise === told.exercise;
  return named && spots.includes(told.spot) && isIn(where, told.week, told.easy, told.session, told.row);
}

function itemsAt(where: Where, { items }: Planned): readonly Placed[] {
  return items.filter(({ item, group, week, easy, session }) => {
    const named = where.exercise === undefined || where.exercise === item.exercise;
    return (
      named && group.kind !== 'warm-up' && group.kind !== 'cool-down' && isIn(where, week, easy, session.id, item.row)
    );
  });
}

/** A plan in a few lines, to see what was done instead. */
function sayPlan({ plan, problems, items }: Planned): string {
  const why = problems.map(({ code, data }) => `  ${code} ${JSON.stringify(data).slice(0, 300)}`);
  if (plan === null) return ['  withheld', ...why].join('\n');
  const lines = items.map(({ item, week, session, group }) => {
    const sets = item.sets.map((set) => {
      const { kind, reps, seconds, metres, load, reserve, gate } = set;
      const amount = reps ?? (seconds === undefined ? `${metres} m` : `${seconds} s`);
      return `${kind === 'work' ? '' : `${kind} `}${gate ? 'gate ' : ''}${amount}${load ? ` @ ${load.label}` : ''}${reserve === undefined ? '' : ` (${reserve / 10} left)`}`;
    });
    return `  ${week} ${session.id} ${group.kind} ${item.exercise}: ${[...new Set(sets)].join(', ')} × ${item.asked.sets}`;
  });
  const findings = plan.findings.map(({ rule }) => rule);
  return [...lines, `  findings: ${[...new Set(findings)].join(', ')}`, ...why].join('\n');
}
