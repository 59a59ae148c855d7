/** Norwegian bokmål for what a new edition changes, and for one that has ended or was withdrawn. No sentence is over 20 words. */
import { BODY_PARTS, type BodyPart } from '../model/exercise.js';
import type { ChangeWords, SaidChange, WhenChanged, WholeChange, WhyChanged } from './change-words.js';
import { PARTS } from './norwegian-body.js';
import { counted } from './norwegian-figures.js';
import { begun } from './rule-words.js';
import { NO_BREAK } from './spacing.js';

const WHY: Readonly<Record<Exclude<WhyChanged['kind'], 'pain'>, string>> = {
  care: ', for å være på den sikre siden',
  seen: ', etter det treneren så',
  marks: ', etter det du har ført opp',
  heavy: ', fordi det var tungt sist',
  'chose-easier': ', fordi du valgte den lettere',
  'had-more': ', fordi du hadde mer igjen enn planlagt',
  earned: ', fordi du har fortjent det',
  away: ', etter tiden du var borte',
  ill: ', for å komme rolig i gang igjen',
  none: '',
};

/** Not everybody who sees a booklet lie about needs to read where. */
const UNNAMED: readonly BodyPart[] = ['pelvic floor', 'belly'];

const why = (of: WhyChanged): string => {
  if (of.kind !== 'pain') return WHY[of.kind];
  const part = BODY_PARTS.find((one) => one === of.where);
  return part !== undefined && !UNNAMED.includes(part)
    ? `, fordi du hadde vondt i ${PARTS[part].own}`
    : ', fordi det gjorde vondt';
};

function when(of: WhenChanged): string {
  if (of.kind === 'between') return `Fra ${of.day} til ${of.until}`;
  return of.kind === 'on' ? begun(of.day) : `Fra ${of.day}`;
}

const AMOUNT: Readonly<Record<SaidChange['counts'], Readonly<Record<SaidChange['way'], string>>>> = {
  reps: { down: 'færre repetisjoner', up: 'flere repetisjoner', other: 'andre repetisjoner' },
  seconds: { down: 'kortere tid', up: 'lengre tid', other: 'en annen tid' },
  metres: { down: 'kortere vei', up: 'lengre vei', other: 'en annen avstand' },
};

/** A band goes by its name. */
const withLoad = ({ load, steady }: SaidChange): string => {
  if (load === null) return 'får en annen vekt';
  const begins = steady ? 'gjøres' : 'begynner';
  return load === '' ? `${begins} uten vekt` : `${begins} med ${load}`;
};

const EFFORT: Readonly<Record<SaidChange['way'], string>> = {
  down: 'stopp med flere i reserve',
  up: 'stopp med færre i reserve',
  other: 'stopp med et annet tall i reserve',
};

/** Words of two names that one sentence holds. */
const NAMES_TOGETHER = 8;

/** What of it is otherwise, said of its name; Norwegian puts the verb second, so that a day may stand before it or not. */
const said: Readonly<Record<SaidChange['what'], (of: SaidChange) => string>> = {
  added: ({ name }) => `${name} kommer i tillegg`,
  removed: ({ name }) => `${name} er utelatt`,
  version: ({ name, instead }) =>
    `${name} ${instead}`.split(/\s+/).length > NAMES_TOGETHER
      ? `du gjør ${name}. Den kommer i stedet for ${instead}`
      : `du gjør ${name} i stedet for ${instead}`,
  load: (of) => `${of.name} ${withLoad(of)}`,
  amount: ({ name, counts, way }) => `${name} har ${AMOUNT[counts][way]}`,
  sets: ({ name, sets, steady }) => `${name} har ${steady ? counted(sets, 'sett', 'sett') : 'et annet antall sett'}`,
  effort: ({ name, way }) => `${EFFORT[way]} i ${name}`,
  tempo: ({ name, tempo }) => `${name} gjøres ${tempo === '' ? 'i vanlig tempo' : tempo}`,
  rest: ({ name }) => `${name} har en annen pause etter seg`,
  conditions: ({ name }) => `${name} går opp på en annen måte`,
};

const MOST_WORDS = 20;
const isLong = (sentence: string): boolean => sentence.split(/\s+/).length > MOST_WORDS;

/** A cause that would make the sentence long has one of its own. */
function withCause(what: string, cause: string): string {
  return cause !== '' && isLong(`${what}${cause}`) ? `${what}. Det er${cause.slice(1)}.` : `${what}${cause}.`;
}

const WHOLE: Readonly<Record<WholeChange['why'], string>> = {
  away: 'du har vært borte, så ',
  'will-be-away': 'du skal være borte, så ',
  ill: 'du har hatt en pause, så ',
  none: '',
};

function sessionsLeft({ left, last }: WholeChange): string {
  if (left === 0) return 'ingen økt er igjen i denne perioden';
  return left === 1 ? `1${NO_BREAK}økt er igjen, ${last}` : `${left}${NO_BREAK}økter er igjen, den siste ${last}`;
}

const sessionsOn = (of: WholeChange): string =>
  of.left < 2 ? sessionsLeft(of) : `den neste økten er ${of.next}, den siste ${of.last}`;

export const norwegianChanges: ChangeWords = {
  title: (edition, date) => (edition === 0 ? 'Utkast, ikke utgitt' : `Utgave${NO_BREAK}${edition}, ${date}`),
  row: (change) => {
    const what = said[change.what](change);
    const whole = `${when(change.when)}: ${what}`;
    const from = `Fra ${change.when.day}: ${what}`;
    return withCause(change.when.kind === 'between' && isLong(whole) ? from : whole, why(change.why));
  },
  begins: (change) => {
    if (change.what === 'added') return `Ny: ${change.name}.`;
    if (change.what === 'removed') return `${begun(change.name)} er utelatt inntil videre.`;
    return withCause(begun(said[change.what](change)), why(change.why));
  },
  block: (goesOn) => (goesOn ? 'Ny periode: den begynner der den forrige sluttet.' : 'Dette er en ny periode.'),
  programme: (name) => `Det er et annet program: ${name}.`,
  moved: (to) => `Øktene dine er flyttet: den neste er ${to}.`,
  sessions: (count) => `Det er ${counted(count, 'økt', 'økter')} i denne perioden nå.`,
  fewer: (of) => `${begun(`${WHOLE[of.why]}${sessionsLeft(of)}`)}.`,
  later: (of) => `${begun(`${WHOLE[of.why]}${sessionsOn(of)}`)}.`,
  stops: (date) => `Spør før du trener videre etter ${date}.`,
  sameWork: 'Treningen er den samme som i utgaven før.',
  useThis: (marks) => `Tren etter denne utgaven fra nå av.${marks ? ' Strekene dine er med.' : ''}`,

  ended: {
    title: 'Dette heftet er slutt',
    lines: (date, coach) => [`Den siste dagen var ${date}.`, `Be ${coach} om det neste før du trener videre.`],
  },
  withdrawn: {
    title: 'Trukket tilbake: ikke tren etter dette',
    lines: (date, coach) => [
      `Dette heftet ble trukket tilbake ${date}.`,
      'Ikke tren etter det, og heller ikke etter en kopi på papir.',
      `Spør ${coach} hva du skal gjøre nå.`,
    ],
  },
};
