/**
 * The grammar of sets and reps. Everything a coach writes on a board is read, or refused with the reason; the writer is
 * in `write-dose.ts`. Bounds: sets 1–20, reps 1–100, seconds 1–3600, metres 1–1000, minutes 1–60, rounds 1–20.
 */
import type { Dose } from '../model/dose.js';
import type { Range } from '../model/quantity.js';
import { type Bounds, readRange, within } from './read-amounts.js';
import { asTyped, good, mapRead, type Part, type Read, type Reader, readPart, refuse } from './read-value.js';

export const SETS: Bounds = { least: 1, most: 20 };
export const REPS: Bounds = { least: 1, most: 100 };
const SECONDS: Bounds = { least: 1, most: 3600 };
const METRES: Bounds = { least: 1, most: 1000 };
const MINUTES: Bounds = { least: 1, most: 60 };

const EACH = /\s*(?:(?:on\s+)?(?:each|per|a|every)\s+(?:side|arm|leg|hand)|\/\s*side)$/;
const SECOND = '(?:s|sec|secs|second|seconds)';
const MINUTE = '(?:min|mins|minute|minutes)';
const METRE = '(?:m|metre|metres|meter|meters)';

/** A dose outside a circuit. */
export const readDose: Reader<Dose> = (text) => inOwnDashes(text, readAny(text, undefined));

/** A dose in a circuit of so many rounds: a bare amount, whose sets are the rounds. */
export const readCircuitDose =
  (rounds: number): Reader<Dose> =>
  (text) =>
    inOwnDashes(text, readAny(text, rounds));

/** A range is quoted with the dash the author wrote. */
function inOwnDashes(text: string, read: Read<Dose>): Read<Dose> {
  if (read.ok) return read;
  const faults = read.faults.map((fault) => {
    if (fault.finding.code !== 'range-backwards') return fault;
    const own = text.slice(fault.start, fault.start + fault.length);
    return { ...fault, finding: { code: fault.finding.code, data: { text: own } } };
  });
  return { ok: false, faults };
}

function readAny(text: string, rounds: number | undefined): Read<Dose> {
  // `M` is kept apart from nothing: no unit differs by case. Lower-casing changes no place for these letters.
  const typed = asTyped(text).replace(/[A-Z]/g, (letter) => letter.toLowerCase());
  const word = typed.trim();
  const whole: Part = { text: word, start: typed.length - typed.trimStart().length };
  if (word === '') return refuse({ code: 'empty-cell', data: { column: 'Sets and reps' } }, text);
  const special = readSpecial(whole);
  if (special) {
    const fitsCircuit = special.ok && special.value.kind === 'main-next';
    if (rounds === undefined || !special.ok || fitsCircuit) return special;
    return refuse({ code: 'dose-in-circuit', data: { text: text.trim(), rounds } }, text);
  }
  const times = word.indexOf('×');
  if (times === -1) return rounds === undefined ? refuseBare(text, whole) : readAmount(whole, rounds);
  if (rounds !== undefined) return refuse({ code: 'dose-in-circuit', data: { text: text.trim(), rounds } }, text);
  const setsText = word
    .slice(0, times)
    .replace(/\s*sets?\s*(of)?\s*$/, '')
    .trimEnd();
  if (!/^\d{1,6}$/.test(setsText)) return refuse({ code: 'dose-unreadable', data: { text: text.trim() } }, text);
  const sets = readPart({ text: setsText, start: whole.start }, (figure) =>
    within('Sets', Number(figure), figure, SETS, figure),
  );
  if (!sets.ok) return sets;
  const after = word.slice(times + 1);
  const start = whole.start + times + 1 + (after.length - after.trimStart().length);
  return readAmount({ text: after.trim(), start }, sets.value);
}

