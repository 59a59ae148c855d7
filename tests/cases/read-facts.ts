/** Facts of a case's client and programme, one a line. */
import {
  type Client,
  CONDITIONS,
  type Health,
  MEDICINES,
  PREGNANCY_ABSOLUTE,
  PREGNANCY_RELATIVE,
  type Screening,
  type Test,
} from '../../src/model/client.js';
import type { Day, Weekday } from '../../src/model/day.js';
import { BODY_PARTS, type Exercise, PATTERNS, QUALITIES } from '../../src/model/exercise.js';
import type { DoneSession } from '../../src/model/history.js';
import { kitItemId, rowId, sessionId } from '../../src/model/identity.js';
import type { KitItem, LoadKind, ThingKind } from '../../src/model/kit.js';
import { ALARM_SIGNS, type PainReport } from '../../src/model/log.js';
import type { Programme } from '../../src/model/programme.js';
import type { Mass } from '../../src/model/quantity.js';
import { PLACE } from '../engine/generate-exercises.js';
import { aCaution, aSignOff, aTest, kg, on } from '../engine/make-block.js';
import { alike, aMarkedRow, aSessionDone } from '../engine/make-history.js';
import { fail, oneOf, slugOf } from './read-library.js';

type Open<Whole> = { -readonly [Name in keyof Whole]?: Whole[Name] };

export interface Facts {
  today: Day;
  /** Nobody asked the screening questions. */
  unasked: boolean;
  readonly client: Open<Client>;
  readonly programme: Open<Programme>;
  /** What came back, in the order written. */
  readonly done?: DoneSession[];
}

type Reader = (value: string, facts: Facts, exercises: readonly Exercise[]) => void;

const list = (text: string): readonly string[] => text.split(',').map((part) => part.trim());
const WEEKDAYS = ['mon', 'tue', 'wed', 'thu', 'fri', 'sat', 'sun'];

