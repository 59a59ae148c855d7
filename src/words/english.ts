/** English, British. The first language, and the one spoken where a client's own has no catalogue. */
import type { Catalogue } from './catalogue.js';
import { englishBooklet } from './english-booklet.js';
import { englishChanges } from './english-changes.js';
import { englishRows } from './english-rows.js';
import {
  englishCauses,
  englishDates,
  englishDoses,
  englishHarderCauses,
  englishLoads,
  englishSets,
} from './english-sets.js';
import { englishTellings, englishWalk } from './english-walk.js';
import { englishAudit } from './rules/audit.js';
import { englishHistory } from './rules/history.js';
import { englishLadder } from './rules/ladder.js';
import { englishReview } from './rules/review.js';
import { englishScreening } from './rules/screening.js';
import { englishSession } from './rules/sessions.js';
import { englishVersion } from './rules/versions.js';
import { NO_BREAK } from './spacing.js';

export const english: Catalogue = {
  language: 'en-GB',
  labels: {
    week: 'Week',
    session: 'Session',
    exercise: 'Exercise',
    set: 'Set',
    of: 'of',
    page: 'Page',
    stop: 'Stop',
    easier: 'Easier',
    why: 'Why this',
    otherwise: 'Otherwise',
    'first-set': 'First set',
    needs: 'First',
    'easy-week': 'Easier week',
    'to-do': 'to do',
    done: 'done',
    left: 'Left',
    right: 'Right',
    contents: 'Contents',
    'warm-up': 'Warm-up',
    'cool-down': 'Cool-down',
    reserve: 'Left in reserve',
    rest: 'Rest',
    'you-see': 'You see',
    say: 'You say',
    'if-it-felt': 'How many more good ones',
    use: 'Then use',
    'whole-exercise': 'The whole exercise',
    'whole-week': 'The whole week',
    next: 'Next',
    previous: 'Back',
    notes: 'Notes',
    test: 'Test',
    'bad-day': 'On a bad day',
  },
  dates: englishDates,
  sides: { left: 'left', right: 'right', both: 'both' },
  loads: englishLoads,
  doses: englishDoses,
  sets: englishSets,
  booklet: englishBooklet,
  changes: englishChanges,
  causes: englishCauses,
  harderCauses: englishHarderCauses,
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
};
