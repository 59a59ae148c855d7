/** The grammars of doses and of kit: what is written is read back to the same, and what coaches write is read as meant. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { readCircuitDose, readDose } from '../../src/content/read-dose.js';
import {
  LOAD_KEY_NAMES,
  type LoadKey,
  listKit,
  readBands,
  readLoadNeed,
  readOwned,
  readThing,
  THINGS,
} from '../../src/content/read-kit.js';
import { readListOf } from '../../src/content/read-words.js';
import { writeCircuitDose, writeDose } from '../../src/content/write-dose.js';
import { writeKit, writeLoadNeed } from '../../src/content/write-kit.js';
import type { Dose } from '../../src/model/dose.js';
import type { LoadNeed } from '../../src/model/kit.js';
import { gramsOf, type Mass } from '../../src/model/quantity.js';

const whole = (min: number, max: number) => fc.integer({ min, max });
const range = (most: number) =>
  fc.tuple(whole(1, most), whole(1, most)).map(([a, b]) => ({ min: Math.min(a, b), max: Math.max(a, b) }));
const sets = whole(1, 20);
const eachSide = fc.boolean();

type Amount = Extract<Dose, { kind: 'sets' | 'timed' | 'distance' }>;
const amount: fc.Arbitrary<Amount> = fc.oneof(
  fc.record({ kind: fc.constant('sets' as const), sets, reps: range(100), eachSide }),
  fc.record({ kind: fc.constant('timed' as const), sets, seconds: range(3600), eachSide }),
  fc.record({ kind: fc.constant('distance' as const), sets, metres: range(1000), eachSide }),
);
const dose: fc.Arbitrary<Dose> = fc.oneof(
  amount,
  fc.record({
    kind: fc.constant('every' as const),
    minutes: whole(1, 60),
    reps: whole(1, 100),
    everySeconds: whole(5, 600),
  }),
  fc.record({ kind: fc.constant('main-next' as const), main: whole(1, 100), next: whole(1, 100) }),
  fc.record({
    kind: fc.constant('steps' as const),
    reps: fc.array(whole(1, 100), { minLength: 3, maxLength: 20 }),
    times: whole(1, 20),
  }),
  fc.record({ kind: fc.constant('rounds' as const), rounds: whole(1, 20) }),
);

/** Other hands and keyboards: the same dose in other spelling. */
const spellings: readonly ((text: string) => string)[] = [
  (text) => text.replaceAll('–', '-'),
  (text) => text.replaceAll('–', '—'),
  (text) => text.replaceAll('×', 'x'),
  (text) => text.replaceAll('×', 'X'),
  (text) => text.replaceAll('×', '*'),
  (text) => text.replaceAll(' ', '\u00a0'),
  (text) => text.replaceAll(' × ', '×'),
  (text) => text.replaceAll(' ', '\t'),
  (text) => `  ${text} `,
  (text) => text.replace('each side', 'per side').replace(/ s$/, ' sec'),
  (text) => text.toUpperCase(),
];

