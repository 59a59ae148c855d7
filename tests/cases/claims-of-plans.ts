/** Claims about the plan as a whole. */
import type { Item, PlanSession } from '../../src/model/plan.js';
import { MATTERS, WITHHELD } from './matters.js';
import type { Planned } from './plan-of-case.js';
import { fail, slugOf } from './read-library.js';

const sessionsOf = ({ plan }: Planned): readonly PlanSession[] =>
  (plan?.weeks ?? []).flatMap(({ sessions }) => sessions);

export function planClaim(text: string, planned: Planned): boolean {
  const { plan, problems } = planned;
  const [, withheld] = /^withheld for (.+)$/.exec(text) ?? [];
  if (withheld !== undefined) {
    const codes = WITHHELD[withheld] ?? fail(`nothing is withheld for ${withheld}`);
    return plan === null && problems.some(({ code, severity }) => severity === 'error' && codes.includes(code));
  }
  const [, matter] = /^tell the coach of (.+)$/.exec(text) ?? [];
  if (matter !== undefined) return tellsOf(MATTERS[matter] ?? fail(`no matter ${matter}`), planned);
  const [, said] = /^say "(.+)" to the client$/.exec(text) ?? [];
  if (said !== undefined) return planned.booklet().toLowerCase().includes(said.toLowerCase());
  return wholeClaim(text, planned) ?? sessionClaim(text, planned) ?? fail(`cannot be judged: ${text}`);
}

function wholeClaim(text: string, planned: Planned): boolean | undefined {
  const { plan } = planned;
  if (text === 'made') return plan !== null;
  if (text === 'moderate') return plan?.inputs.standing.moderate === true;
  const [, end, date = ''] = /^(nothing|stops) after (\S+)$/.exec(text) ?? [];
  const sessions = sessionsOf(planned);
  if (end === 'nothing') return sessions.length > 0 && sessions.every((session) => session.date <= date);
  if (end === 'stops') return plan?.stops?.after === date;
  const [, refused] = /^give a reason to refuse (.+)$/.exec(text) ?? [];
  if (refused !== undefined) {
    const id = slugOf(refused);
    const reasons = planned.items.flatMap(({ item }) => item.reasons);
    return reasons.some(({ rule, inputs }) => rule === 'version-chosen' && inputs.some(({ value }) => value === id));
  }
  return undefined;
}

function sessionClaim(text: string, planned: Planned): boolean | undefined {
  const sessions = sessionsOf(planned);
  const each = (holds: (session: PlanSession) => boolean) => sessions.length > 0 && sessions.every(holds);
  const [, what, bound] = /^(.+?) of at (?:most|least) (\d+) minutes$/.exec(text) ?? [];
  const minutes = Number(bound);
  const lengthOf = (session: PlanSession, kind: string) =>
    session.groups.filter((group) => group.kind === kind).reduce((sum, group) => sum + (group.minutes ?? 0), 0);
  if (what === 'sessions') return each((session) => session.minutes <= minutes);
  if (what === 'warm-ups') return each((session) => lengthOf(session, 'warm-up') >= minutes);
  if (what === 'cool-downs') return each((session) => lengthOf(session, 'cool-down') >= minutes);
  if (what === 'short versions')
    return each(({ short }) => short.sets.length > 0 && short.minutes > 0 && short.minutes <= minutes);
  const [, count, week] = /^(\d+) sessions in week (\d)$/.exec(text) ?? [];
  if (count !== undefined) return planned.plan?.weeks[Number(week) - 1]?.sessions.length === Number(count);
  const [, order] = /^session order ([A-Z ]+)$/.exec(text) ?? [];
  if (order !== undefined)
    return sessions
      .map(({ id }) => id)
      .join(' ')
      .startsWith(order);
  const [, cut] = /^cut (.+)$/.exec(text) ?? [];
  if (cut !== undefined) {
    const name: string = slugOf(cut);
    return sessions.some(({ trimmed }) => trimmed.some(({ row }) => row === name));
  }
  if (text === 'one trip to the floor') return each((session) => tripsIn(session, planned) === 1);
  if (text === 'three bells in a circuit') return circuits(planned).some((items) => bellsIn(items).size >= 3);
  if (text === 'plates changed in a circuit') return circuits(planned).some(changesPlates);
  return undefined;
}

/** Anywhere a coach reads: findings, problems, reasons of items and of cuts. */
function tellsOf(ids: readonly string[], planned: Planned): boolean {
  const { plan, problems } = planned;
  const cuts = sessionsOf(planned).flatMap(({ trimmed }) => trimmed.map(({ reason }) => reason.rule));
  const told: readonly string[] = [
    ...(plan?.findings ?? []).map(({ rule }) => rule),
    ...problems.map(({ code }) => code),
    ...planned.items.flatMap(({ item }) => item.reasons.map(({ rule }) => rule)),
    ...cuts,
  ];
  return ids.some((id) => told.includes(id));
}

/** Runs of work that ask for the floor. */
function tripsIn({ groups }: PlanSession, { exercises }: Planned): number {
  const items = groups.filter(({ kind }) => kind === 'straight' || kind === 'circuit').flatMap((group) => group.items);
  const down = items.map(
    ({ exercise }) => exercises.get(exercise)?.facts.asks.some(({ of }) => of === 'floor') === true,
  );
  return down.filter((isDown, index) => isDown && down[index - 1] !== true).length;
}

const circuits = (planned: Planned): readonly (readonly Item[])[] =>
  sessionsOf(planned).flatMap(({ groups }) =>
    groups.filter(({ kind }) => kind === 'circuit').map(({ items }) => items),
  );

const piecesIn = (items: readonly Item[]) =>
  items.flatMap(({ sets }) => sets.flatMap(({ load }) => load?.pieces ?? []));
const bellsIn = (items: readonly Item[]): ReadonlySet<string> =>
  new Set(piecesIn(items).flatMap(({ id }) => (id.startsWith('bell') ? [id] : [])));

/** The same bar or handle with other plates from one row to the next. */
function changesPlates(items: readonly Item[]): boolean {
  const loaded = items.map(({ sets }) => sets.find(({ load }) => load !== undefined)?.load?.pieces ?? []);
  const bars = loaded.filter((pieces) => pieces.some(({ id }) => /^(bar|handle)/.test(id)));
  return (
    new Set(
      bars.map((pieces) =>
        pieces
          .map(({ id }) => id)
          .sort()
          .join(),
      ),
    ).size > 1
  );
}
