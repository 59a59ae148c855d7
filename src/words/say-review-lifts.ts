/** The parts of a review that are about lifts: row by row, reserve, what each side can lift now, and sides apart. */
import type { PlanLoad } from '../model/plan.js';
import type { Ability, Estimate, Review, RowReviewed } from '../model/review.js';
import { counted, listed } from './problems/said.js';
import { sayDate } from './say-date.js';
import { sayTenths } from './say-dose.js';
import type { Names } from './say-figures.js';
import { unbroken } from './spacing.js';
import type { Speech } from './speech.js';
import { wrapLine } from './wrap-lines.js';

const UNITS = { reps: 'reps', seconds: 's', metres: 'm' } as const;

/** Sessions in which a row is told as quiet. */
const QUIET = 3;

export function sayRows({ rows }: Review, names: Names): readonly string[] {
  if (rows.length === 0) return [];
  const isPlain = (row: RowReviewed): boolean => row.asPlanned === row.sessions;
  const plain = rows.filter(isPlain).map(({ exercise, sessions }) => `${names.exercise(exercise)} (${sessions})`);
  return [
    'Planned against done, row by row (in how many sessions)',
    ...rows
      .filter((row) => !isPlain(row))
      .flatMap((row) => wrapLine('  ', `${begun(names.exercise(row.exercise))} (${row.sessions}): ${sayRow(row)}`, 2)),
    ...(plain.length === 0 ? [] : wrapLine('  ', `As planned each time: ${listed(plain, 'and')}`, 2)),
  ];
}

function sayRow(row: RowReviewed): string {
  const ways = [
    ['as planned', row.asPlanned],
    ['more', row.more],
    ['less', row.less],
    ['easier', row.easier],
    ['left out', row.leftOut],
    ['not marked', row.unmarked],
  ] as const;
  const how = ways.flatMap(([said, often]) =>
    often === 0 ? [] : [often === row.sessions ? `${said} each time` : `${often} ${said}`],
  );
  const { planned, done, unit } = row.amount;
  const together = [
    row.sets.done === row.sets.planned ? counted(row.sets.done, 'set') : `${row.sets.done} of ${row.sets.planned} sets`,
    ...(done + planned === 0
      ? []
      : [planned === done ? `${done} ${UNITS[unit]}` : `${done} of ${planned} ${UNITS[unit]}`]),
    ...sayLoads(row.load),
  ];
  return [
    how.join(', '),
    ...(row.sets.done === 0 ? [] : [together.join(', ')]),
    ...(row.quiet >= QUIET ? [`${row.quiet} times running now`] : []),
  ].join('; ');
}

function sayLoads({ planned, done }: RowReviewed['load']): readonly string[] {
  if (done === null && planned === null) return [];
  if (planned === null || done?.label === planned.label) return [`last ${labelOf(done)}`];
  return [`last ${labelOf(done)}, planned ${labelOf(planned)}`];
}

const labelOf = (load: PlanLoad | null): string => (load === null || load.grams === 0 ? 'body alone' : load.label);
const begun = (text: string): string => text.slice(0, 1).toUpperCase() + text.slice(1);

/** Told from so much on; less is how people count. */
const APART = 5;

export function sayEffort({ effort }: Review, names: Names): readonly string[] {
  if (effort.length === 0) return [];
  const alike = effort.filter(({ difference }) => Math.abs(difference) < APART);
  const apart = effort.filter(({ difference }) => Math.abs(difference) >= APART);
  const said = ({ exercise, n }: (typeof effort)[number]): string => `${names.exercise(exercise)} (${n})`;
  return [
    'Reserve said against asked (how often it was said)',
    ...apart.flatMap((one) => {
      const { difference } = one;
      const more = difference > 0 ? 'more left than asked' : 'fewer left than asked';
      return wrapLine('  ', `${begun(said(one))}: ${sayTenths(Math.abs(difference))} ${more}, on average`, 2);
    }),
    ...(alike.length === 0 ? [] : wrapLine('  ', `About as asked: ${listed(alike.map(said), 'and')}`, 2)),
  ];
}

export function sayAbilities({ abilities }: Review, names: Names, speech: Speech): readonly string[] {
  if (abilities.length === 0) return [];
  const told = abilities.map((one) => ({ ...one, says: sayAbility(one, speech) }));
  return [
    'What they can lift now, by their marks',
    ...told.flatMap((one) => {
      const alike = told.filter(({ exercise, says }) => exercise === one.exercise && says === one.says);
      if (alike[0] !== one) return [];
      const side = alike.length > 1 ? ', each side' : one.side === 'both' ? '' : `, ${one.side}`;
      return wrapLine('  ', `${begun(names.exercise(one.exercise))}${side}: ${one.says}`, 2);
    }),
  ];
}

function sayAbility(one: Ability, speech: Speech): string {
  const { middle, first, latest, lowest, highest, n } = one;
  const at = latest.load === null ? '' : ` at ${unbroken(labelOf(latest.load))}`;
  const set = `${saySet(middle)} (${sayDate(middle.date, speech)})`;
  const reps = lowest === highest ? sayTenths(lowest) : `${sayTenths(lowest)} to ${sayTenths(highest)}`;
  const by = n === 1 ? ', from one set' : lowest === highest ? '' : `, by the last ${Math.min(n, 3)}`;
  const change = latest.at - first.at;
  const since =
    n === 1 || change === 0
      ? ''
      : `; ${sayTenths(Math.abs(change))} ${change > 0 ? 'more' : 'fewer'} than on ${sayDate(first.date, speech)}`;
  return `${set}; ${reps} in it${at}${by}${since}${middle.weak ? '; weak evidence' : ''}`;
}

/** `16 kg for 10 with 2 left`. */
function saySet({ load, tempo, reps, reserve, by }: Estimate): string {
  const slow = tempo === 'normal' ? '' : `, ${tempo}`;
  const left = by === 'unsaid' ? 'none said left' : `${sayTenths(reserve)} left`;
  return `${load === null ? counted(reps, 'rep') : `${unbroken(labelOf(load))} for ${reps}`} with ${left}${slow}`;
}

export function saySides({ sides }: Review, names: Names): readonly string[] {
  if (sides.length === 0) return [];
  return [
    'Sides apart',
    ...sides.flatMap(({ exercise, weaker, load, reps }) => {
      const other = weaker === 'left' ? 'right' : 'left';
      const at = load === null ? '' : ` at ${labelOf(load)}`;
      const figures = `${sayTenths(reps[weaker])} reps in it${at}, the ${other} ${sayTenths(reps[other])}`;
      return wrapLine('  ', `${begun(names.exercise(exercise))}: the ${weaker} has ${figures}`, 2);
    }),
  ];
}
