/** Sentences for what is wrong with files, front matter and values. */

import { dayOfIso } from '../../model/day.js';
import type { ContentProblems } from '../../model/problems-content.js';
import { MONTHS } from '../english-months.js';
import { listed, quoted, type Said, type Sayings } from './said.js';

type Codes =
  | 'no-studio'
  | 'unknown-file'
  | 'not-utf-8'
  | 'control-character'
  | 'bad-id'
  | 'id-taken'
  | 'client-named-like-library'
  | 'private-in-library'
  | 'no-front-matter'
  | 'front-matter-open'
  | 'front-matter-too-long'
  | 'front-matter-too-deep'
  | 'front-matter-not-keys'
  | 'front-matter-unreadable'
  | 'yaml-feature'
  | 'key-twice'
  | 'unknown-key'
  | 'missing-key'
  | 'wrong-shape'
  | 'not-a-date'
  | 'no-such-date'
  | 'not-one-of'
  | 'not-a-number'
  | 'out-of-range'
  | 'range-backwards'
  | 'no-unit'
  | 'not-a-mass'
  | 'not-a-length'
  | 'not-a-floor'
  | 'not-a-time'
  | 'not-a-tempo'
  | 'not-a-language'
  | 'not-an-address'
  | 'not-a-phone-number'
  | 'stray-quote'
  | 'too-long'
  | 'comma-unclear'
  | 'entry-twice'
  | 'empty-entry';

const SHAPES = {
  text: 'text in one line',
  list: 'a list, its entries parted by commas',
  keys: 'keys of its own, one a line, set in by two spaces',
  entries: 'entries, each beginning with a hyphen on a line of its own',
} as const;

/** `text` is a date in ISO 8601's form that the calendar lacks. */
function sayNoSuchDate(text: string): Said {
  const [year = '', month = ''] = text.split('-');
  const name = MONTHS[Number(month) - 1];
  const days = [31, 30, 29, 28].find((last) => dayOfIso(`${year}-${month}-${last}`) !== undefined);
  if (name === undefined || days === undefined) {
    return {
      message: `There is no such day as ${quoted(text)}: a year has months 01 to 12.`,
      hint: `a month from ${year}-01 to ${year}-12`,
    };
  }
  return {
    message: `There is no such day as ${quoted(text)}: ${name} ${year} has ${days} days.`,
    hint: `a day from ${year}-${month}-01 to ${year}-${month}-${days}`,
  };
}

/** Signs that YAML reads as something else than letters. */
const SIGNS = { anchor: 'a &', alias: 'a *', tag: 'a !' } as const;

const UNREADABLE = {
  tab: ['A tab stands where the front matter is set in.', 'spaces instead of the tab'],
  'second-colon': [
    'There is a second colon in this value, and so it reads as a key of its own.',
    'quotation marks around the whole value: key: "one: two"',
  ],
  'quote-not-closed': ['A quotation mark is opened and never closed.', 'the same mark at the end of the value'],
  'bracket-not-closed': ['A bracket is opened and never closed.', 'the closing bracket, or the list without brackets'],
  'start-character': ['A value cannot begin with this character.', 'quotation marks around the whole value'],
  'no-colon': ['This line has no colon after its key.', 'key: value'],
  indent: [
    'This line is set in where it should not be, or not set in where it should.',
    'the line flush with its neighbours',
  ],
  other: ['The front matter cannot be read here.', 'one key: value a line'],
} as const;

