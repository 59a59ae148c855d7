/**
 * The six boxes of the published pre-participation logic, every combination of answers and clearance: Riebe et al.
 * 2015, Med Sci Sports Exerc 47:2473-2479, figure 2 (its text confirmed second-hand, its inputs in PMC7059860). Two
 * branches by regular exercise, each with three boxes by known disease and by signs or symptoms; the outcome by the
 * effort meant. The full plan is taken for vigorous, the moderate plan for moderate effort.
 */
import { describe, expect, it } from 'vitest';
import type { Answer, Clearance, Client } from '../../src/model/client.js';
import { PLACE } from '../engine/generate-exercises.js';
import { on } from '../engine/make-block.js';
import { ASKED, screen } from '../engine/screen-made.js';

const answers = (regularExercise: Answer, knownDisease: Answer, symptoms: Answer): Partial<Client> => ({
  screening: { date: on('2026-12-01'), regularExercise, knownDisease, symptoms, place: PLACE },
});

const CLEARANCES: Readonly<Record<string, Clearance | undefined>> = {
  none: undefined,
  moderate: { by: 'Dr', date: on('2026-12-01'), for: 'moderate' },
  vigorous: { by: 'Dr', date: on('2026-12-01'), for: 'vigorous' },
  'vigorous, over a year ago': { by: 'Dr', date: on('2026-01-03'), for: 'vigorous' },
  'moderate, over a year ago': { by: 'Dr', date: on('2026-01-03'), for: 'moderate' },
  'vigorous, ended': { by: 'Dr', date: on('2026-06-01'), until: on('2027-01-03'), for: 'vigorous' },
};

/** `full`, `begins light`, `moderate`, or the codes that withhold. */
function outcome(client: Partial<Client>): string {
  const { withheld, standing } = screen(client);
  if (withheld.length > 0) return withheld.join(' ');
  if (standing.moderate) return 'moderate';
  return standing.begins.length > 0 ? 'begins light' : 'full';
}

type Row = readonly [Answer, Answer, Answer, Readonly<Record<keyof typeof CLEARANCES, string>>];
const ever = (said: string) => Object.fromEntries(Object.keys(CLEARANCES).map((name) => [name, said]));

const BOXES: readonly Row[] = [
  // No regular exercise, no disease: no clearance; light to moderate, may progress to vigorous.
  [
    'no',
    'no',
    'no',
    {
      ...ever('begins light'),
      moderate: 'moderate',
      'moderate, over a year ago': 'moderate',
      'vigorous, ended': 'moderate',
    },
  ],
  // No regular exercise, known disease: clearance, then light to moderate.
  [
    'no',
    'yes',
    'no',
    { ...ever('clearance-lapses'), none: 'clearance-needed', moderate: 'moderate', vigorous: 'moderate' },
  ],
  // Regular exercise, no disease: no clearance; continue moderate or vigorous.
  [
    'yes',
    'no',
    'no',
    {
      ...ever('full'),
      moderate: 'moderate',
      'moderate, over a year ago': 'moderate',
      'vigorous, ended': 'moderate',
    },
  ],
  // Regular exercise, known disease: moderate without clearance; vigorous with one of the last 12 months.
  ['yes', 'yes', 'no', { ...ever('moderate'), vigorous: 'full' }],
  // Signs or symptoms: seek clearance first, or stop and seek it. Never planned.
  ['no', 'no', 'yes', ever('symptoms')],
  ['yes', 'no', 'yes', ever('symptoms')],
  ['yes', 'yes', 'yes', ever('symptoms')],
  [
    'no',
    'yes',
    'yes',
    {
      ...ever('symptoms clearance-lapses'),
      none: 'symptoms clearance-needed',
      moderate: 'symptoms',
      vigorous: 'symptoms',
    },
  ],
];

describe('the six boxes', () => {
  const cases = BOXES.flatMap(([regular, disease, symptoms, said]) =>
    Object.keys(CLEARANCES).map((clearance) => ({ regular, disease, symptoms, clearance, said: said[clearance] })),
  );

  it.each(cases)('regular $regular, disease $disease, symptoms $symptoms, clearance $clearance: $said', (box) => {
    const clearance = CLEARANCES[box.clearance];
    const client = answers(box.regular, box.disease, box.symptoms);
    expect(outcome({ ...client, ...(clearance === undefined ? {} : { clearance }) })).toBe(box.said);
  });

  it('an answer not known withholds, whatever the others are', () => {
    const three: readonly Answer[] = ['yes', 'no', 'unknown'];
    for (const regular of three) {
      for (const disease of three) {
        for (const symptoms of three) {
          const { withheld } = screen(answers(regular, disease, symptoms));
          const unknown = [regular, disease, symptoms].includes('unknown');
          expect(withheld.includes('screening-unclear')).toBe(unknown);
        }
      }
    }
  });

  it('metabolic disease on file is known disease, whatever was answered', () => {
    for (const health of [{ conditions: ['diabetes'] }, { medicines: ['lowers blood sugar'] }] as const) {
      const client = { health: { ...ASKED, ...health } };
      expect(outcome({ ...answers('no', 'no', 'no'), ...client })).toBe('clearance-needed');
      expect(outcome({ ...answers('yes', 'no', 'no'), ...client })).toBe('moderate');
    }
    // Risk factors do not count.
    const risk = { health: { ...ASKED, medicines: ['lowers blood pressure', 'slows the heart', 'other'] } } as const;
    expect(outcome({ ...answers('no', 'no', 'no'), ...risk })).not.toContain('clearance-needed');
  });
});

