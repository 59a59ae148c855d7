/** Every problem in a coach's words: what is wrong, and what to write instead. Each layer's sentences are in `problems/`. */
import type { ProblemCode, ProblemTable } from '../model/problem.js';
import { adviceSayings } from './problems/content-advice.js';
import { bodySayings } from './problems/content-body.js';
import { fileSayings } from './problems/content-file.js';
import { logSayings } from './problems/log.js';
import { outputSayings } from './problems/output.js';
import { pictureSayings } from './problems/pictures.js';
import { planSayings } from './problems/plan.js';
import { poseSayings } from './problems/poses.js';
import { publishSayings } from './problems/publish.js';
import type { Said, Sayings } from './problems/said.js';

const SAYINGS: Sayings<ProblemTable> = {
  ...fileSayings,
  ...bodySayings,
  ...adviceSayings,
  ...poseSayings,
  ...pictureSayings,
  ...planSayings,
  ...logSayings,
  ...outputSayings,
  ...publishSayings,
};

/** `message` is a whole sentence; `hint` completes *write instead: …* and may be empty. */
export function sayProblem<Code extends ProblemCode>(problem: {
  readonly code: Code;
  readonly data: ProblemTable[Code];
}): Said {
  return SAYINGS[problem.code](problem.data);
}
