/** What comes before and after the work of a session, as lines to read and follow. */
import type { Group } from '../model/plan.js';
import { type Line, plainLine } from '../model/prose.js';
import { saySet } from '../words/say-dose.js';
import { sayLoad } from '../words/say-load.js';
import { nameOf, type Standing, type Strip, type Subject, standingsOf, WORK_GROUPS } from './subject.js';

export function composeWarmUp(subject: Subject, strip: Strip): readonly Line[] {
  const { booklet } = subject.speech.words;
  const minutes = minutesOf(strip, 'warm-up');
  const work = standingsOf(strip, WORK_GROUPS);
  const drills = standingsOf(strip, ['warm-up']);
  const names = [...new Set(work.map(({ item }) => subject.names.exercise(item.exercise)))];
  const lines = [
    ...(minutes === 0 && drills.length === 0 ? [] : booklet.warmUp(minutes, drills.length > 0 ? [] : names)),
    ...drillLines(subject, drills),
    ...byRow(work).flatMap((standings) => {
      const doses = dosesByWeek(subject, standings, 'warm-up');
      const first = standings[0];
      return doses.length === 0 || first === undefined
        ? []
        : [booklet.warmUpSet(subject.names.exercise(first.item.exercise), doses)];
    }),
  ];
  return lines.map(plainLine);
}

export function composeCoolDown(subject: Subject, strip: Strip): readonly Line[] {
  const minutes = minutesOf(strip, 'cool-down');
  const drills = standingsOf(strip, ['cool-down']);
  const { booklet } = subject.speech.words;
  return [...(minutes === 0 ? [] : booklet.coolDown(minutes)), ...drillLines(subject, drills)].map(plainLine);
}

function minutesOf(strip: Strip, kind: Group['kind']): number {
  const groups = strip.columns.flatMap(({ session }) => session.groups.filter((group) => group.kind === kind));
  return Math.max(0, ...groups.map(({ minutes }) => minutes ?? 0));
}

function drillLines(subject: Subject, drills: readonly Standing[]): readonly string[] {
  return byRow(drills).flatMap((standings) => {
    const first = standings[0];
    const doses = dosesByWeek(subject, standings, 'all');
    return first === undefined || doses.length === 0
      ? []
      : [subject.speech.words.booklet.drill(nameOf(subject, first.item.exercise), doses)];
  });
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
  { plan, speech }: Subject,
  standings: readonly Standing[],
  kind: 'warm-up' | 'all',
): readonly { readonly weeks: string; readonly dose: string }[] {
  const weeks = new Map<string, number[]>();
  for (const { column, item } of standings) {
    const sets = item.sets.filter((set) => kind === 'all' || set.kind === kind);
    const dose = [...new Set(sets.map((set) => saySet(sayLoad(set.load, plan.inputs.kit, speech), set, speech)))];
    if (dose.length === 0) continue;
    const oneSided = sets.some(({ side }) => side !== undefined);
    const said = oneSided ? speech.words.doses.eachSide(dose.join(', ')) : dose.join(', ');
    weeks.set(said, [...(weeks.get(said) ?? []), column.week.number]);
  }
  return [...weeks].map(([dose, of]) => ({ dose, weeks: weeks.size === 1 ? '' : speech.words.sets.weekList(of) }));
}