const READERS: Readonly<Record<string, Reader>> = {
  source: () => undefined,
  reading: () => undefined,
  today: (value, facts) => {
    facts.today = on(value);
  },
  starts: (value, { client }) => {
    client.starts = on(value);
  },
  born: (value, { client }) => {
    client.birthYear = Number(value);
  },
  experience: (value, { client }) => {
    const [experience, first] = list(value);
    client.experience = oneOf(['novice', 'trained'] as const, experience);
    if (first === 'first block') client.blocksBefore = 0;
  },
  days: (value, { client }) => {
    client.days = list(value).map((name) => weekday(WEEKDAYS.indexOf(name) + 1));
  },
  minutes: (value, { client }) => {
    client.minutes = Number(value);
  },
  'body mass': (value, { client }) => {
    client.bodyMass = { mass: massOf(value) };
  },
  kit: (value, { client }) => {
    const kit = value.split(';').flatMap((part) => readKit(part.trim()));
    client.kit = kit.map((item, index) => ({ ...item, id: kitItemId(`${item.kind}-${index + 1}`) }));
  },
  'sign-off': (value, { client }, exercises) => {
    const [name, upTo = '', date = ''] = list(value);
    const signOff = aSignOff(known(name, exercises), { upTo: massOf(upTo.replace('up to ', '')), date: on(date) });
    client.signOffs = [...(client.signOffs ?? []), signOff];
  },
  test: (value, { client }, exercises) => {
    client.tests = [...(client.tests ?? []), readTest(value, exercises)];
  },
  marked: (value, facts, exercises) => {
    facts.done?.push(readMark(value, exercises));
  },
  cleared: (value, { client }) => {
    const means = { kind: 'cleared' } as const;
    const cleared = { date: on(value), side: 'both', seen: 'cleared', means, place: PLACE } as const;
    client.observations = [...(client.observations ?? []), cleared];
  },
  'main bell': (value, { client }) => {
    const [, pattern, mass] = /^(\w+) (.+)$/.exec(value) ?? fail(value);
    const bell = { pattern: oneOf(PATTERNS, pattern), mass: massOf(mass ?? ''), place: PLACE };
    client.mainBells = [...(client.mainBells ?? []), bell];
  },
  caution: (value, { client }) => {
    client.cautions = [...(client.cautions ?? []), readCaution(value)];
  },
  medicines: (value, facts) => health(facts, { medicines: list(value).map((one) => oneOf(MEDICINES, one)) }),
  conditions: (value, facts) => health(facts, { conditions: list(value).map((one) => oneOf(CONDITIONS, one)) }),
  falls: (value, facts) => health(facts, { falls: Number(value) }),
  'blood pressure': (value, facts) => {
    const [figures = '', date = '', cuff] = list(value);
    const [systolic = 0, diastolic = 0] = figures.split('/').map(Number);
    health(facts, {
      bloodPressure: { systolic, diastolic, date: on(date), cuff: cuff === 'cuff at home', place: PLACE },
    });
  },
  pregnancy: (value, facts) => {
    const [, due = '', conditions] = /^due (\S+?)(?:; with (.+))?$/.exec(value) ?? fail(value);
    const known = [...PREGNANCY_ABSOLUTE, ...PREGNANCY_RELATIVE];
    const named = conditions === undefined ? [] : list(conditions).map((one) => oneOf(known, one));
    health(facts, { pregnancy: { due: on(due), conditions: named, place: PLACE } });
  },
  birth: (value, facts) => {
    const [date = '', by, seen] = list(value);
    const checked = seen === undefined ? {} : { checked: on(seen.replace('seen ', '')) };
    health(facts, {
      birth: { date: on(date), by: oneOf(['vaginal', 'caesarean'] as const, by), ...checked, place: PLACE },
    });
  },
  break: (value, { client }) => {
    const [, from = '', until = '', cause] = /^(\S+) to (\S+), (\w+)$/.exec(value) ?? fail(value);
    const one = {
      from: on(from),
      until: on(until),
      cause: oneOf(['ill', 'away', 'hurt'] as const, cause),
      place: PLACE,
    };
    client.breaks = [...(client.breaks ?? []), one];
  },
  screening: (value, facts) => {
    if (value === 'none') facts.unasked = true;
    else facts.client.screening = readScreening(value);
  },
  clearance: (value, { client }) => {
    const [by = '', date = '', ...rest] = list(value);
    const until = rest.find((one) => one.startsWith('until '))?.slice(6);
    const level = rest.find((one) => one.startsWith('for '))?.slice(4);
    client.clearance = {
      by,
      date: on(date),
      ...(until === undefined ? {} : { until: on(until) }),
      for: oneOf(['moderate', 'vigorous'] as const, level),
    };
  },
  'never cut': (value, { programme }) => {
    programme.neverCut = list(value).map((name) => rowId(slugOf(name)));
  },
  'cut first': (value, { programme }) => {
    programme.cutFirst = list(value).map((name) => rowId(slugOf(name)));
  },
  tests: (value, { programme }) => {
    programme.tests = list(value).map((name) => rowId(slugOf(name)));
  },
  rotation: (value, { programme }) => {
    const [, days, order = ''] = /^(\d) days: (.+)$/.exec(value) ?? fail(value);
    programme.rotations = [{ days: Number(days), order: list(order).map((name) => sessionId(name)) }];
  },
};

const factOf = (line: string): readonly [string, string] | undefined => {
  const [, word = '', value = ''] = /^([a-z -]+): ?(.*)$/.exec(line) ?? [];
  return word in READERS ? [word, value.trim()] : undefined;
};

export const isFact = (line: string): boolean => factOf(line) !== undefined;

export function readFact(line: string, facts: Facts, exercises: readonly Exercise[]): void {
  const [word, value] = factOf(line) ?? fail(line);
  READERS[word]?.(value, facts, exercises);
}

function health({ client }: Facts, more: Health): void {
  client.health = { ...client.health, ...more };
}

const weekday = (number: number): Weekday =>
  ([1, 2, 3, 4, 5, 6, 7] as const).find((one) => one === number) ?? fail(`${number} is no weekday`);

function massOf(text: string): Mass {
  const figure = /^([\d.]+)(?: kg)?$/.exec(text.trim())?.[1];
  return figure === undefined ? fail(`${text} is no mass`) : kg(figure);
}

function known(name: string | undefined, exercises: readonly Exercise[]) {
  const id = slugOf(name ?? '');
  return exercises.some((exercise) => exercise.id === id) ? id : fail(`no exercise ${name}`);
}

function readKit(part: string): readonly KitItem[] {
  const id = kitItemId(part);
  const [, word = '', rest = ''] = /^(bells|dumbbells|bar|handles|plates|bands) (.+)$/.exec(part) ?? [];
  const kinds: Readonly<Record<string, LoadKind>> = {
    bells: 'bell',
    dumbbells: 'dumbbell',
    bar: 'bar',
    handles: 'handle',
    plates: 'plate',
  };
  const kind = kinds[word];
  if (word === 'bands') {
    return list(rest).map((label, index) => ({ id, kind: 'band', step: index + 1, label }));
  }
  if (kind !== undefined) return list(rest).map((mass) => ({ id, kind, mass: massOf(mass) }));
  const things: readonly ThingKind[] = ['bench', 'step', 'chair', 'wall', 'mat', 'box'];
  return list(part).map((thing) => ({ id, kind: oneOf(things, thing) }));
}

