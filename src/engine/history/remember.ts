/**
 * What came back and what was seen, before anything is planned: facts that follow from it are laid over the client's own
 * (tests, cautions, breaks, sign-offs), so that every other rule reads them as it reads those; what bears on one
 * exercise alone becomes its recall. HISTORY.md is the definition.
 */

import { day } from '../../model/day.js';
import { rememberMarks } from './marks/remember-marks.js';
import type { Recall, Remembered, Remembering } from './recall.js';
import { NO_RECALL } from './recall.js';
import { rememberSeen } from './seen/remember-seen.js';

/** Marks first, then what the coach saw, which is later wherever it is dated later. Nothing given is changed. */
export function remember(remembering: Remembering): Remembered {
  const marks = rememberMarks(remembering);
  const seen = rememberSeen({ ...remembering, client: marks.client });
  const ids = new Set([...marks.recalls.keys(), ...seen.recalls.keys()]);
  return {
    client: seen.client,
    recalls: new Map(
      [...ids].map((id) => [id, together(marks.recalls.get(id) ?? NO_RECALL, seen.recalls.get(id) ?? NO_RECALL)]),
    ),
    findings: [...marks.findings, ...seen.findings],
    problems: [...marks.problems, ...seen.problems],
  };
}

/** Of two the more careful of each; what is earned is earned by either, unless the coach saw since that it is too heavy. */
function together(marks: Recall, b: Recall): Recall {
  const a = b.lighter > 0 ? unearned(marks) : marks;
  return {
    last: a.last ?? b.last,
    lastIn: new Map([...b.lastIn, ...a.lastIn]),
    rungIn: new Map([...b.rungIn, ...a.rungIn]),
    trials: a.trials,
    leave: a.leave ?? b.leave,
    hold: longer(a.hold, b.hold),
    floor: higher(a.floor, b.floor),
    tempo: b.tempo ?? a.tempo,
    sore: a.sore ?? b.sore,
    lighter: Math.max(a.lighter, b.lighter),
    earned: a.sore !== null ? 0 : [a.earned, b.earned].includes(2) ? 2 : [a.earned, b.earned].includes(1) ? 1 : 0,
    weak: a.weak || b.weak,
    side: b.side ?? a.side,
    reasons: [...a.reasons, ...b.reasons],
  };
}

/** Whoever begins lighter for what was seen after the last marks begins with nothing earned. */
function unearned(marks: Recall): Recall {
  return {
    ...marks,
    last: marks.last === null ? null : { ...marks.last, earned: 0, tops: 0, short: true },
    lastIn: new Map([...marks.lastIn].map(([row, last]) => [row, { ...last, earned: 0, tops: 0, short: true }])),
    rungIn: new Map([...marks.rungIn].map(([row, last]) => [row, { ...last, earned: 0 }])),
    trials: [],
    earned: 0,
  };
}

function longer(a: Recall['hold'], b: Recall['hold']): Recall['hold'] {
  if (a === null || b === null) return a ?? b;
  const maxReps = [a.maxReps, b.maxReps].filter((most) => most !== null);
  const later = a.until >= b.until ? a : b;
  return { ...later, maxReps: maxReps.length === 0 ? null : Math.min(...maxReps) };
}

function higher(a: Recall['floor'], b: Recall['floor']): Recall['floor'] {
  if (a === null || b === null) return a ?? b;
  const until = day(Math.max(a.until, b.until));
  return a.reserve >= b.reserve ? { ...a, until } : { ...b, until };
}
