/** One evening of a client nobody is: every kind of mark once. */
import { bookletId, exerciseId, kitItemId, rowId, type SetKey } from '../../src/model/identity.js';
import type { Log, LogEvent } from '../../src/model/log.js';

const id = (n: number): string => `5f0c1e52-9d1a-4c6b-8b1e-${String(n).padStart(12, '0')}`;
const head = (seq: number, time: string) => ({ id: id(seq), seq, edition: 1, at: `2027-01-05T${time}+01:00` });
const key = (text: string): SetKey => text as SetKey;
const bell = { kg: 16, grams: 16000, mode: 'total' as const, pieces: [{ id: kitItemId('bell-16'), grams: 16000 }] };
const squat = exerciseId('goblet-squat');

const events: readonly LogEvent[] = [
  { ...head(1, '18:30:05'), kind: 'opened', occurrence: 2, today: 'not my best' },
  {
    ...head(2, '18:38:10'),
    kind: 'set',
    key: key('1/2/goblet-squat/both/work/1'),
    exercise: squat,
    tempo: 'normal',
    done: 'done',
    reps: 8,
    load: { ...bell, label: '16 kg' },
    asPlanned: true,
  },
  {
    ...head(3, '18:41:30'),
    kind: 'set',
    key: key('1/2/goblet-squat/both/work/2'),
    exercise: exerciseId('chair-squat'),
    tempo: 'slow lowering',
    done: 'easier',
    reps: 10,
    asPlanned: false,
  },
  {
    ...head(4, '18:44:00'),
    kind: 'set',
    key: key('1/2/goblet-squat/both/work/3'),
    exercise: squat,
    tempo: 'normal',
    done: 'left out',
    asPlanned: false,
  },
  { ...head(5, '18:44:20'), kind: 'reserve', occurrence: 2, row: rowId('goblet-squat'), side: 'both', reps: 1.5 },
  {
    ...head(6, '18:45:00'),
    kind: 'pain',
    occurrence: 2,
    row: rowId('goblet-squat'),
    report: { where: 'knee', degree: 3, side: 'right' },
  },
  { ...head(7, '19:04:00'), kind: 'closed', occurrence: 2, effort: 7, minutes: 34 },
  { ...head(8, '19:05:30'), kind: 'note', text: 'Knee was “odd” on the way down;\nI’ll see tomorrow.' },
  { ...head(9, '19:06:00'), kind: 'void', event: id(5) },
];

export const aTuesday: Log = {
  schema: 1,
  bookletId: bookletId('0123456789abcdef0123456789abcdef'),
  device: 'phone-7f3a',
  events,
};
