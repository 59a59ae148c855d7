/**
 * The reader's own schema of a log: `src/marks/LOG.md` tells it in words, `log.schema.json` beside it says the same for
 * other programs, and a test holds the two to one verdict.
 */
import { z } from 'zod';
import { BODY_PARTS } from '../model/exercise.js';
import { ALARM_SIGNS } from '../model/log.js';

/** Lower-case, of a version and variant that RFC 9562 has: one id has one spelling. */
const UUID = /^[0-9a-f]{8}-[0-9a-f]{4}-[1-8][0-9a-f]{3}-[89ab][0-9a-f]{3}-[0-9a-f]{12}$/;

/** RFC 3339, whole seconds, the local time first and its offset after it; only days the calendar has. */
const LOCAL_TIME =
  /^(?:(?:\d\d(?:0[48]|[2468][048]|[13579][26])|(?:[02468][048]|[13579][26])00)-02-29|\d{4}-(?:(?:0[13578]|1[02])-(?:0[1-9]|[12]\d|3[01])|(?:0[469]|11)-(?:0[1-9]|[12]\d|30)|02-(?:0[1-9]|1\d|2[0-8])))T(?:[01]\d|2[0-3]):[0-5]\d:[0-5]\d[+-](?:[01]\d|2[0-3]):[0-5]\d$/;

const KEY =
  /^[1-9]\d{0,3}\/[1-9]\d{0,3}\/[a-z0-9]+(?:-[a-z0-9]+)*\/(?:left|right|both)\/(?:warm-up|work|feeler|trial|test|cool-down)\/[1-9]\d{0,2}$/;

const NAME = /^[a-z0-9]+(?:-[a-z0-9]+)*$/;
const HEX_32 = /^[0-9a-f]{32}$/;

const name = (): z.ZodString => z.string().max(60).regex(NAME, 'small letters, figures and hyphens are wanted');
const whole = (least: number, most: number): z.ZodInt => z.int().min(least).max(most);
const uuid = (): z.ZodString => z.string().regex(UUID, 'a UUID in small letters is wanted');
/** Counted in code points, as JSON Schema counts. */
const words = (most: number): z.ZodString =>
  z.string().regex(new RegExp(`^[\\s\\S]{1,${most}}$`, 'u'), `1 to ${most} letters are wanted`);
/** Far more than a client ever trains in: a bound against nonsense, not a judgement. */
const occurrence = (): z.ZodInt => whole(1, 9999);
const grams = (): z.ZodInt => whole(0, 1_000_000);
const side = z.enum(['left', 'right']);
const sideOrBoth = z.enum(['left', 'right', 'both']);
const mode = z.enum(['per-hand', 'total', 'added', 'assisted', 'band']);
const pieces = z.array(z.strictObject({ id: words(80), grams: grams() })).max(60);

const load = z.union([
  z.strictObject({ kg: z.number().min(0).max(1000), grams: grams(), mode, pieces, label: words(80) }),
  z.strictObject({ band: words(80), step: whole(1, 99), mode, pieces, label: words(80) }),
]);

const head = {
  id: uuid(),
  seq: whole(1, Number.MAX_SAFE_INTEGER),
  edition: whole(1, 9999),
  at: z.string().regex(LOCAL_TIME, 'a local time with its offset is wanted, as 2027-01-04T18:30:05+01:00'),
};

const opened = z.strictObject({
  ...head,
  kind: z.literal('opened'),
  occurrence: occurrence(),
  today: z.enum(['as usual', 'not my best', 'something hurts', 'short of time']),
});

const set = z
  .strictObject({
    ...head,
    kind: z.literal('set'),
    key: z.string().regex(KEY, 'a set’s key is wanted: block/session/row/side/kind/number'),
    exercise: name(),
    tempo: z.enum(['normal', 'slow lowering', 'slow with a pause']),
    done: z.enum(['done', 'easier', 'left out', 'extra']),
    reps: whole(0, 500).optional(),
    seconds: whole(0, 7200).optional(),
    metres: whole(0, 10_000).optional(),
    load: load.optional(),
    asPlanned: z.boolean(),
  })
  .refine(
    ({ reps, seconds, metres }) => [reps, seconds, metres].filter((figure) => figure !== undefined).length <= 1,
    'a set counts one of reps, seconds and metres',
  )
  .refine(
    ({ done, reps, seconds, metres, load: held }) =>
      done !== 'left out' || [reps, seconds, metres, held].every((figure) => figure === undefined),
    'a set left out has no figures',
  );

const reserve = z.strictObject({
  ...head,
  kind: z.literal('reserve'),
  occurrence: occurrence(),
  row: name(),
  side: sideOrBoth,
  reps: z.number().min(0).max(20).multipleOf(0.5),
});

const pain = z.strictObject({
  ...head,
  kind: z.literal('pain'),
  occurrence: occurrence(),
  row: name().optional(),
  report: z.strictObject({
    where: z.enum([...BODY_PARTS, 'elsewhere']),
    degree: whole(0, 10),
    side: side.optional(),
    worseNextMorning: z.boolean().optional(),
    alarm: z.enum(ALARM_SIGNS).optional(),
  }),
});

const closed = z.strictObject({
  ...head,
  kind: z.literal('closed'),
  occurrence: occurrence(),
  effort: whole(0, 10).optional(),
  minutes: whole(0, 600).optional(),
});

const note = z.strictObject({ ...head, kind: z.literal('note'), text: words(2000) });
const taken = z.strictObject({ ...head, kind: z.literal('void'), event: uuid() });

export const logSchema = z.strictObject({
  schema: z.literal(1),
  bookletId: z.string().regex(HEX_32, 'a booklet’s number is wanted: 32 figures and letters'),
  device: z.string().max(40).regex(NAME, 'small letters, figures and hyphens are wanted'),
  events: z.array(z.discriminatedUnion('kind', [opened, set, reserve, pain, closed, note, taken])).max(100_000),
});
