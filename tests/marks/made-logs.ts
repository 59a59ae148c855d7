/** Logs nobody kept, of every kind of mark, with any words in their notes. */
import fc from 'fast-check';
import { BODY_PARTS } from '../../src/model/exercise.js';
import { bookletId, exerciseId, kitItemId, rowId, setKey } from '../../src/model/identity.js';
import { ALARM_SIGNS, type Log, type LogEvent } from '../../src/model/log.js';
import type { PlanLoad } from '../../src/model/plan.js';
import { gramsOf } from '../../src/model/quantity.js';

const uuid = fc.uuid({ version: [1, 2, 3, 4, 5, 6, 7, 8] });
const name = fc.stringMatching(/^[a-z0-9]{1,6}(-[a-z0-9]{1,6}){0,3}$/).filter((text) => text.length <= 40);
const side = fc.constantFrom('left' as const, 'right' as const);
const sideOrBoth = fc.constantFrom('left' as const, 'right' as const, 'both' as const);
const occurrence = fc.integer({ min: 1, max: 40 });
const two = (most: number) => fc.integer({ min: 0, max: most }).map((n) => String(n).padStart(2, '0'));
const DAYS = ['2027-01-04', '2028-02-29', '2027-03-28', '2027-12-31', '2000-02-29'];

const localTime = fc
  .record({
    day: fc.constantFrom(...DAYS),
    clock: fc.tuple(two(23), two(59), two(59)),
    offset: fc.tuple(fc.constantFrom('+', '-'), two(14), fc.constantFrom('00', '30', '45')),
  })
  .map(({ day, clock, offset: [sign, hours, minutes] }) => `${day}T${clock.join(':')}${sign}${hours}:${minutes}`);

/** Words of every sort that a thumb, another alphabet or a broken program makes. */
export const anyWords = fc
  .oneof(
    fc.string({ unit: 'grapheme', minLength: 1, maxLength: 60 }),
    fc.string({ unit: 'binary', minLength: 1, maxLength: 60 }),
    fc.string({
      unit: fc.constantFrom(
        ' ',
        '\n',
        '\u00a0',
        '\u2019',
        '“',
        '"',
        "'",
        '\\',
        ';',
        '#',
        '>',
        '…',
        'é',
        'e\u0301',
        '7.',
        '×',
        '\ud83d',
        '👩‍🦰',
        '.',
        'End: 3 marks, check 00000000',
      ),
      minLength: 1,
      maxLength: 20,
    }),
  )
  .filter((text) => text.length > 0 && text.length <= 400);

const pieceId = fc.oneof(
  fc.constantFrom('bell-16', 'plate-2.5-lb-a', 'band-1', 'bar-20', 'handle-5-lb-a'),
  anyWords.map((text) => text.slice(0, 40)),
);
const pieces = fc.array(
  fc.record({ id: pieceId.map(kitItemId), grams: fc.oneof(fc.constant(16000), fc.nat({ max: 90_000 })) }),
  { maxLength: 4 },
);
const mode = fc.constantFrom('per-hand', 'total', 'added', 'assisted', 'band' as const);
const label = anyWords.map((text) => text.slice(0, 40));
const figure = fc.constantFrom('16', '2.5', '27.5', '35', '0', '100');

const anyLoad: fc.Arbitrary<PlanLoad> = fc.oneof(
  // As plans have them.
  fc
    .record({ figure, unit: fc.constantFrom('kg' as const, 'lb' as const), pairs: fc.boolean(), mode, pieces })
    .map(({ figure: said, unit, pairs, ...rest }) => {
      const grams = gramsOf(Number(said), unit);
      return { kg: grams / 1000, grams, label: `${pairs ? '2 × ' : ''}${said} ${unit}`, ...rest };
    }),
  // And as nobody has.
  fc.record({
    kg: fc.double({ min: 0, max: 1000, noNaN: true }).map((kg) => kg + 0),
    grams: fc.nat({ max: 1_000_000 }),
    mode,
    pieces,
    label,
  }),
  fc.record({ band: label, step: fc.integer({ min: 1, max: 99 }), mode, pieces, label }),
  fc.record({ step: fc.integer({ min: 1, max: 9 }), pieces }).map(({ step, pieces: of }) => ({
    band: 'light',
    step,
    mode: 'band' as const,
    pieces: of,
    label: 'light band',
  })),
);

