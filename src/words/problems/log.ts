/** Sentences for what is met while marks that came back are received. */
import { ALARM_SIGNS, type AlarmSign } from '../../model/log.js';
import type { LogProblems, WhichMark } from '../../model/problems-log.js';
import { counted, didYouMean, listed, quoted, type Sayings } from './said.js';

const KINDS: Readonly<Record<WhichMark['kind'], string>> = {
  opened: 'the beginning of a session',
  set: 'a set',
  reserve: 'what was left',
  pain: 'what hurt',
  closed: 'the end of a session',
  note: 'a note',
  void: 'a mark taken back',
};

/** `Mark 12 (a set of ‘goblet-squat’)`; marks from paper have no number that a coach has seen: `A 1, ‘row’, left set 2`. */
function sayMark({ seq, kind, row, paper }: WhichMark): string {
  if (paper === undefined) return `Mark ${seq} (${KINDS[kind]}${row === '' ? '' : ` of ${quoted(row)}`})`;
  const { session, side, set } = paper;
  const what = kind === 'set' ? `${side === 'both' ? '' : `${side} `}set ${set}` : KINDS[kind];
  const said = [session, row === '' ? '' : quoted(row), what].filter((part) => part !== '').join(', ');
  return said.slice(0, 1).toUpperCase() + said.slice(1);
}

/** What a coach may type of a sign of alarm, and the sign. */
const LIKE_ALARMS: readonly (readonly [RegExp, AlarmSign])[] = [
  [/chest|jaw|heart|arm pain/i, 'chest, jaw or arm pain'],
  [/faint|passed out|black(?:ed)? ?out|collapse/i, 'fainting'],
  [/head ?ache|head pain/i, 'sudden severe headache'],
  [/weakness|one side|droop/i, 'weakness on one side'],
  [/numb|bladder|bowel/i, 'new numbness, or loss of bladder or bowel control'],
  [/breath/i, 'breathlessness out of proportion'],
  [/calf.*swo|swo.*calf/i, 'swollen painful calf'],
];

/** What hurt, in words that are none of a table’s: where it may be a sign of alarm, that comes before any typing. */
function sayHurt(text: string): { readonly message: string; readonly hint: string } {
  const likely = LIKE_ALARMS.flatMap(([like, sign]) => (like.test(text) ? [sign] : []));
  const { wanted, hint } = CELLS.Hurt;
  const message = `${quoted(text)} is not ${wanted}.`;
  if (likely.length === 0) {
    return { message, hint: `${hint}; or a sign of alarm, in these words: ${ALARM_SIGNS.join('; ')}` };
  }
  return {
    message: `${message} It may be a sign of alarm: ring the client before anything else.`,
    hint: `of a sign of alarm, these words: ${likely.join('; ')}; else the place and a figure: ${hint}`,
  };
}

const PLACES = {
  block: 'the block',
  session: 'the session',
  row: 'the row',
  set: 'the set',
  exercise: 'the exercise',
} as const;

const CELLS = {
  Session: {
    wanted: 'a session by its letter and its week',
    hint: 'A 3, which is session A in the column of week 3',
  },
  Sets: {
    wanted: 'sets as they are pencilled',
    hint: '3 × 8 × 16 kg; or 8, 8, 6; or as planned; or easier; or left out',
  },
  Left: { wanted: 'how many more good reps were left', hint: '2' },
  Hurt: { wanted: 'where it hurt and how much, from 0 to 10', hint: 'right knee 3' },
} as const;