/** `goblet squat left 16 kg × 8, 2 left, 2026-12-10`; a load of unequal bells is what one hand holds on average. */
function readTest(value: string, exercises: readonly Exercise[]): Test {
  const [what = '', left = '', date] = list(value);
  const [, name, side, load, reps] = /^(.+?)(?: (left|right))?(?: ([\d.+ ]+) kg)? × (\d+)$/.exec(what) ?? fail(value);
  const masses = load?.split('+').map(Number);
  const figure = masses === undefined ? undefined : masses.reduce((sum, one) => sum + one, 0) / masses.length;
  return aTest(known(name, exercises), Number(reps), {
    side: side === 'left' || side === 'right' ? side : 'both',
    ...(figure === undefined ? {} : { load: kg(String(figure)) }),
    reserve: 10 * Number(/^(\d) left$/.exec(left)?.[1] ?? fail(value)),
    date: on(date ?? '2026-12-15'),
  });
}

/**
 * `goblet squat 16 kg × 8, 2 left, 2026-12-10`: three sets of one row of session A, asked for 6 to 10 with 2 left. Without
 * _left_ nothing was said of it. What hurt, `knee 4`, and a sign of alarm in its own words stand after the date.
 */
function readMark(value: string, exercises: readonly Exercise[]): DoneSession {
  const [what = '', ...rest] = list(value);
  const [, name, load, reps] = /^(.+?)(?: ([\d.]+) kg)? × (\d+)$/.exec(what) ?? fail(value);
  const left = /^(\d+) left$/.exec(rest[0] ?? '')?.[1];
  const [date, ...more] = left === undefined ? rest : rest.slice(1);
  const pain = more.map((said): PainReport => {
    const alarm = ALARM_SIGNS.find((sign) => sign === said);
    if (alarm !== undefined) return { where: 'elsewhere', degree: 0, alarm };
    const [, part, degree] = /^(.+) (\d+)$/.exec(said) ?? fail(value);
    return { where: oneOf([...BODY_PARTS, 'elsewhere'] as const, part), degree: Number(degree) };
  });
  const set = { reps: Number(reps), ...(load === undefined ? {} : { kg: Number(load) }) };
  const row = aMarkedRow(known(name, exercises), {
    sets: alike(3, set),
    pain,
    ...(left === undefined ? {} : { left: Number(left) }),
  });
  return aSessionDone(date ?? fail(value), [row]);
}

function readCaution(value: string): Client['cautions'][number] {
  const [what = '', ...rest] = value.replace(/, say ".*"$/, '').split(', ');
  const [, degree, of = '', phase] = /^(avoid|take care) (.+?)(?: at (\w+))?$/.exec(what) ?? fail(value);
  const [, part, side] = /^(.+?)(?: (left|right))?$/.exec(of) ?? fail(value);
  const dated = (word: string) => rest.find((one) => one.startsWith(`${word} `))?.slice(word.length + 1);
  const [until, review, say] = [dated('until'), dated('review'), /say "(.*)"$/.exec(value)?.[1]];
  return aCaution(oneOf([...BODY_PARTS, ...QUALITIES], part), {
    degree: oneOf(['avoid', 'take care'] as const, degree),
    side: side === 'left' || side === 'right' ? side : 'both',
    phases: phase === undefined ? [] : [phase],
    from: on(dated('from') ?? ''),
    ...(until === undefined ? {} : { until: on(until) }),
    ...(review === undefined ? {} : { review: on(review) }),
    by: dated('by') ?? 'Coach',
    ...(say === undefined ? {} : { say }),
  });
}

function readScreening(value: string): Screening {
  const parts = list(value);
  const answer = (word: string) =>
    oneOf(['yes', 'no', 'unknown'] as const, parts.find((one) => one.startsWith(`${word} `))?.slice(word.length + 1));
  return {
    date: on(parts.at(-1) ?? ''),
    regularExercise: answer('regular'),
    knownDisease: answer('disease'),
    symptoms: answer('symptoms'),
    place: PLACE,
  };
}
