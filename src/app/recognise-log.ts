/** Which of the three forms of a log a file is, and what stands in it. */
import { logOf, readLog } from '../content/read-log.js';
import { looksLikePaper, type Paper, readPaper } from '../content/read-paper.js';
import { looksLikeMarks, readText, type TextFault } from '../marks/read-text.js';
import type { Log } from '../model/log.js';
import type { Place } from '../model/place.js';
import { FOLDER, type Problem } from '../model/problem.js';
import type { LogProblems } from '../model/problems-log.js';

export interface Recognised {
  readonly logs: readonly Log[];
  /** A table, which needs the edition it was pencilled in. */
  readonly paper: Paper | null;
  readonly problems: readonly Problem[];
  /** For the line under a message; absent where a file is not for reading by eye. */
  readonly source?: string;
}

/** Reports `log-nothing`, `log-unreadable` and `log-cut-short`, and what is wrong in a table. */
export function recogniseLog(name: string, bytes: Uint8Array): Recognised {
  const at = (line: number): Place => ({ file: name, line, column: 1, length: 1 });
  const refuse = (problem: Problem, source?: string): Recognised => ({
    logs: [],
    paper: null,
    problems: [problem],
    ...(source === undefined ? {} : { source }),
  });
  let text: string;
  try {
    text = new TextDecoder('utf-8', { fatal: true }).decode(bytes);
  } catch {
    return refuse(problemOf('log-unreadable', { form: 'none', why: 'its letters are not in UTF-8' }, at(1)));
  }
  if (text.trim() === '') return refuse(problemOf('log-nothing', {}, at(1)));
  if (looksLikePaper(text)) {
    const { paper, problems } = readPaper(name, bytes);
    return { logs: [], paper, problems, source: text };
  }
  if (text.trimStart().startsWith('{')) {
    const log = readLog(text);
    if ('why' in log) return refuse(problemOf('log-unreadable', { form: 'json', why: log.why }, at(1)));
    return log.events.length === 0
      ? refuse(problemOf('log-nothing', {}, at(1)))
      : { logs: [log], paper: null, problems: [] };
  }
  if (!looksLikeMarks(text)) return refuse(problemOf('log-unreadable', { form: 'none', why: '' }, at(1)));
  const read = readText(text);
  if ('kind' in read) return refuse(faultOf(read, at(read.line)), text);
  const logs = read.map(logOf);
  const wrong = logs.find((log) => 'why' in log);
  if (wrong !== undefined && 'why' in wrong) {
    return refuse(problemOf('log-unreadable', { form: 'message', why: wrong.why }, at(1)));
  }
  const whole = logs.flatMap((log) => ('why' in log || log.events.length === 0 ? [] : [log]));
  return whole.length === 0
    ? refuse(problemOf('log-nothing', {}, at(1)), text)
    : { logs: whole, paper: null, problems: [] };
}

/** `looksLikeMarks` has seen a heading or an end: there is always something to say of it. */
function faultOf({ kind, found = 0, wanted = 0 }: TextFault, place: Place): Problem {
  if (kind === 'line')
    return problemOf('log-unreadable', { form: 'message', why: 'it is not as marks are written' }, place);
  if (kind === 'changed') return problemOf('log-cut-short', { missing: 'letters', found, wanted }, place);
  const missing = wanted === 0 ? 'end' : found === 0 ? 'beginning' : 'marks';
  return problemOf('log-cut-short', { missing, found, wanted }, place);
}

export function problemOf<Code extends keyof LogProblems>(
  code: Code,
  data: LogProblems[Code],
  place: Place,
  scope: Problem['scope'] = FOLDER,
): Problem {
  return { code, severity: 'error', scope, place, data } as Problem;
}
