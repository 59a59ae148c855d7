/**
 * A log → a message that a client can send and a coach can read; `LOG.md` beside it has the form. It reads back to the
 * very same events.
 */
import { readSetKey, type Side } from '../model/identity.js';
import type { Log, LogEvent } from '../model/log.js';
import { checksumOf } from './checksum.js';
import { writeWords } from './fold.js';
import { writeLoad } from './load-text.js';
import { writeShortId } from './short-id.js';

export const HEADING = 'Chalkleaf marks';

/** `events` in the order given; every line ends with a line feed. */
export function writeText(log: Log): string {
  const lines = [HEADING, `Booklet ${log.bookletId}`, `Device ${log.device}`];
  const contexts = contextsOf(log.events);
  let context = '';
  log.events.forEach((event, index) => {
    const here = contexts[index] ?? '';
    if (here !== context) lines.push(here);
    context = here;
    lines.push(`${event.seq}. ${event.at.slice(11, 19)} ${writeEvent(event)} #${writeShortId(event.id)}`);
  });
  const { length } = log.events;
  lines.push(`End: ${length} ${length === 1 ? 'mark' : 'marks'}, check ${checksumOf(lines.join('\n'))}`);
  return `${lines.join('\n')}\n`;
}

interface Standing {
  block: number | undefined;
  session: number | undefined;
}

/**
 * Day, offset, edition, block and session above each mark. One that has no block or session of its own stands under those
 * of the next that has, or else of the last: fewer lines, and nothing is read from it.
 */
function contextsOf(events: readonly LogEvent[]): readonly string[] {
  const own = events.map((event): Standing => {
    const key = event.kind === 'set' ? readSetKey(event.key) : null;
    return { block: key?.block, session: key?.occurrence ?? ('occurrence' in event ? event.occurrence : undefined) };
  });
  const fill = (order: readonly Standing[]): void => {
    let last: Standing = { block: undefined, session: undefined };
    for (const each of order) {
      each.block ??= last.block;
      each.session ??= last.session;
      last = each;
    }
  };
  fill([...own].reverse());
  fill(own);
  return events.map(({ at, edition }, index) => {
    const { block, session } = own[index] ?? {};
    const day = `${at.slice(0, 10)} ${at.slice(19)}, edition ${edition}`;
    return `${day}${block === undefined ? '' : `, block ${block}`}${session === undefined ? '' : `, session ${session}`}`;
  });
}

function writeEvent(event: LogEvent): string {
  switch (event.kind) {
    case 'opened':
      return `Begun: ${event.today}`;
    case 'set':
      return writeSet(event);
    case 'reserve':
      return `${event.row}, ${writeSide(event.side)}: ${event.reps} in reserve`;
    case 'pain':
      return writePain(event);
    case 'closed': {
      const said = [
        event.effort === undefined ? '' : `effort ${event.effort} of 10`,
        event.minutes === undefined ? '' : `${event.minutes} min`,
      ].filter((part) => part !== '');
      return said.length === 0 ? 'Over' : `Over: ${said.join(', ')}`;
    }
    case 'note':
      return `Note: ${writeWords(event.text)}`;
    case 'void':
      return `Taken back: ${writeShortId(event.event)}`;
  }
}

const writeSide = (side: Side | 'both'): string => (side === 'both' ? 'both sides' : side);

function writeSet(event: Extract<LogEvent, { kind: 'set' }>): string {
  const key = readSetKey(event.key);
  // A key that is none cannot come out of a log that was read; it is written so that reading refuses it.
  if (key === null) return `${event.key}: ?`;
  const { row, side, kind, ordinal } = key;
  const exercise: string = event.exercise;
  const who = exercise === row ? row : `${row} as ${exercise}`;
  const figures = writeFigures(event);
  const did =
    event.done === 'done' ? figures || 'done' : [event.done, figures].filter((part) => part !== '').join(', ');
  const parts = [did, event.tempo === 'normal' ? '' : event.tempo, event.asPlanned ? 'as planned' : ''];
  return `${who}, ${writeSide(side)}, ${kind} ${ordinal}: ${parts.filter((part) => part !== '').join('; ')}`;
}

function writeFigures({ reps, seconds, metres, load }: Extract<LogEvent, { kind: 'set' }>): string {
  const held = load === undefined ? '' : writeLoad(load);
  if (seconds !== undefined) return `${seconds} s${held === '' ? '' : ` × ${held}`}`;
  if (metres !== undefined) return `${metres} m${held === '' ? '' : ` × ${held}`}`;
  if (reps !== undefined) return held === '' ? `${reps} reps` : `${reps} × ${held}`;
  return held === '' ? '' : `with ${held}`;
}

function writePain({ row, report }: Extract<LogEvent, { kind: 'pain' }>): string {
  const { where, degree, side, worseNextMorning, alarm } = report;
  const morning = worseNextMorning === undefined ? '' : `${worseNextMorning ? '' : 'not '}worse next morning`;
  const parts = [
    `${where} ${degree} of 10${side === undefined ? '' : `, ${side}`}`,
    morning,
    alarm === undefined ? '' : `alarm: ${alarm}`,
  ];
  return `Pain${row === undefined ? '' : ` in ${row}`}: ${parts.filter((part) => part !== '').join('; ')}`;
}
