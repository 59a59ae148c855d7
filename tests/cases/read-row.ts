/** One row of a session: an exercise, a dose in trade notation, and what else the coach asks. */
import type { BellRole, Dose, Effort } from '../../src/model/dose.js';
import { rowId } from '../../src/model/identity.js';
import type { Row } from '../../src/model/programme.js';
import type { Range } from '../../src/model/quantity.js';
import { aRow } from '../engine/make-block.js';
import { fail, slugOf } from './read-library.js';

/** @param rounds of the circuit it stands in; there the dose has no sets of its own. */
export function readRow(line: string, rounds: number | null): Row {
  const [name = '', ...rest] = line.split(': ');
  const [dose = '', ...more] = rest
    .join(': ')
    .split(';')
    .map((part) => part.trim());
  const id = slugOf(name);
  const { tempi, trials, ...row } = aRow(id, { id: rowId(id), dose: readDose(dose, rounds) });
  const slower = more.includes('slower allowed');
  return {
    ...row,
    trials: trials && !more.includes('no trials'),
    tempi: slower ? ['normal', 'slow lowering', 'slow with a pause'] : tempi,
    optional: more.includes('optional'),
    ...Object.assign({}, ...more.map(readMore)),
  };
}

function readMore(text: string): Partial<Row> {
  const rest = /^rest (\d+) s$/.exec(text)?.[1];
  if (rest !== undefined) return { restSeconds: Number(rest) };
  const bell = /^(main|lighter|next up) bell$/.exec(text)?.[1];
  if (bell === 'main' || bell === 'lighter' || bell === 'next up') return { bell: bell satisfies BellRole };
  if (text === 'no trials' || text === 'slower allowed' || text === 'optional') return {};
  return { effort: readEffort(text) };
}

function readEffort(text: string): Effort {
  if (text === 'in sentences' || text === 'in phrases')
    return { kind: 'talk', level: text === 'in phrases' ? 'phrases' : 'sentences' };
  const [, word, figure, percent] = /^(?:(reserve|RPE) ([\d.]+)|(\d+) %)$/.exec(text) ?? fail(`what is ${text}?`);
  if (percent !== undefined) return { kind: 'percent', percent: Number(percent) };
  return { kind: word === 'RPE' ? 'rpe' : 'reserve', tenths: Math.round(10 * Number(figure)) };
}

const range = (text: string): Range => {
  const [min = Number.NaN, max = min] = text.split('–').map(Number);
  return Number.isInteger(min) && Number.isInteger(max) ? { min, max } : fail(`${text} is no range`);
};

function readDose(text: string, rounds: number | null): Dose {
  const eachSide = text.endsWith(' each side');
  const bare = text.replace(/ each side$/, '');
  const every = /^(\d+) min: (\d+) every (minute|(\d+) s)$/.exec(bare);
  if (every) {
    return { kind: 'every', minutes: Number(every[1]), reps: Number(every[2]), everySeconds: Number(every[4] ?? 60) };
  }
  const next = /^(\d+) main \+ (\d+) next up$/.exec(bare);
  if (next) return { kind: 'main-next', main: Number(next[1]), next: Number(next[2]) };
  const steps = /^(\d+(?:-\d+)+) × (\d+)$/.exec(bare);
  if (steps) return { kind: 'steps', reps: (steps[1] ?? '').split('-').map(Number), times: Number(steps[2]) };
  const round = /^(\d+) rounds$/.exec(bare);
  if (round) return { kind: 'rounds', rounds: Number(round[1]) };
  const [, given, figures = '', unit] = /^(?:(\d+) × )?([\d–]+)(?: (s|m))?$/.exec(bare) ?? fail(`${text} is no dose`);
  const sets = Number(given ?? rounds ?? fail(`${text}: how many sets?`));
  if (unit === 's') return { kind: 'timed', sets, seconds: range(figures), eachSide };
  if (unit === 'm') return { kind: 'distance', sets, metres: range(figures), eachSide };
  return { kind: 'sets', sets, reps: range(figures), eachSide };
}
