/** English, British: what stands on paper alone. */
import type { PaperWords } from './paper-words.js';

export const englishPaper: PaperWords = {
  code: 'This booklet on the phone',
  codeWithoutKey: 'On a phone that has opened this booklet before',
  strokeAWeek: 'One stroke for each week done',
  marks: {
    'to do': 'a short foot',
    done: 'a full stroke',
    easier: 'a full stroke with an e beneath',
    'left out': 'a short foot with a bar over it',
    extra: 'a full stroke with a plus sign beneath',
  },
  sets: (count, eachSide) => `${count} ${count === 1 ? 'set' : 'sets'}${eachSide ? ' each side' : ''}`,
};
