/** English for how a set is to be done. */
import type { MannerWords } from './catalogue.js';

export const englishManner: MannerWords = {
  effort: (least, most) => (least === most ? `Leave ${least} in reserve.` : `Leave ${least} to ${most} in reserve.`),
  effortAtLeast: (least) => `Leave at least ${least} in reserve.`,
  talk: {
    sentences: 'You can still talk in whole sentences.',
    phrases: 'You can still say a few words at a time.',
  },
  tempo: {
    normal: '',
    'slow lowering': 'slow on the way down',
    'slow with a pause': 'slow on the way down, then a pause',
  },
  optional: 'Only if you feel fresh.',
};