export const logSayings: Sayings<LogProblems> = {
  'log-unreadable': ({ form, why }) => {
    if (form === 'kept') {
      return {
        message: `The marks on file here are not as they were filed: ${why}. Nothing was added to them.`,
        hint: 'put the file back from a copy, then receive again',
      };
    }
    if (form === 'none') {
      return {
        message: `This is no log${why === '' ? ': neither a message from a booklet, nor its file, nor a table from paper' : `: ${why}`}.`,
        hint: 'the whole message as the client sent it, from the line Chalkleaf marks to the line End',
      };
    }
    return form === 'json'
      ? {
          message: `This log cannot be read: ${why}. Nothing of it was filed.`,
          hint: why.endsWith(' is missing')
            ? 'what every mark must say stands in LOG.md, the page on logs; a booklet says all of it: of its own file, ask the client to send it once more'
            : 'ask the client to send it once more',
        }
      : {
          message: `This message cannot be read: ${why}. Nothing of it was filed.`,
          hint: 'ask the client to send it once more, from a booklet of this version',
        };
  },
  'log-nothing': () => ({ message: 'There is not one mark in it.', hint: '' }),
  'log-cut-short': ({ missing, found, wanted }) => {
    const what = {
      end: `The message breaks off after ${counted(found, 'mark')}: its last line, which begins with End, is not there.`,
      beginning: `The beginning of the message is missing: it ends with ${counted(wanted, 'mark')}, and its first line, Chalkleaf marks, is not there.`,
      marks: `The message should hold ${counted(wanted, 'mark')}, and ${found} ${found === 1 ? 'is' : 'are'} there.`,
      letters: 'The message is not as it was written: a letter was changed, or a line, somewhere in it.',
    }[missing];
    return {
      message: `${what} Nothing of it was filed.`,
      hint: 'the whole message, copied; ask the client to send it once more',
    };
  },
  'log-sealed': ({ why, keys }) => ({
    message: {
      'cut short': 'These marks came sealed, and not whole: a piece is missing, or a letter was changed on the way.',
      foreign: 'This is sealed, but it is not marks of a Chalkleaf booklet.',
      newer: 'These marks were sealed by a newer booklet than this Chalkleaf knows.',
      older: 'These marks were sealed by an older booklet than this Chalkleaf can read.',
      'no key':
        keys === 0
          ? 'These marks came sealed, and no key of the studio is here to open them.'
          : 'These marks were sealed to a key that is not among those here.',
    }[why],
    hint:
      why === 'no key'
        ? 'the folder with the studio’s keys, with --state; where it was lost, put it back from a backup: `chalkleaf key restore`'
        : why === 'newer'
          ? 'a newer Chalkleaf'
          : 'the whole message, copied; ask the client to send it once more',
  }),
  'log-unknown-booklet': ({ booklet, client, nearest }) =>
    client === ''
      ? {
          message: `No client here has the booklet ${quoted(booklet)}.`,
          hint: 'the content folder from which that booklet was issued, with --content',
        }
      : {
          message: `${quoted(client)} has no issued booklet here that could have been pencilled in.`,
          hint: didYouMean(nearest) || 'the name of a client’s folder',
        },
  'log-no-such-edition': ({ edition, known }) => ({
    message: `Edition ${edition} of this booklet was never issued. Nothing was filed.`,
    hint: `one of its editions: ${listed(known.map(String))}`,
  }),
  'log-no-such-set': ({ mark, what, text, edition, nearest }) => ({
    message: `${sayMark(mark)}: edition ${edition} does not have ${PLACES[what]} ${quoted(text)}. Nothing was filed.`,
    hint: didYouMean(nearest) || 'ask the client which booklet it was marked in',
  }),
  'log-from-the-future': ({ mark, day, today }) => ({
    message: `${sayMark(mark)} is dated ${day}, and today is ${today}. Nothing was filed.`,
    hint: 'look at the date of the phone it was marked on, or the date in the table; or give the day with --today',
  }),
  'log-before-edition': ({ mark, day, edition, issued }) => ({
    message: `${sayMark(mark)} is dated ${day}, and edition ${edition} was issued on ${issued}. Nothing was filed.`,
    hint: 'the day it was done, and the edition it was marked in',
  }),
  'log-conflict': ({ mark, id, paper }) => ({
    message: paper
      ? `${sayMark(mark)} was typed before, with the same day as ‘written’, and says something else now. Nothing was filed.`
      : `${sayMark(mark)} is on file already and says something else there: ${id}. Nothing was filed.`,
    hint: paper
      ? 'a later day as ‘written’: then what is typed now counts'
      : 'ask the client to send it once more; what is on file stands',
  }),
  'log-not-writable': ({ folder, why }) => ({
    message: `The marks cannot be filed in ${quoted(folder)}: ${why}. What was on file stands.`,
    hint: 'receive again once the folder can be written; nothing is filed twice',
  }),
  'log-cell-unreadable': ({ column, text }) =>
    column === 'Hurt'
      ? sayHurt(text)
      : { message: `${quoted(text)} is not ${CELLS[column].wanted}.`, hint: CELLS[column].hint },
  'log-which-session': ({ text, known }) => ({
    message: `${quoted(text)} is not one session of this edition.`,
    hint: `one of: ${listed(known)}`,
  }),
  'log-no-session': ({ column }) => ({
    message: `The table begins without a ${column.toLowerCase()}; only the rows below it may leave that empty.`,
    hint: column === 'Date' ? '2027-01-04' : CELLS.Session.hint,
  }),
  'log-said-twice': ({ what }) => ({
    message: `The table says it twice: ${what}.`,
    hint: 'one row for each exercise and side of a session; several sets stand in one cell, with commas',
  }),
};
