/** Easier versions that are counted otherwise than their row: silent where all is well, and aloud on a fault planted for it. */
import { expect, it } from 'vitest';
import { auditEasierDoses } from './audit-easier.js';
import { changed, itemOf, planOf } from './plan-of-case.js';

const ROW = 'rpe-row';
/** The first easier exercise of the first row, as one of another way of working; the row as one too. */
function found(
  way: string,
  own: string,
  set: { readonly reps?: number; readonly seconds?: number },
  timed: readonly { readonly exercise: string; readonly longest: number }[] = [],
): readonly string[] {
  const plan = planOf(ROW);
  const item = itemOf(plan, 'straight');
  const easier = item.easier.find(({ exercise }) => exercise?.includes('#') === false) ?? expect.fail('nothing easier');
  const id = easier.exercise ?? '';
  item.way = own;
  easier.sets = easier.sets.map(({ reps: _, seconds: __, ...rest }) => ({ ...rest, ...set }));
  const rows = timed.map(({ longest }) => ({ exercise: id, longest }));
  return auditEasierDoses(plan, changed(id, { way }), rows).filter((text) => text.startsWith(`${item.id}: `));
}

it('finds nothing in a plan as it is', () => {
  expect(auditEasierDoses(planOf(ROW), changed('', {}), [])).toEqual([]);
});

it('sees a hold longer than the default, and than the programme asks of it', () => {
  const asked = [{ exercise: '', longest: 30 }];
  expect(found('hold', 'strength', { seconds: 10 })).toEqual([]);
  expect(found('hold', 'strength', { seconds: 11 }).join()).toMatch(/held for 11 s, and nothing asks more than 10 s/);
  expect(found('hold', 'strength', { seconds: 30 }, asked)).toEqual([]);
  expect(found('hold', 'strength', { seconds: 31 }, asked).join()).toMatch(/nothing asks more than 30 s of it/);
  expect(found('hold', 'strength', { reps: 5 }).join()).toMatch(/a hold counted in reps/);
});

it('sees reps told as seconds', () => {
  expect(found('bodyweight', 'hold', { reps: 5 })).toEqual([]);
  for (const own of ['hold', 'conditioning', 'strength']) {
    expect(found('bodyweight', own, { seconds: 5 }).join()).toMatch(/counted in reps, and asked for 5 s/);
  }
});
