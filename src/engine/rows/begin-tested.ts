/** A row of which nothing is known, where an easier version was tested: what was seen goes before what is only guessed. */
import type { BlockContext } from '../block-context.js';
import { choosingIn, testedBelow } from '../versions/choose-version.js';
import { beginRow } from './begin-row.js';
import { easierMissing } from './find-easier.js';
import { type FittedRow, fitChoice, type Versions } from './fit-rows.js';
import { relativeAllows } from './from-relative.js';

/**
 * For what has only one load, the body: a feeler set with a bell begins with the lightest, but the body is never lighter.
 * The row as it is where that exercise was tested, or something passes to it that says it is well within reach; else with
 * the nearest easier version that was tested, of the same movement pattern. Where none was, the row as it is: a feeler set.
 */
export function beginTested(context: BlockContext, fitted: FittedRow, versions: Versions): FittedRow {
  const { target, choice, chain, session } = fitted;
  const own = chain.judged[chain.base];
  const version = chain.versions[chain.base];
  if (fitted.planned === 'ladder' || own === undefined || version === undefined || own.way !== null) return fitted;
  if (version.loads.some(({ grams }) => grams > 0)) return fitted;
  const choosing = choosingIn(context, session.id, versions);
  if (choosing.tested(own.exercise)) return fitted;
  const below = testedBelow(own.exercise, choosing);
  if (below.length === 0 || beginRow(context, fitted, versions).how !== 'feeler') return fitted;
  if (relativeAllows(context, fitted, own, version, versions)) return fitted;
  const placed = { session, block: fitted.block, blockIndex: fitted.blockIndex, row: fitted.written };
  for (const chosen of below) {
    const { value } = fitChoice(context, placed, { target, choice: { ...choice, chosen, untested: own } }, versions);
    if (value === null || value.planned === 'ladder') continue;
    const { how, trust } = beginRow(context, value, versions);
    const known = how === 'tested' || trust.kind === 'nothing';
    if (known && easierMissing(context, value, versions).length === 0) return value;
  }
  return fitted;
}
