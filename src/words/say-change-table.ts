/** Everything a new edition changes, for the coach: a line for each row and each stretch of weeks it is alike in. */
import {
  type Change,
  type ChangedPlace,
  type ChangedWork,
  isRowChange,
  type PlanChange,
  type RowChange,
} from '../model/change.js';
import type { Reason } from '../model/reason.js';
import type { CoachSpeech } from './coach-speech.js';
import { sayDate } from './say-date.js';
import { sayTenths } from './say-dose.js';
import { sayPlanned } from './say-planned.js';

export interface ChangeLine {
  /** `Session A`, or a thing of the block as a whole. */
  readonly session: string;
  /** Of the exercise done now; empty of the block as a whole. */
  readonly name: string;
  /** What of it is otherwise: `load, reserve`. */
  readonly what: string;
  readonly stretches: readonly {
    readonly from: string;
    readonly before: string;
    readonly after: string;
  }[];
  /** Of the new plan; empty where nothing in it says. */
  readonly why: string;
  /** Its id, `` where there is none. */
  readonly rule: string;
}

export interface TableOf {
  readonly changes: readonly Change[];
  readonly speech: CoachSpeech;
  readonly names: { readonly exercise: (id: string) => string; readonly programme: (id: string) => string };
  /** A reason for the coach, with things by their names; a plan's own sentence has ids alone. */
  readonly why: (reason: Reason) => string;
}

export function sayChangeTable(of: TableOf): readonly ChangeLine[] {
  const rows = new Map<string, RowChange[]>();
  for (const change of of.changes.filter(isRowChange)) {
    const key = `${change.session}/${change.group === 'test' ? 'test/' : ''}${change.row}`;
    rows.set(key, [...(rows.get(key) ?? []), change]);
  }
  const whole = of.changes.flatMap((change) => (isRowChange(change) ? [] : [lineOfPlan(change, of)]));
  return [...whole, ...[...rows.values()].flatMap((changes) => lineOfRow(changes, of))];
}

function lineOfRow(changes: readonly RowChange[], of: TableOf): readonly ChangeLine[] {
  const [first] = changes;
  if (first === undefined) return [];
  const { words, coach } = of.speech;
  const places = new Map(changes.flatMap((change) => change.places.map((place) => [place.occurrence, place] as const)));
  const inOrder = [...places.values()].sort((a, b) => a.occurrence - b.occurrence);
  const work = inOrder[0]?.after ?? inOrder[0]?.before;
  const told = changes.find(({ safety, reason }) => safety && reason !== undefined) ?? first;
  return [
    {
      session: words.booklet.sessionTitle(first.session, ''),
      name: work === undefined || work === null ? first.row : of.names.exercise(work.exercise),
      what: changes.map(({ what }) => coach.changes.kinds[what]).join(', '),
      stretches: stretchesOf(inOrder, of),
      why: told.reason === undefined ? '' : of.why(told.reason),
      rule: told.reason?.rule ?? '',
    },
  ];
}

/** Places one after the other that say the same, once. */
function stretchesOf(places: readonly ChangedPlace[], of: TableOf): ChangeLine['stretches'] {
  const said = places.map((place) => ({ from: sayDate(place.date, of.speech), ...sides(place, of) }));
  return said.filter((one, i) => one.before !== said[i - 1]?.before || one.after !== said[i - 1]?.after);
}

function sides({ before, after }: ChangedPlace, of: TableOf): { readonly before: string; readonly after: string } {
  const differs = (what: keyof ChangedWork): boolean =>
    before === null || after === null ? false : before[what] !== after[what];
  const say = (work: ChangedWork | null): string => {
    const { words, coach } = of.speech;
    if (work === null) return coach.changes.notThere;
    let text = dosesOf(work, of.speech);
    if (differs('exercise')) text = words.sets.versionDose(of.names.exercise(work.exercise), text);
    else if (differs('done') && work.done !== undefined) text = words.sets.namedWay(work.done, text);
    const tempo = words.sets.tempo[work.tempo];
    if (differs('tempo') && tempo !== '') text = `${text}, ${tempo}`;
    if (differs('restSeconds')) text = coach.changes.withRest(text, words.doses.seconds(`${work.restSeconds}`));
    if (differs('reserve') && work.reserve !== null) text = coach.changes.withReserve(text, sayTenths(work.reserve));
    return text;
  };
  return { before: say(before), after: say(after) };
}

/** `16 kg × 9, 3 sets`; sides that do the same are said together. */
function dosesOf({ sets }: ChangedWork, speech: CoachSpeech): string {
  const { doses, sides: names } = speech.words;
  const said = sets.map((set) => ({
    side: set.side,
    text: doses.withSets(sayPlanned(set, [], speech).text, set.count),
  }));
  const texts = [...new Set(said.map(({ text }) => text))];
  return texts
    .map((text) => {
      const of = new Set(said.flatMap((one) => (one.text === text && one.side !== undefined ? [one.side] : [])));
      const [side] = of;
      if (of.size > 1) return doses.eachSide(text);
      return side === undefined ? text : doses.ofSide(names[side], text);
    })
    .join('; ');
}

function lineOfPlan(change: PlanChange, { speech, names, why }: TableOf): ChangeLine {
  const { changes: words } = speech.coach;
  const line = (from: string, before: string, after: string) => ({
    session: words.whole[change.what],
    name: '',
    what: '',
    stretches: [{ from, before, after }],
    why: 'reason' in change && change.reason !== undefined ? why(change.reason) : '',
    rule: 'reason' in change ? (change.reason?.rule ?? '') : '',
  });
  switch (change.what) {
    case 'block':
      return line('', words.blockNumber(change.before), words.blockNumber(change.after));
    case 'programme':
      return line('', names.programme(change.before), names.programme(change.after));
    case 'sessions':
      return line('', `${change.before}`, `${change.after}`);
    case 'stops': {
      const day = (date: string | null): string => (date === null ? words.noDay : sayDate(date, speech));
      return line('', day(change.before), day(change.after));
    }
    case 'dates':
      return {
        ...line('', '', ''),
        stretches: change.moved.map(({ before, after, session }) => ({
          from: speech.words.booklet.sessionTitle(session, ''),
          before: sayDate(before, speech),
          after: sayDate(after, speech),
        })),
      };
  }
}
