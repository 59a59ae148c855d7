/** Norwegian, bokmål: what stands on paper alone. */
import type { PaperWords } from './paper-words.js';

export const norwegianPaper: PaperWords = {
  code: 'Dette heftet på telefonen',
  codeWithoutKey: 'På en telefon som har åpnet dette heftet før',
  sets: (count, eachSide) => `${count} sett${eachSide ? ' på hver side' : ''}`,
};
