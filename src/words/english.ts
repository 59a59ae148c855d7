/** English, British. The first language, and the one spoken where a client's own has no catalogue. */
import type { Catalogue } from './catalogue.js';
import { englishBooklet } from './english-booklet.js';
import { englishChanges } from './english-changes.js';
import { englishDrawing } from './english-drawing.js';
import { englishDates, englishDoses, englishLoads, englishNumbers, englishSides } from './english-figures.js';
import { englishHandOver } from './english-hand-over.js';
import { englishPage } from './english-page.js';
import { englishPaper } from './english-paper.js';
import { englishReasonsCare } from './english-reasons-care.js';
import { englishReasonsWork } from './english-reasons-work.js';
import { englishSeal } from './english-seal.js';
import { englishCauses, englishHarderCauses, englishSets } from './english-sets.js';

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
  numbers: englishNumbers,
  dates: englishDates,
  sides: englishSides,
  loads: englishLoads,
  doses: englishDoses,
  sets: englishSets,
  booklet: englishBooklet,
  changes: englishChanges,
  causes: englishCauses,
  harderCauses: englishHarderCauses,
  reasons: { ...englishReasonsWork, ...englishReasonsCare },
  page: englishPage,
  drawing: englishDrawing,
  seal: englishSeal,
  paper: englishPaper,
  handOver: englishHandOver,
};
