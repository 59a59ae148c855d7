/** The coach's part of English. */
import type { CoachWords } from './coach-words.js';
import { englishRows } from './english-rows.js';
import { englishTellings, englishWalk } from './english-walk.js';
import { englishAudit } from './rules/audit.js';
import { englishHistory } from './rules/history.js';
import { englishLadder } from './rules/ladder.js';
import { englishReview } from './rules/review.js';
import { englishScreening } from './rules/screening.js';
import { englishSession } from './rules/sessions.js';
import { englishVersion } from './rules/versions.js';
import { NO_BREAK } from './spacing.js';

export const englishCoach: CoachWords = {
  reasons: {
    walk: englishWalk,
    block: {
      ...englishRows,
      ...englishAudit,
      ...englishHistory,
      ...englishLadder,
      ...englishReview,
      ...englishScreening,
      ...englishSession,
      ...englishVersion,
    },
    tellings: englishTellings,
  },
  why: {
    block: (client, programme, from) => `${client}, ${programme}, from ${from}`,
    session: (week, session, date, minutes) => `Week ${week}, ${session}. ${date}, ${minutes} minutes`,
    easyWeek: 'easier week',
    row: (exercise, doses) => `${exercise}: ${doses}`,
    with: (inputs) => `with ${inputs}`,
    source: (rule, source, confidence) => `[${rule}; ${source}; ${confidence}]`,
    next: (option, predicted) =>
      predicted === '' ? `Why not ${option}?` : `Why not ${option} (${predicted} to failure)?`,
    open: 'Open: it may come next.',
    tried: 'It is tried in the first set.',
    ifEarned: 'It is taken this week, if it is earned.',
    capacity: ({ side, figure, withBody, equation, confidence }) =>
      `Taken to lift ${figure} once${side}${withBody ? ', a share of the body counted in' : ''} (${equation}, ${confidence}).`,
    sides: { left: ` with the left`, right: ` with the right`, both: '' },
    equations: { epley: 'Epley', brzycki: 'Brzycki' },
    confidence: { measured: 'measured', estimated: 'estimated', weak: 'weak' },
    trimmed: (row, sets, whole) =>
      whole
        ? `Left out for time: the ${row}.`
        : `Cut for time: ${sets}${NO_BREAK}${sets === 1 ? 'set' : 'sets'} of the ${row}.`,
    findings: 'Worth knowing',
    asks: { decide: 'To decide', look: 'Worth a look', desk: 'On the desk' },
    relaxed: (rules) => `Nothing kept to every rule; set aside here: ${rules}.`,
    overridden: (value, reason) => `Your own value, ${value}: ${reason}`,
    groups: { 'warm-up': 'Warm-up', straight: '', circuit: '', 'cool-down': 'Cool-down', test: 'Test' },
    within: (group, exercise) => `${group}, ${exercise.slice(0, 1).toLowerCase()}${exercise.slice(1)}`,
    rung: (number, of) => `Step ${number} of ${of} on the way up.`,
    testSet: (reps, load) => `${reps}${NO_BREAK}reps to failure at ${load}`,
    maxima: (set, singles) =>
      `From ${set}, published equations make a single: ${singles}. Shown only; none of them decides.`,
    away: (from, until, cause) =>
      `Away from training from ${from} to ${until}${cause === 'ill' || cause === 'hurt' ? `, ${cause}` : ''}.`,
    stops: (after, because) =>
      because === 'clearance'
        ? `Nothing is planned after ${after}: the clearance ends there.`
        : `Nothing is planned after ${after}: the baby is due.`,
  },
  changes: {
    kinds: {
      added: 'new',
      removed: 'left out',
      version: 'exercise',
      load: 'load',
      amount: 'amount',
      sets: 'sets',
      effort: 'reserve',
      tempo: 'tempo',
      rest: 'rest',
      conditions: 'what is earned or tried first',
    },
    withRest: (work, rest) => `${work}, rest ${rest}`,
    withReserve: (work, reserve) => `${work}, ${reserve} in reserve`,
    notThere: 'not there',
    whole: { block: 'Block', programme: 'Programme', dates: 'Days', sessions: 'Sessions', stops: 'Last day' },
    noDay: 'none',
    blockNumber: (block) => `block ${block}`,
  },
};
