/** Norwegian, bokmål: all that a client reads. */
import type { Catalogue } from './catalogue.js';
import { norwegianCauses, norwegianHarderCauses } from './norwegian-body.js';
import { norwegianBooklet } from './norwegian-booklet.js';
import { norwegianChanges } from './norwegian-changes.js';
import { norwegianDrawing } from './norwegian-drawing.js';
import {
  norwegianDates,
  norwegianDoses,
  norwegianLoads,
  norwegianNumbers,
  norwegianSides,
} from './norwegian-figures.js';
import { norwegianHandOver } from './norwegian-hand-over.js';
import { norwegianPage } from './norwegian-page.js';
import { norwegianPaper } from './norwegian-paper.js';
import { norwegianReasonsCare } from './norwegian-reasons-care.js';
import { norwegianReasonsWork } from './norwegian-reasons-work.js';
import { norwegianSeal } from './norwegian-seal.js';
import { norwegianSets } from './norwegian-sets.js';

export const norwegian: Catalogue = {
  language: 'nb',
  labels: {
    week: 'Uke',
    session: 'Økt',
    exercise: 'Øvelse',
    set: 'Sett',
    of: 'av',
    page: 'Side',
    stop: 'Stopp',
    easier: 'Lettere',
    why: 'Hvorfor',
    otherwise: 'Ellers',
    'first-set': 'Første sett',
    needs: 'Først',
    'easy-week': 'Lettere uke',
    done: 'gjort',
    left: 'Venstre',
    right: 'Høyre',
    contents: 'Innhold',
    'warm-up': 'Oppvarming',
    'cool-down': 'Nedtrapping',
    reserve: 'Igjen i reserve',
    rest: 'Pause',
    'you-see': 'Du ser',
    say: 'Du sier',
    'if-it-felt': 'Hvor mange gode til',
    use: 'Bruk da',
    'whole-exercise': 'Hele øvelsen',
    'whole-week': 'Hele uken',
    next: 'Neste',
    previous: 'Tilbake',
    notes: 'Notater',
    test: 'Test',
    'bad-day': 'På en dårlig dag',
  },
  numbers: norwegianNumbers,
  dates: norwegianDates,
  sides: norwegianSides,
  loads: norwegianLoads,
  doses: norwegianDoses,
  sets: norwegianSets,
  booklet: norwegianBooklet,
  changes: norwegianChanges,
  causes: norwegianCauses,
  harderCauses: norwegianHarderCauses,
  reasons: { ...norwegianReasonsWork, ...norwegianReasonsCare },
  page: norwegianPage,
  drawing: norwegianDrawing,
  seal: norwegianSeal,
  paper: norwegianPaper,
  handOver: norwegianHandOver,
};