describe('doses', () => {
  test('written and read back', () => {
    fc.assert(
      fc.property(dose, (one) => {
        expect(readDose(writeDose(one))).toEqual({ ok: true, value: one });
      }),
    );
  });

  test('however it is typed', () => {
    fc.assert(
      fc.property(dose, fc.constantFrom(...spellings), (one, respell) => {
        expect(readDose(respell(writeDose(one)))).toEqual({ ok: true, value: one });
      }),
    );
  });

  test('in a circuit the rounds are the sets', () => {
    fc.assert(
      fc.property(amount, (one) => {
        expect(readCircuitDose(one.sets)(writeCircuitDose(one))).toEqual({ ok: true, value: one });
        expect(readDose(writeCircuitDose(one)).ok).toBe(false);
        expect(readCircuitDose(one.sets)(writeDose(one)).ok).toBe(false);
      }),
    );
  });

  const reps = (min: number, max = min) => ({ min, max });
  test.each<[string, Dose]>([
    ['3 × 8–12', { kind: 'sets', sets: 3, reps: reps(8, 12), eachSide: false }],
    ['4 × 6 each side', { kind: 'sets', sets: 4, reps: reps(6), eachSide: true }],
    ['3 sets of × 8 reps', { kind: 'sets', sets: 3, reps: reps(8), eachSide: false }],
    ['4 x 6/side', { kind: 'sets', sets: 4, reps: reps(6), eachSide: true }],
    ['3 × 8 to 12', { kind: 'sets', sets: 3, reps: reps(8, 12), eachSide: false }],
    ['3 × 30 s', { kind: 'timed', sets: 3, seconds: reps(30), eachSide: false }],
    ['2 × 1 min', { kind: 'timed', sets: 2, seconds: reps(60), eachSide: false }],
    ['3 × 20–40 s each side', { kind: 'timed', sets: 3, seconds: reps(20, 40), eachSide: true }],
    ['3 × 20 m', { kind: 'distance', sets: 3, metres: reps(20), eachSide: false }],
    ['10 min: 8 every minute', { kind: 'every', minutes: 10, reps: 8, everySeconds: 60 }],
    ['10 min: 8 every 90 s', { kind: 'every', minutes: 10, reps: 8, everySeconds: 90 }],
    ['15 main + 5 next up', { kind: 'main-next', main: 15, next: 5 }],
    ['1-2-3 × 4', { kind: 'steps', reps: [1, 2, 3], times: 4 }],
    ['3 rounds', { kind: 'rounds', rounds: 3 }],
  ])('%s', (text, wanted) => {
    expect(readDose(text)).toEqual({ ok: true, value: wanted });
  });

  test.each([
    '',
    '3 ×',
    '× 8',
    '3 × 8 × 2',
    '3 × -8',
    '3 × 8 kg',
    '0 × 8',
    '3 × 0',
    'AMRAP',
    '3 × 8-',
    '3,5 × 8',
    '3 × 8;',
  ])('refused: %j', (text) => {
    const read = readDose(text);
    expect(read.ok).toBe(false);
    if (!read.ok)
      for (const { start, length } of read.faults) expect(start + length).toBeLessThanOrEqual(text.length + 1);
  });

  test('any text is read or refused, within itself', () => {
    const piece = fc.constantFrom(
      '3',
      '12',
      ' ',
      '×',
      'x',
      '–',
      '-',
      ' s',
      ' m',
      ' min',
      ':',
      ' every',
      ' each side',
      '+',
      ' main',
      'next up',
      'rounds',
      '\u0301',
    );
    fc.assert(
      fc.property(
        fc.array(piece, { maxLength: 12 }).map((pieces) => pieces.join('')),
        (text) => {
          const read = readDose(text);
          if (read.ok) expect(readDose(writeDose(read.value))).toEqual(read);
          else expect(read.faults.length).toBeGreaterThan(0);
        },
      ),
    );
  });
});

const mass: fc.Arbitrary<Mass> = fc
  .tuple(fc.constantFrom('kg' as const, 'lb' as const), whole(1, 2400))
  .map(([unit, quarters]) => {
    const figure = String(quarters / 4);
    return { grams: gramsOf(Number(figure), unit), unit, figure };
  });
const most: Readonly<Record<LoadKey, number>> = { bells: 4, dumbbells: 4, handles: 4, bars: 2, plates: 16 };
const owned = (key: LoadKey) =>
  fc.uniqueArray(fc.record({ mass, count: whole(1, most[key]) }), {
    maxLength: 5,
    selector: ({ mass: { figure, unit } }) => `${figure} ${unit}`,
  });