const head = {
  id: uuid,
  seq: fc.oneof(fc.integer({ min: 1, max: 300 }), fc.integer({ min: 1, max: Number.MAX_SAFE_INTEGER })),
  edition: fc.integer({ min: 1, max: 12 }),
  at: localTime,
};

const optional = { requiredKeys: ['id', 'seq', 'edition', 'at', 'kind', 'occurrence'] as const };
const of = <Kind extends string>(kind: Kind) => fc.constant(kind);

const key = fc
  .record({
    block: fc.integer({ min: 1, max: 30 }),
    occurrence,
    row: name.map(rowId),
    side: sideOrBoth,
    kind: fc.constantFrom('warm-up', 'work', 'feeler', 'trial', 'test', 'cool-down' as const),
    ordinal: fc.integer({ min: 1, max: 12 }),
  })
  .map(setKey);

const counted = fc.oneof(
  fc.constant({}),
  fc.record({ reps: fc.integer({ min: 0, max: 500 }) }),
  fc.record({ seconds: fc.integer({ min: 0, max: 7200 }) }),
  fc.record({ metres: fc.integer({ min: 0, max: 10_000 }) }),
);

const anySet: fc.Arbitrary<LogEvent> = fc
  .record({
    head: fc.record({ ...head, kind: of('set') }),
    key,
    exercise: fc.option(name.map(exerciseId), { nil: undefined }),
    tempo: fc.constantFrom('normal', 'slow lowering', 'slow with a pause' as const),
    done: fc.constantFrom('done', 'easier', 'left out', 'extra' as const),
    counted,
    load: fc.option(anyLoad, { nil: undefined }),
    asPlanned: fc.boolean(),
  })
  .map(({ head: first, counted: figures, load, exercise, done, ...rest }) => ({
    ...first,
    ...rest,
    done,
    exercise: exercise ?? exerciseId(rest.key.split('/')[2] ?? ''),
    ...(done === 'left out' ? {} : { ...figures, ...(load === undefined ? {} : { load }) }),
  }));

export const anyEvent: fc.Arbitrary<LogEvent> = fc.oneof(
  { weight: 4, arbitrary: anySet },
  fc.record({
    ...head,
    kind: of('opened'),
    occurrence,
    today: fc.constantFrom('as usual', 'not my best', 'something hurts', 'short of time' as const),
  }),
  fc.record({
    ...head,
    kind: of('reserve'),
    occurrence,
    row: name.map(rowId),
    side: sideOrBoth,
    reps: fc.integer({ min: 0, max: 40 }).map((halves) => halves / 2),
  }),
  fc.record(
    {
      ...head,
      kind: of('pain'),
      occurrence,
      row: name.map(rowId),
      report: fc.record(
        {
          where: fc.constantFrom(...BODY_PARTS, 'elsewhere' as const),
          degree: fc.integer({ min: 0, max: 10 }),
          side,
          worseNextMorning: fc.boolean(),
          alarm: fc.constantFrom(...ALARM_SIGNS),
        },
        { requiredKeys: ['where', 'degree'] },
      ),
    },
    { requiredKeys: [...optional.requiredKeys, 'report'] },
  ),
  fc.record(
    {
      ...head,
      kind: of('closed'),
      occurrence,
      effort: fc.integer({ min: 0, max: 10 }),
      minutes: fc.integer({ min: 0, max: 600 }),
    },
    { requiredKeys: [...optional.requiredKeys] },
  ),
  fc.record({ ...head, kind: of('note'), text: anyWords }),
  fc.record({ ...head, kind: of('void'), event: uuid }),
);

export const anyLog: fc.Arbitrary<Log> = fc.record({
  schema: fc.constant(1 as const),
  bookletId: fc.stringMatching(/^[0-9a-f]{32}$/).map(bookletId),
  device: fc.constantFrom('paper', 'phone-7f3a', 'ab'),
  events: fc.array(anyEvent, { maxLength: 12 }),
});
