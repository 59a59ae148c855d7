/** English, British: what stands on paper alone. */
import type { PaperWords } from './paper-words.js';

export const englishPaper: PaperWords = {
  code: 'This booklet on the phone',
  codeWithoutKey: 'On a phone that has opened this booklet before',
  sets: (count, eachSide) => `${count} ${count === 1 ? 'set' : 'sets'}${eachSide ? ' each side' : ''}`,
};
