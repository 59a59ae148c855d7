/** The page that stands in a client's folder while their booklet is withheld: what the coach must decide. */
import type { Problem } from '../model/problem.js';
import { sayProblemReport } from './show-problem.js';

/** `problems` are the client's own, in order. */
export function sayWithheld(problems: readonly Problem[], sourceOf: (file: string) => string | undefined): string {
  const opening = problems.some((problem) => problem.unsafe === true)
    ? 'This booklet is withdrawn: do not use an earlier copy until the coach has looked at what follows.'
    : 'This booklet is withheld until what follows is settled.';
  return `${opening}\n\n${sayProblemReport(problems, sourceOf).trimEnd()}\n`;
}
