/** The page that stands in a client's folder while their booklet is withheld: what the coach must decide. */
import type { Problem } from '../model/problem.js';
import { sayProblemReport } from './show-problem.js';

/** `problems` are the client's own, in order; `kept` is the number of the edition drawn beside this page, if any. */
export function sayWithheld(
  problems: readonly Problem[],
  sourceOf: (file: string) => string | undefined,
  kept: number | null = null,
): string {
  const opening = problems.some((problem) => problem.unsafe === true)
    ? 'This booklet is withdrawn: do not use an earlier copy until the coach has looked at what follows.'
    : kept === null
      ? 'This booklet is withheld until what follows is settled.'
      : `Edition ${kept} is as it was issued; nothing newer can be planned until what follows is settled.\nIf nobody should train from it any more, withdraw it: \`chalkleaf withdraw CLIENT --why WORDS\`.`;
  return `${opening}\n\n${sayProblemReport(problems, sourceOf).trimEnd()}\n`;
}
