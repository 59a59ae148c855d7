/** What the coach is told of tests: rows that cannot be tested, and what the last chair stand test says. */
import { agesInYear, isoOfDay } from '../../model/day.js';
import type { Finding } from '../../model/plan.js';
import type { ReasonInput, Rule } from '../../model/reason.js';
import { type BlockContext, names } from '../block-context.js';
import { isOlder } from '../effort/plan-effort.js';
import { reasonOf } from '../reason-of.js';
import type { FittedRow } from '../rows/fit-rows.js';
import { CHAIR_STAND_LOW } from '../rules/chair-stand-low.js';
import { CHAIR_STAND_NORM } from '../rules/chair-stand-norm.js';
import { TEST_NOT_COUNTED } from '../rules/test-not-counted.js';
import { TEST_WAITS } from '../rules/test-waits.js';
import { yearOf } from '../screening/screen-client.js';
import { normAt } from './chair-stand-norms.js';
import { isMeasured, neverTested, testPlaces } from './test-sets.js';

export function testFindings(context: BlockContext, rows: readonly FittedRow[]): readonly Finding[] {
  return [...notCounted(context, rows), ...waiting(context, rows), ...chairStands(context)];
}

const couldBeTested = ({ planned, dose }: FittedRow): boolean => planned === 'walk' && dose.kind === 'sets';

/** Once for each reason, with the rows: why the block does not begin with their tests, and where one is then. */
function waiting(context: BlockContext, rows: readonly FittedRow[]): readonly Finding[] {
  const asked = new Set<string>(context.programme.tests);
  const never = neverTested(context);
  const waits = rows
    .filter((fitted) => asked.has(fitted.row.id) && couldBeTested(fitted) && !isMeasured(context, fitted))
    .flatMap(({ session, row }) => {
      const days = context.days.filter((one) => one.session === session.id);
      const { places, why } = testPlaces(context, days);
      if (never !== null) return [{ row: row.id, why: never, moved: '' }];
      const first = why === 'break' ? days[places[0] ?? -1] : undefined;
      return why === null ? [] : [{ row: row.id, why, moved: first === undefined ? '' : isoOfDay(first.day) }];
    });
  const keys = [...new Set(waits.map(({ why, moved }) => `${why}/${moved}`))];
  return keys.flatMap((key): readonly Finding[] => {
    const own = waits.filter(({ why, moved }) => `${why}/${moved}` === key);
    const [first] = own;
    if (first === undefined) return [];
    const inputs: ReasonInput[] = [
      { name: 'why', value: first.why, unit: '' },
      ...(first.moved === '' ? [] : [{ name: 'moved', value: first.moved, unit: '' }]),
      ...[...new Set(own.map(({ row }) => row))].map((row): ReasonInput => ({ name: 'row', value: row, unit: '' })),
    ];
    return [finding(TEST_WAITS, inputs)];
  });
}

function notCounted(context: BlockContext, rows: readonly FittedRow[]): readonly Finding[] {
  const asked = new Set<string>(context.programme.tests);
  return rows
    .filter((fitted) => asked.has(fitted.row.id) && !couldBeTested(fitted) && !isMeasured(context, fitted))
    .map(({ session, row }): Finding => {
      const reason = reasonOf(TEST_NOT_COUNTED, 'coach', [{ name: 'row', value: row.id, unit: '' }], 'measured');
      return { rule: TEST_NOT_COUNTED.id, audience: 'coach', session: session.id, row: row.id, weeks: [], reason };
    });
}

/** The latest test of each exercise that is a chair stand, at the youngest the client may then have been. */
function chairStands(context: BlockContext): readonly Finding[] {
  if (!isOlder(context)) return [];
  const { client, exercises, today, rules } = context;
  const measures = [...new Set(exercises.values())].filter(({ facts }) => facts.measure === 'chair stand');
  return measures.flatMap((exercise): readonly Finding[] => {
    const test = client.tests
      .filter(({ date, exercise: id }) => date <= today && names(context, id, exercise))
      .sort((a, b) => b.date - a.date || a.reps - b.reps)[0];
    if (test === undefined) return [];
    const norm = normAt(agesInYear(client.birthYear, yearOf(test.date)).youngest);
    const least = norm === null ? 0 : Math.min(norm.women.min, norm.men.min);
    const rule = test.reps < rules.valueOf(CHAIR_STAND_LOW) ? CHAIR_STAND_LOW : CHAIR_STAND_NORM;
    if (rule === CHAIR_STAND_NORM && test.reps >= least) return [];
    const inputs: ReasonInput[] = [
      { name: 'stands', value: test.reps, unit: '' },
      { name: 'date', value: isoOfDay(test.date), unit: '' },
      ...(norm === null ? [] : [range('women', norm.women), range('men', norm.men)]),
    ];
    return [finding(rule, inputs)];
  });
}

const range = (name: string, { min, max }: { readonly min: number; readonly max: number }): ReasonInput => {
  return { name, value: `${min} to ${max}`, unit: '' };
};

const finding = (rule: Rule, inputs: readonly ReasonInput[]): Finding => {
  return { rule: rule.id, audience: 'coach', weeks: [], reason: reasonOf(rule, 'coach', inputs, 'measured') };
};
