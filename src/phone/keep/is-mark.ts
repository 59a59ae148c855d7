/**
 * What is kept, held to the form of a mark. What another version of this program wrote, or nobody, is passed over, where one
 * of it would else break every screen and every message; it stays where it is.
 */
import { readSetKey } from '../../model/identity.js';
import type { LogEvent } from '../../model/log.js';

type Fields = Readonly<Record<string, unknown>>;
type Form = (fields: Fields) => boolean;

/** As `src/marks/LOG.md` has them, but for their ranges. */
const ID = /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/;
const LOCAL_TIME = /^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d[+-]\d\d:\d\d$/;

const isRecord = (value: unknown): value is Fields => typeof value === 'object' && value !== null;
const isText = (value: unknown): value is string => typeof value === 'string';
const isNumber = (value: unknown): boolean => typeof value === 'number' && Number.isFinite(value);
const isLike = (form: RegExp, value: unknown): boolean => isText(value) && form.test(value);
const areTexts = (...values: readonly unknown[]): boolean => values.every(isText);

const isLoad = (load: unknown): boolean =>
  load === undefined || (isRecord(load) && areTexts(load.label, load.mode) && Array.isArray(load.pieces));

const FORMS: ReadonlyMap<unknown, Form> = new Map<LogEvent['kind'], Form>([
  ['opened', ({ occurrence, today }) => isNumber(occurrence) && isText(today)],
  [
    'set',
    ({ key, exercise, tempo, done, load }) =>
      isText(key) && readSetKey(key) !== null && areTexts(exercise, tempo, done) && isLoad(load),
  ],
  ['reserve', ({ occurrence, row, side, reps }) => isNumber(occurrence) && areTexts(row, side) && isNumber(reps)],
  [
    'pain',
    ({ occurrence, report }) =>
      isNumber(occurrence) && isRecord(report) && isText(report.where) && isNumber(report.degree),
  ],
  ['closed', ({ occurrence }) => isNumber(occurrence)],
  ['note', ({ text }) => isText(text)],
  ['void', ({ event }) => isLike(ID, event)],
]);

export const isMark = (event: unknown): event is LogEvent =>
  isRecord(event) &&
  isLike(ID, event.id) &&
  isLike(LOCAL_TIME, event.at) &&
  isNumber(event.seq) &&
  isNumber(event.edition) &&
  FORMS.get(event.kind)?.(event) === true;