describe('a clearance of the last 12 months', () => {
  const cleared = (date: string, until?: string): Partial<Client> => ({
    ...answers('yes', 'yes', 'no'),
    clearance: { by: 'Dr', date: on(date), for: 'vigorous', ...(until === undefined ? {} : { until: on(until) }) },
  });
  const lastDay = (client: Partial<Client>) => screen(client).standing.lastDay?.day;

  // 365 days before the last training day, 2027-02-08, and before the first, 2027-01-04.
  it.each([
    ['2026-02-08', undefined, 'full'],
    ['2026-02-07', '2027-02-07', 'full'],
    ['2026-01-04', '2027-01-04', 'full'],
    ['2026-01-03', undefined, 'moderate'],
  ])('given on %s it ends on %s: %s', (date, ends, said) => {
    expect(outcome(cleared(date))).toBe(said);
    expect(lastDay(cleared(date))).toBe(ends === undefined ? undefined : on(ends));
  });

  it.each([
    ['2027-02-08', undefined, 'full'],
    ['2027-02-07', '2027-02-07', 'full'],
    ['2027-01-04', '2027-01-04', 'full'],
    ['2027-01-03', undefined, 'moderate'],
  ])('named to hold until %s it ends on %s: %s', (until, ends, said) => {
    expect(outcome(cleared('2026-12-01', until))).toBe(said);
    expect(lastDay(cleared('2026-12-01', until))).toBe(ends === undefined ? undefined : on(ends));
  });

  it('the coach is warned, and the client told from a fortnight before', () => {
    const { problems, told } = screen(cleared('2026-12-01', '2027-01-25'));
    expect(problems).toMatchObject([
      { code: 'clearance-lapses', severity: 'warning', data: { until: '2027-01-25', blockEnds: '2027-02-08' } },
    ]);
    // From 11 January on, a fortnight before the 25th: three sessions, the first and the last on those days.
    const forClient = told.filter(({ audience }) => audience === 'client');
    expect(forClient).toMatchObject([{ rule: 'clearance-warned', session: 'A', weeks: [2, 3, 4] }]);
    expect(forClient[0]?.reason.inputs).toEqual([{ name: 'last day', value: '2027-01-25', unit: '' }]);
  });

  it('is unsafe once it is over, or was needed and never given', () => {
    const unsafe = (client: Partial<Client>) =>
      screen(client).problems.flatMap(({ code, unsafe: no }) => (no ? [code] : []));
    expect(unsafe({ ...cleared('2026-12-01', '2027-01-03'), ...answers('no', 'yes', 'no') })).toEqual([
      'clearance-lapses',
    ]);
    expect(unsafe(cleared('2026-12-01', '2027-01-30'))).toEqual([]);
    expect(unsafe(answers('no', 'yes', 'no'))).toEqual(['clearance-needed']);
    // Of a moderate plan is spoken only where there is a plan.
    expect(screen(answers('no', 'yes', 'no')).problems).toHaveLength(1);
    expect(screen(answers('yes', 'yes', 'no')).problems).toMatchObject([{ code: 'moderate-only', severity: 'advice' }]);
    expect(unsafe(answers('yes', 'no', 'yes'))).toEqual(['symptoms']);
  });
});

describe('moderate in numbers', () => {
  it('leaves 4 reps: RPE 5 to 6 is 4 to 6 in reserve (Zourdos et al. 2016, table; whole numbers confirmed)', () => {
    const { standing, told } = screen(answers('yes', 'yes', 'no'));
    expect(standing.floor?.reserve).toBe(40);
    expect(standing.talk).toBe('sentences');
    expect(standing.lastDay).toBeNull();
    expect(told.filter(({ audience }) => audience === 'client').map(({ rule }) => rule)).toEqual(['talk-moderate']);
  });

  it('a full plan has no floor of its own here, and breath is left to the row', () => {
    const { standing } = screen(answers('yes', 'no', 'no'));
    expect(standing).toMatchObject({ moderate: false, moderateBecause: [], floor: null, talk: null, steady: false });
  });
});
