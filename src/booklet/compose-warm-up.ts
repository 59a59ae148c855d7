/** What comes before and after the work of a session, as lines to read and follow. */
import type { Drill } from '../model/booklet.js';
import type { Group, Item } from '../model/plan.js';
import { sayPlanned } from '../words/say-planned.js';
import { nameOf, type Standing, type Strip, type Subject, standingsOf, WORK_GROUPS } from './subject.js';

const inWords = (text: string): Drill => ({ name: '', text });

/** Its exercises where the plan has them, else general words; then the lighter sets before the work. */
export function composeWarmUp(subject: Subject, strip: Strip): readonly Drill[] {
  const { booklet } = subject.speech.words;
  const minutes = minutesOf(strip, 'warm-up');
  const work = standingsOf(strip, WORK_GROUPS);
  const drills = standingsOf(strip, ['warm-up']);
  const names = [...new Set(work.map(({ item }) => subject.names.exercise(item.exercise)))];
  return [
    ...(minutes === 0 || drills.length > 0 ? [] : booklet.warmUp(minutes, names).map(inWords)),
    ...drillLines(subject, drills, minutes),
    ...byRow(work).flatMap((standings) => {
      const doses = dosesByWeek(subject, standings, ({ kind }) => kind === 'warm-up');
      const first = standings[0];
      return doses.length === 0 || first === undefined
        ? []
        : [inWords(booklet.warmUpSet(subject.names.exercise(first.item.exercise), doses))];
    }),
  ];
}

export function composeCoolDown(subject: Subject, strip: Strip): readonly Drill[] {
  const minutes = minutesOf(strip, 'cool-down');
  const drills = standingsOf(strip, ['cool-down']);
  const { booklet } = subject.speech.words;
  return [
    ...(minutes === 0 || drills.length > 0 ? [] : booklet.coolDown(minutes).map(inWords)),
    ...drillLines(subject, drills, minutes),
  ];
}

function minutesOf(strip: Strip, kind: Group['kind']): number {
  const groups = strip.columns.flatMap(({ session }) => session.groups.filter((group) => group.kind === kind));
  return Math.max(0, ...groups.map(({ minutes }) => minutes ?? 0));
}

/** How long, in which order and how often through; then each exercise with what one time through asks of it. */
function drillLines(subject: Subject, drills: readonly Standing[], minutes: number): readonly Drill[] {
  const { booklet } = subject.speech.words;
  const lines = byRow(drills).flatMap((standings): readonly Drill[] => {
    const first = standings[0];
    const doses = dosesByWeek(subject, standings, () => true);
    return first === undefined || doses.length === 0
      ? []
      : [{ name: nameOf(subject, first.item.exercise), exercise: first.item.exercise, text: booklet.drill(doses) }];
  });
  if (lines.length === 0 || minutes === 0) return lines;
  // A block without a name is composed, and walking fills the minutes its exercises leave.
  const walk = drills.some(({ group }) => group.kind === 'warm-up' && group.name === '');
  return [inWords(booklet.inOrder(minutes, walk, throughByWeek(subject, drills))), ...lines];
}

/** How often through the exercises; nothing where it is always once. */
function throughByWeek(
  { speech }: Subject,
  drills: readonly Standing[],
): readonly { readonly weeks: string; readonly rounds: number }[] {
  const weeks = new Map<number, Set<number>>();
  for (const { group, column } of drills) {
    const of = weeks.get(group.rounds) ?? new Set();
    weeks.set(group.rounds, of.add(column.week.number));
  }
  if ([...weeks.keys()].every((rounds) => rounds === 1)) return [];
  return [...weeks].map(([rounds, of]) => ({
    rounds,
    weeks: weeks.size === 1 ? '' : speech.words.sets.weekList([...of]),
  }));
}

/** Rows in the order first met. */
export function byRow(standings: readonly Standing[]): readonly (readonly Standing[])[] {
  const rows = new Map<string, Standing[]>();
  for (const standing of standings) {
    const row = rows.get(standing.item.row) ?? [];
    row.push(standing);
    rows.set(standing.item.row, row);
  }
  return [...rows.values()];
}

/** Weeks with the same dose are said together; one dose for all weeks names none. */
function dosesByWeek(
  subject: Subject,
  standings: readonly Standing[],
  wanted: (set: Item['sets'][number]) => boolean,
): readonly { readonly weeks: string; readonly dose: string }[] {
  const weeks = new Map<string, number[]>();
  for (const { column, group, item } of standings) {
    const rounds = WORK_GROUPS.includes(group.kind) ? 1 : group.rounds;
    const dose = doseOf(subject, item.sets.filter(wanted), rounds);
    if (dose !== '') weeks.set(dose, [...(weeks.get(dose) ?? []), column.week.number]);
  }
  const { sets } = subject.speech.words;
  return [...weeks].map(([dose, of]) => ({ dose, weeks: weeks.size === 1 ? '' : sets.weekList(of) }));
}

/** `8 reps`, `30 s, 2 sets each side`: equal sets of one time through once, with how many where there are several. */
function doseOf({ plan, speech }: Subject, sets: readonly Item['sets'][number][], rounds: number): string {
  const { doses } = speech.words;
  const sides = [...new Set(sets.map(({ side }) => side ?? 'both'))];
  const said = new Map<string, number>();
  for (const set of sets) {
    const { text } = sayPlanned(set, plan.inputs.kit, speech);
    said.set(text, (said.get(text) ?? 0) + 1 / sides.length / rounds);
  }
  const counted = [...said]
    .map(([text, count]) => (Math.round(count) > 1 ? doses.withSets(text, Math.round(count)) : text))
    .join(', ');
  const [only] = sides;
  if (counted === '' || only === undefined || only === 'both') return counted;
  return sides.length === 1 ? doses.oneSide(counted, only) : doses.eachSide(counted);
}
