/** Where problems are gathered while a folder is read: each gets its severity, its scope and its place. */

import { isAdvice } from '../model/advice.js';
import { compareIds } from '../model/identity.js';
import type { Place } from '../model/place.js';
import type { Problem, Scope, Severity } from '../model/problem.js';
import type { ContentCode, Finding } from './read-value.js';

const WARNINGS: ReadonlySet<ContentCode> = new Set<ContentCode>([
  'unknown-file',
  'picture-unused',
  'reserve-below-floor',
  'expect-nobody',
]);

const severityOf = (code: ContentCode): Severity =>
  isAdvice(code) ? 'advice' : WARNINGS.has(code) ? 'warning' : 'error';

/** Problems of one scope. */
export interface Report {
  add(finding: Finding, place?: Place): void;
  /** Errors so far in this report. */
  errors(): number;
}

/** `keep` says which problems are kept; tests leave some out to see that somebody misses them. */
export function startReport(scope: Scope, into: Problem[], keep: (problem: Problem) => boolean): Report {
  let errors = 0;
  return {
    add(finding, place) {
      const severity = severityOf(finding.code);
      const problem: Problem = { ...finding, severity, scope, ...(place ? { place } : {}) };
      if (severity === 'error') errors += 1;
      if (keep(problem)) into.push(problem);
    },
    errors: () => errors,
  };
}

/** By file, line, column and code; problems of no file first. The same problem at the same place is said once. */
export function inOrder(problems: readonly Problem[]): readonly Problem[] {
  const sorted = [...problems].sort(
    (a, b) =>
      compareIds(a.place?.file ?? '', b.place?.file ?? '') ||
      (a.place?.line ?? 0) - (b.place?.line ?? 0) ||
      (a.place?.column ?? 0) - (b.place?.column ?? 0) ||
      compareIds(a.code, b.code) ||
      compareIds(JSON.stringify(a.data), JSON.stringify(b.data)),
  );
  return sorted.filter((problem, index) => JSON.stringify(problem) !== JSON.stringify(sorted[index - 1]));
}
