/** Plans of cases to plant faults in, and the parts of them that are spoilt. */
import { expect } from 'vitest';
import { planBlock } from '../../src/engine/plan-block.js';
import { readCaseFile } from '../cases/read-case.js';
import { readLibrary } from '../cases/read-library.js';
import type { SessionFacts } from './audit-sessions.js';
import { type PlanGroup, type PlanItem, type PlanJson, type PlanSession, planSchema } from './plan-json.js';

export const exercises = readLibrary();

export function planOf(name: string): PlanJson {
  const { library, client, today } = readCaseFile(name, exercises);
  const { value } = planBlock({ library, client, today, edition: 0 });
  return planSchema.parse(JSON.parse(JSON.stringify(value)));
}

type Facts = SessionFacts['facts'];
/** The library with some facts of one exercise changed. */
export const changed = (id: string, facts: Partial<Facts>): readonly SessionFacts[] =>
  exercises.map((one) => (one.id === id ? { ...one, facts: { ...one.facts, ...facts } } : one));

export const sessionOf = (plan: PlanJson, week = 1): PlanSession =>
  plan.weeks[week - 1]?.sessions[0] ?? expect.fail('no session');
export const groupOf = (plan: PlanJson, kind: string, week = 1): PlanGroup =>
  sessionOf(plan, week).groups.find((group) => group.kind === kind) ?? expect.fail(`no ${kind}`);
export const itemOf = (plan: PlanJson, kind: string, at = 0, week = 1): PlanItem =>
  groupOf(plan, kind, week).items[at] ?? expect.fail(`no item ${at}`);
export const keyOf = (item: PlanItem): string => item.sets[0]?.key ?? expect.fail('no set');

export const bell = (id: string, grams: number) => ({
  ...{ kg: grams / 1000, grams, mode: 'total' as const, label: `${grams / 1000} kg` },
  pieces: [{ id, grams }],
});

export type Fault = readonly [
  name: string,
  found: RegExp,
  of: string,
  spoil: (plan: PlanJson) => readonly SessionFacts[] | undefined,
];