export const fileSayings: Sayings<Pick<ContentProblems, Codes>> = {
  'no-studio': () => ({
    message: 'There is no studio.md in the content folder, so nobody knows whose studio this is.',
    hint: 'a file studio.md with name, place, coach, language, units, paper and emergency number',
  }),
  'unknown-file': ({ belongs }) => ({
    message: 'Nothing reads this file: it stands where the format has no place for one.',
    hint:
      belongs === '' ? 'move it out of the content folder, or name it README.md' : `${belongs}  (did you mean that?)`,
  }),
  'not-utf-8': ({ byte }) => ({
    message: `This is not text in UTF-8: the byte ${byte} cannot stand here.`,
    hint: 'save the file again as UTF-8',
  }),
  'control-character': ({ character }) => ({
    message: `An invisible control character, ${character}, stands here.`,
    hint: 'delete it, and type the words around it again',
  }),
  'bad-id': ({ id, suggestion }) => ({
    message: `${quoted(id)} cannot be an id: an id is small letters a to z, figures and single hyphens, at most 60.`,
    hint: suggestion === '' ? 'a plain name such as goblet-squat' : suggestion,
  }),
  'id-taken': ({ id, by }) => ({
    message: `The id ${quoted(id)} is taken: ${by} goes by it.`,
    hint: 'another id, one that nothing has gone by before',
  }),
  'client-named-like-library': ({ id, like }) => ({
    message: `A client's folder may not be called ${quoted(id)}: that is ${like}, a word every page uses.`,
    hint: 'another folder name, such as the client’s first and last name',
  }),
  'private-in-library': ({ kind, text, page, line }) => ({
    message: `${quoted(text)} is private to this client, and stands in ${page}${line > 0 ? `, line ${line},` : ''} as well: nothing could be published.`,
    hint:
      kind === 'name'
        ? 'the client’s name in full, or another word there'
        : kind === 'file-name'
          ? 'another folder name, such as the client’s first and last name, or another word there'
          : 'in one of the two pages alone',
  }),
  'no-front-matter': () => ({
    message: 'The file does not begin with front matter.',
    hint: '--- on the first line, then one key: value a line, then --- again',
  }),
  'front-matter-open': () => ({
    message: 'The front matter is opened and never closed.',
    hint: '--- on a line of its own after the last key',
  }),
  'front-matter-too-long': ({ kilobytes, mostKilobytes }) => ({
    message: `The front matter is ${kilobytes} kB long; ${mostKilobytes} kB is the most.`,
    hint: 'facts only; words belong in the body',
  }),
  'front-matter-too-deep': ({ most }) => ({
    message: `The front matter goes more than ${most} levels deep here.`,
    hint: 'plain keys, at most one level set in',
  }),
  'front-matter-not-keys': () => ({
    message: 'The front matter is not made of keys and values.',
    hint: 'one key: value a line',
  }),
  'front-matter-unreadable': ({ why }) => {
    const [message, hint] = UNREADABLE[why];
    return { message, hint };
  },
  'yaml-feature': ({ feature, text }) => ({
    message: `${quoted(text)} begins with ${SIGNS[feature]}, which does not stand for itself at the top of a page.`,
    hint: 'the value without it; in quotation marks where the sign belongs to it',
  }),
  'key-twice': ({ key }) => ({
    message: `The key ${quoted(key)} comes twice.`,
    hint: 'one of the two',
  }),
  'unknown-key': ({ key, nearest }) => ({
    message: `There is no key ${quoted(key)} here.`,
    hint: nearest === '' ? 'delete it, or put it into words in the body' : `${nearest}:  (did you mean that?)`,
  }),
  'missing-key': ({ key, example }) => ({
    message: `The key ${quoted(key)} is missing, or nothing is written after it.`,
    hint: example === '' ? `${key}: …` : `${key}: ${example}`,
  }),
  'wrong-shape': ({ key, wanted }) => ({
    message: `The value of ${quoted(key)} has the wrong shape.`,
    hint: SHAPES[wanted],
  }),
  'not-a-date': ({ text, suggestion }) => ({
    message: `${quoted(text)} is not a date as it is written here.`,
    hint: suggestion === '' ? 'year, month and day: 2027-01-04' : suggestion,
  }),
  'no-such-date': ({ text }) => sayNoSuchDate(text),
  'not-one-of': ({ text, known, nearest }) => ({
    message: `${quoted(text)} is not one of the words used here.`,
    hint: `${nearest === '' ? '' : `${nearest}  (did you mean that?); `}one of: ${listed(known)}`,
  }),
  'not-a-number': ({ text, whole }) => ({
    message: `${quoted(text)} is not a ${whole ? 'whole number' : 'number'}.`,
    hint: whole ? 'figures alone, such as 3' : 'figures, with a point or a comma before the decimals, such as 2.5',
  }),
  'out-of-range': ({ what, figure, least, most }) => ({
    message: `${what}: ${figure} is out of bounds.`,
    hint: `from ${least} to ${most}${/ \S+$/.exec(figure)?.[0] ?? ''}`,
  }),
  'range-backwards': ({ text }) => ({
    message: `The range ${quoted(text)} runs backwards.`,
    hint: 'the smaller number first',
  }),
  'no-unit': ({ text }) => ({
    message: `${quoted(text)} has no unit, and both kg and lb are used in this file.`,
    hint: `${text} kg, or ${text} lb`,
  }),
  'not-a-mass': ({ text, what, suggestion }) => ({
    message: what === 'load' ? `${quoted(text)} is not a load.` : `${quoted(text)} is not a body mass in kg or lb.`,
    hint:
      suggestion ||
      (what === 'load' ? 'a figure and its unit: 16 kg, 2.5 kg, 35 lb' : 'body mass in kg or lb: 70 kg, or 154 lb'),
  }),
  'not-a-length': ({ text }) => ({
    message: `${quoted(text)} is not a length.`,
    hint: 'a figure and its unit: 2.4 m, 240 cm',
  }),
  'not-a-floor': ({ text }) => ({
    message: `${quoted(text)} is not the size of a floor.`,
    hint: 'two lengths: 2 × 2.5 m',
  }),
  'not-a-time': ({ text }) => ({
    message: `${quoted(text)} is not a time.`,
    hint: '90 s, 2 min, 1 min 30 s, or none',
  }),
  'not-a-tempo': ({ text }) => ({
    message: `${quoted(text)} is not a tempo.`,
    hint: 'four figures, lowering, bottom, lifting, top: 2-0-1-0; or steady, slow lowering, slow with a pause, fast',
  }),
  'not-a-language': ({ text }) => ({
    message: `${quoted(text)} is not how a language is written here.`,
    hint: 'its short sign (BCP 47): en-GB for British English, nb for Norwegian',
  }),
  'not-an-address': ({ text }) => ({
    message: `${quoted(text)} is not a web address.`,
    hint: 'the whole address, beginning with https://',
  }),
  'not-a-phone-number': ({ text }) => ({
    message: `${quoted(text)} is not a telephone number.`,
    hint: 'figures, spaces and a leading + alone, such as 999 or +44 20 …',
  }),
  'stray-quote': ({ text }) => ({
    message: `A quotation mark stands at one end of ${quoted(text)} and not at the other.`,
    hint: text.replace(/["“”„«»]/g, '').trim(),
  }),
  'too-long': ({ letters, most }) => ({
    message: `This is ${letters} letters long; ${most} is the most.`,
    hint: 'the same in fewer words',
  }),
  'comma-unclear': ({ text }) => ({
    message: `The comma in ${quoted(text)} could part two entries or begin a decimal.`,
    hint: 'a space after a comma between entries (12, 16), or a point in a decimal (12.5)',
  }),
  'entry-twice': ({ entry }) => ({
    message: `${quoted(entry)} is named twice.`,
    hint: 'one of the two',
  }),
  'empty-entry': () => ({
    message: 'There is a comma with nothing beside it, or a value with nothing in it.',
    hint: 'one comma between two entries, none at the end',
  }),
};