const kit = fc.record({
  loads: fc.record({
    bells: owned('bells'),
    dumbbells: owned('dumbbells'),
    handles: owned('handles'),
    bars: owned('bars'),
    plates: owned('plates'),
  }),
  bands: fc.uniqueArray(
    fc.record({ label: fc.constantFrom('light', 'medium', 'strong', 'blue band', 'très légère'), count: whole(1, 4) }),
    {
      maxLength: 4,
      selector: ({ label }) => label,
    },
  ),
  things: fc.uniqueArray(fc.constantFrom(...THINGS)),
});

describe('kit', () => {
  test('written and read back, with the same ids', () => {
    fc.assert(
      fc.property(kit, (home) => {
        const items = listKit(home);
        const lines = writeKit(items);
        // Every mass is written with its unit, so a file of both is read too.
        const context = { unit: 'kg', mixed: true } as const;
        const loads = Object.fromEntries(
          LOAD_KEY_NAMES.map((key) => {
            const read = readOwned(key, context)(lines[key] ?? 'none');
            expect(read.ok).toBe(true);
            return [key, read.ok ? read.value : []];
          }),
        );
        const bands = readBands(lines.bands ?? 'none');
        const things = readListOf(readThing)(lines.things ?? 'none');
        expect(listKit({ loads, bands: bands.ok ? bands.value : [], things: things.ok ? things.value : [] })).toEqual(
          items,
        );
        expect(new Set(items.map(({ id }) => id)).size).toBe(items.length);
      }),
    );
  });

  const kg = (figure: string) => ({ grams: gramsOf(Number(figure), 'kg'), unit: 'kg', figure });
  test.each([
    [
      '8, 12 ×2, 16',
      [
        ['8', 1],
        ['12', 2],
        ['16', 1],
      ],
    ],
    [
      '12x2; 16',
      [
        ['12', 2],
        ['16', 1],
      ],
    ],
    ['2 × 12 kg', [['12', 2]]],
    [
      '2,5, 12.5 kg',
      [
        ['2.5', 1],
        ['12.5', 1],
      ],
    ],
    [
      '1.25 kg ×4; 2,5 kg × 2',
      [
        ['1.25', 4],
        ['2.5', 2],
      ],
    ],
    ['2.50', [['2.5', 1]]],
  ] as const)('%s', (text, wanted) => {
    const read = readOwned('plates', { unit: 'kg', mixed: false })(text);
    expect(read).toEqual({ ok: true, value: wanted.map(([figure, count]) => ({ mass: kg(figure), count })) });
  });

  test('pounds stay pounds: 35 lb is 15,876 g and is called 35 lb', () => {
    // 35 lb = 15.87573295 kg: the international pound of 1959, as a units library gives it.
    const read = readOwned('bells', { unit: 'lb', mixed: false })('35');
    expect(read).toEqual({ ok: true, value: [{ mass: { grams: 15_876, unit: 'lb', figure: '35' }, count: 1 }] });
  });

  test.each(['8,12,16', '12 ×', '×2', '12 ×9', 'twelve', '12 kgs 5', '-12', '12 g'])('refused: %s', (text) => {
    expect(readOwned('bells', { unit: 'kg', mixed: false })(text).ok).toBe(false);
  });

  const need: fc.Arbitrary<LoadNeed> = fc.oneof(
    fc.record({
      kind: fc.constantFrom('bell' as const, 'dumbbell' as const),
      count: fc.constant(1 as const),
      unequal: fc.constant(false),
    }),
    fc.record({
      kind: fc.constantFrom('bell' as const, 'dumbbell' as const),
      count: fc.constant(2 as const),
      unequal: fc.boolean(),
    }),
    fc.constantFrom({ kind: 'bar' as const }, { kind: 'band' as const }),
  );
  test('an exercise’s load, written and read back', () => {
    fc.assert(
      fc.property(fc.array(need, { maxLength: 4 }), fc.boolean(), (load, nothing) => {
        const wanted = { load, unloaded: load.length === 0 || nothing };
        expect(readLoadNeed(writeLoadNeed(wanted))).toEqual({ ok: true, value: wanted });
      }),
    );
  });
});
