/** English for the web pages of a booklet. */
import type { PageWords } from './page-words.js';

const sets = (count: number): string => `${count}\u00a0${count === 1 ? 'set' : 'sets'}`;

export const englishPage: PageWords = {
  shellTitle: 'Your booklet',
  shellOpen: 'Open your booklet',
  shellLoading: 'Your booklet is one step away.',
  readingCopy: 'This copy is for reading and cannot keep your marks. Use a pencil on paper.',
  easierToday: 'Easier today',
  somethingHurts: 'Something hurts',
  toContents: 'Contents',
  alsoToday: 'In this session',
  weekInList: (week, easy) => `Week ${week}${easy ? ', easier week' : ''}`,
  inWeek: (session, week) => `${session}, week ${week}`,
  ifEarned: 'Only if earned',
  counted: (count, first) =>
    first === undefined ? sets(count) : `${sets(count)} each side, ${first.toLowerCase()} first`,
  inSets: (dose, count, eachSide) => `${dose}, ${sets(count)}${eachSide ? ' each side' : ''}`,
  before: { trial: (dose) => `try ${dose}`, feeler: (dose) => `feeler set ${dose}`, test: (dose) => dose },
  ofSide: (side, dose) => `${side}: ${dose}`,
  leadsTo: (before, work) => `${before}, then ${work}`,
  feeler: 'Feeler set',
  painScale: 'The pain scale',
  backTo: 'Back to',
};
