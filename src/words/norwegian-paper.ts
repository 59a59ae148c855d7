/** Norwegian, bokmål: what stands on paper alone. */
import type { PaperWords } from './paper-words.js';

export const norwegianPaper: PaperWords = {
  code: 'Dette heftet på telefonen',
  codeWithoutKey: 'På en telefon som har åpnet dette heftet før',
  strokeAWeek: 'Én strek for hver uke som er gjort',
  marks: {
    'to do': 'en kort fot',
    done: 'en hel strek',
    easier: 'en hel strek med en e under',
    'left out': 'en kort fot med en tverrstrek over',
    extra: 'en hel strek med et plusstegn under',
  },
  sets: (count, eachSide) => `${count} sett${eachSide ? ' på hver side' : ''}`,
};
