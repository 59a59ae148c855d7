/** Norwegian bokmål for how a set is to be done. */
import type { MannerWords } from './catalogue.js';

export const norwegianManner: MannerWords = {
  effort: (least, most) =>
    least === most ? `Stopp med ${least} i reserve.` : `Stopp med ${least} til ${most} i reserve.`,
  effortAtLeast: (least) => `Stopp med minst ${least} i reserve.`,
  talk: {
    sentences: 'Du kan fortsatt snakke i hele setninger.',
    phrases: 'Du kan fortsatt si noen ord om gangen.',
  },
  tempo: {
    normal: '',
    'slow lowering': 'sakte på vei ned',
    'slow with a pause': 'sakte på vei ned, så en pause',
  },
  optional: 'Bare hvis du er opplagt.',
};
