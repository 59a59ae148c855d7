/** Norwegian bokmål for the web pages of a booklet. */
import { counted } from './norwegian-figures.js';
import type { PageWords } from './page-words.js';

const sets = (count: number): string => counted(count, 'sett', 'sett');

export const norwegianPage: PageWords = {
  shellTitle: 'Heftet ditt',
  shellOpen: 'Åpne heftet ditt',
  shellLoading: 'Heftet ditt er ett trykk unna.',
  readingCopy: 'Dette er til å lese i, og kan ikke ta vare på strekene dine. Bruk blyant på papir.',
  easierToday: 'Lettere i dag',
  somethingHurts: 'Noe gjør vondt',
  toContents: 'Innhold',
  alsoToday: 'I denne økten',
  weekInList: (week, easy) => `Uke ${week}${easy ? ', lettere uke' : ''}`,
  inWeek: (session, week) => `${session}, uke ${week}`,
  ifEarned: 'Bare hvis fortjent',
  counted: (count, first) =>
    first === undefined ? sets(count) : `${sets(count)} per side, ${first.toLowerCase()} først`,
  inSets: (dose, count, eachSide) => `${dose}, ${sets(count)}${eachSide ? ' per side' : ''}`,
  before: { trial: (dose) => `prøv ${dose}`, feeler: (dose) => `følesett ${dose}`, test: (dose) => dose },
  ofSide: (side, dose) => `${side}: ${dose}`,
  leadsTo: (before, work) => `${before}, så ${work}`,
  feeler: 'Følesett',
  painScale: 'Smerteskalaen',
  backTo: 'Tilbake til',
};
