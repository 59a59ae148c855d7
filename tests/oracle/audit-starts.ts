/** Where each row begins: never above what the client has been seen to lift, in the row's exercise or its relative. */
import { z } from 'zod';
import { itemsByStrand, type StrandItems } from './audit-calendar.js';
import { tenthsOf } from './audit-walks.js';
import { external } from './capacity.js';
import type { PlanItem, PlanJson, PlanStrand } from './plan-json.js';

/** Grams: pounds are rounded to whole grams piece by piece. */
const ROUNDING = 10;

const ROLES = ['main-bell', 'lighter-bell', 'next-up-bell'];

const namedInput = z.looseObject({ name: z.string(), value: z.union([z.string(), z.number()]) });

export function auditStarts(plan: PlanJson): string[] {
  return itemsByStrand(plan).flatMap((one) => startFindings(plan, one));
}

function startFindings(plan: PlanJson, { strand, items }: StrandItems): string[] {
  const isBare = plan.inputs.bodyMass === null && (strand.versions[strand.start?.version ?? -1]?.share ?? 0) > 0;
  const load = startLoad(strand, isBare);
  const own = strand.versions[strand.start?.version ?? -1]?.exercise;
  if (load === undefined || own === undefined) return [];
  const source = testsOf(plan, own).length > 0 ? own : items.flatMap(({ item }) => relativesOf(item))[0];
  if (source === undefined) return [`${strand.id}: begins with ${own}, which nothing tested speaks of`];
  const tested = Math.max(...testsOf(plan, source), Number.NEGATIVE_INFINITY);
  // A bell named by its role is the coach's own word for what the client works with.
  const named = items.some(({ item }) => item.reasons.some(({ rule }) => ROLES.includes(rule)));
  if (load <= tested + ROUNDING || named) return [];
  return [`${strand.id}: begins with ${load} g, though no more than ${tested} g of ${source} was tested`];
}

function startLoad({ start, versions }: PlanStrand, isBare: boolean): number | undefined {
  const loads = versions[start?.version ?? -1]?.loads.filter(({ grams }) => grams <= (start?.load ?? -1)) ?? [];
  const last = loads.at(-1);
  if (last === undefined) return undefined;
  // Nothing counted: the load is held to as it is printed.
  return isBare ? last.grams : external(last);
}

/** External load of each test of an exercise, both hands: which is one or two of the grams tested K tells. */
function testsOf(plan: PlanJson, exercise: string): readonly number[] {
  const { inputs } = plan;
  const share = inputs.shares.find((one) => one.exercise === exercise)?.share ?? 0;
  const body = Math.floor((share * (inputs.bodyMass ?? 0)) / 1000);
  return inputs.capacities
    .filter((one) => one.exercise === exercise)
    .map(({ k, test }) => {
      const twice = (2 * test.grams + body) * (300 + tenthsOf(plan, test));
      return k === twice ? 2 * test.grams : test.grams;
    });
}

/** The relatives that a row's reasons name: there the row itself has no test. */
function relativesOf(item: PlanItem): readonly string[] {
  return item.reasons
    .filter(({ rule }) => rule === 'new-movement-lighter' || rule === 'weakest-part')
    .flatMap(({ inputs }) => inputs.map((input) => namedInput.parse(input)))
    .flatMap(({ name, value }) => (name === 'relative' || name === 'part' ? [String(value)] : []));
}
