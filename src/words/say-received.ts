/** What `receive` tells a coach: what was filed, of which sessions, and what must be looked at before anything else. */
import type { PainReport } from '../model/log.js';
import { counted, listed } from './problems/said.js';
import { speechOf } from './speech.js';
import { steadyLetters } from './steady-letters.js';
import { wrapLine } from './wrap-lines.js';

export interface ReceivedSession {
  readonly id: string;
  readonly name: string;
  readonly week: number;
  /** `YYYY-MM-DD`, the days it was marked on. */
  readonly days: readonly string[];
}

/** Pain or an alarm sign among the new marks. */
export interface ReceivedPain {
  readonly day: string;
  readonly report: PainReport;
  /** What it was felt in; empty where it is said of the session. */
  readonly exercise: string;
  /** Of the degree at which an exercise is left, or worse the next morning: to be looked at. */
  readonly grave: boolean;
}

export interface Received {
  readonly name: string;
  readonly device: string;
  readonly fresh: number;
  readonly known: number;
  readonly sessions: readonly ReceivedSession[];
  readonly pain: readonly ReceivedPain[];
  readonly notes: readonly { readonly day: string; readonly text: string }[];
}

/** Lines for a terminal of at most 80 columns, in the order they are to be read. */
export const sayReceived = (received: Received): readonly string[] => linesOf(received).map(steadyLetters);

function linesOf({ name, device, fresh, known, sessions, pain, notes }: Received): readonly string[] {
  const from = device === 'paper' ? 'from paper' : `from ${device}`;
  if (fresh === 0) {
    const all = known === 1 ? 'the one mark is' : `all ${known} marks are`;
    return wrapLine('', `Nothing new for ${name}, ${from}: ${all} on file already.`, 2);
  }
  const already = known === 0 ? '' : `; ${known} ${known === 1 ? 'was' : 'were'} on file already`;
  return [
    ...wrapLine('', `Filed for ${name}, ${from}: ${counted(fresh, 'new mark')}${already}.`, 2),
    ...[
      ...sessions.map(
        ({ id, name: called, week, days }) => `Session ${id} of week ${week}, ${called}: ${listed(days, 'and')}.`,
      ),
      ...pain.filter(({ report }) => report.alarm !== undefined).map(sayAlarm),
      ...pain.filter(({ report, grave }) => report.alarm === undefined && grave).map(sayPain),
      ...notes.map(({ day, text }) => `Note of ${day}: ${shortened(text)}`),
    ].flatMap((line) => wrapLine('  ', line, 2)),
  ];
}

const sayAlarm = ({ day, report }: ReceivedPain): string =>
  `ALARM SIGN on ${day}: ${report.alarm ?? ''}. Speak to the client before anything else; this needs a doctor’s eye.`;

function sayPain({ day, report, exercise }: ReceivedPain): string {
  const { where, side, degree, worseNextMorning } = report;
  const { inSentenceWhole } = speechOf('en-GB').words.sets;
  const what = where === 'elsewhere' ? 'somewhere' : `${side === undefined ? '' : `${side} `}${where}`;
  const morning = worseNextMorning === true ? ', worse the next morning' : '';
  return `Look at this: pain of ${degree} in 10, ${what}${exercise === '' ? '' : `, in the ${inSentenceWhole(exercise)}`}, on ${day}${morning}.`;
}

const LONGEST = 200;

/** In one line. */
function shortened(text: string): string {
  const letters = Array.from(text.replace(/\s+/g, ' ').trim());
  return letters.length > LONGEST ? `${letters.slice(0, LONGEST - 1).join('')}…` : letters.join('');
}