/** A range of reps, seconds or metres, perhaps on each side. */
function readAmount(part: Part, sets: number): Read<Dose> {
  const each = EACH.exec(part.text);
  const eachSide = each !== null;
  const amount = (each ? part.text.slice(0, each.index) : part.text).trim();
  const match = new RegExp(`^([\\d\\s-]+?|\\d+\\s+to\\s+\\d+)\\s*(${SECOND}|${MINUTE}|${METRE}|reps?)?$`).exec(amount);
  if (!match) return readPart(part, (text) => refuse({ code: 'dose-unreadable', data: { text } }, text));
  const figures: Part = { text: match[1] ?? '', start: part.start };
  const unit = match[2] ?? '';
  const range = (what: string, bounds: Bounds): Read<Range> =>
    readPart(figures, (text) => readRange(what, text, bounds));
  if (new RegExp(`^${SECOND}$`).test(unit)) {
    return mapRead(range('Seconds', SECONDS), (seconds) => ({ kind: 'timed', sets, seconds, eachSide }));
  }
  if (new RegExp(`^${MINUTE}$`).test(unit)) {
    return mapRead(range('Minutes', MINUTES), ({ min, max }) => ({
      kind: 'timed',
      sets,
      seconds: { min: min * 60, max: max * 60 },
      eachSide,
    }));
  }
  if (new RegExp(`^${METRE}$`).test(unit)) {
    return mapRead(range('Metres', METRES), (metres) => ({ kind: 'distance', sets, metres, eachSide }));
  }
  return mapRead(range('Reps', REPS), (reps) => ({ kind: 'sets', sets, reps, eachSide }));
}

/** The forms that are not so many sets of something; `undefined` where the text is none of them. */
function readSpecial(whole: Part): Read<Dose> | undefined {
  const { text } = whole;
  const bounded = (what: string, figure: string, bounds: Bounds): Read<number> =>
    readPart(whole, (all) => within(what, Number(figure), figure, bounds, all));
  const rounds = /^(\d{1,6})\s*rounds?$/.exec(text);
  if (rounds?.[1]) return mapRead(bounded('Rounds', rounds[1], SETS), (count) => ({ kind: 'rounds', rounds: count }));
  const mainNext = /^(\d{1,6})\s*main\s*\+\s*(\d{1,6})\s*next(?:\s+up)?$/.exec(text);
  if (mainNext?.[1] && mainNext[2]) {
    return both(bounded('Reps', mainNext[1], REPS), bounded('Reps', mainNext[2], REPS), (main, next) => ({
      kind: 'main-next',
      main,
      next,
    }));
  }
  const steps = /^(\d{1,3}(?:\s*-\s*\d{1,3}){2,19})\s*×\s*(\d{1,6})$/.exec(text);
  if (steps?.[1] && steps[2]) {
    const reps = steps[1].split('-').map(Number);
    const outside = reps.find((count) => count < REPS.least || count > REPS.most);
    return both(
      bounded('Reps', String(outside ?? reps[0]), REPS),
      bounded('Times through', steps[2], SETS),
      (_, times) => ({
        kind: 'steps',
        reps,
        times,
      }),
    );
  }
  const every = new RegExp(
    `^(\\d{1,6})\\s*${MINUTE}\\s*:\\s*(\\d{1,6})(?:\\s*reps?)?\\s*every\\s*(?:minute|(\\d{1,6})\\s*${SECOND}|(\\d{1,6})\\s*${MINUTE})$`,
  ).exec(text);
  if (!every?.[1] || !every[2]) return undefined;
  const everySeconds = every[3] ? Number(every[3]) : Number(every[4] ?? 1) * 60;
  const amounts = both(bounded('Minutes', every[1], MINUTES), bounded('Reps', every[2], REPS), (minutes, reps) => ({
    minutes,
    reps,
  }));
  const gap = bounded('Seconds', String(everySeconds), { least: 5, most: 600 });
  return both(amounts, gap, ({ minutes, reps }, seconds) => ({ kind: 'every', minutes, reps, everySeconds: seconds }));
}

function both<A, B, Joined = Dose>(a: Read<A>, b: Read<B>, join: (a: A, b: B) => Joined): Read<Joined> {
  if (!a.ok) return a;
  return b.ok ? good(join(a.value, b.value)) : b;
}

/** A bare amount outside a circuit: it lacks its sets, or is no dose at all. */
function refuseBare(text: string, whole: Part): Read<Dose> {
  const bare = readAmount(whole, 1);
  if (bare.ok) return refuse({ code: 'dose-without-sets', data: { text: text.trim() } }, text);
  const unreadable = bare.faults.some(({ finding }) => finding.code === 'dose-unreadable');
  return unreadable ? refuse({ code: 'dose-unreadable', data: { text: text.trim() } }, text) : bare;
}
