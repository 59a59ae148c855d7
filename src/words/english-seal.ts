/** English for the page that a sealed booklet is opened on. */
import type { SealWords } from './seal-words.js';

export const englishSeal: SealWords = {
  unopened: [
    'This booklet is sealed, so that only you can read it.',
    'Open the link your coach sent you, in a browser that allows scripts, with a network. Or ask your coach for it on paper.',
  ],
  askLink: 'Open the link your coach sent you. Or put it in here.',
  linkLabel: 'The link',
  askWords: 'Type the words your coach gave you.',
  wordsLabel: 'The words, in order',
  ready: 'Your booklet is sealed, so that only you can read it.',
  openKept: 'Open, and remember on this phone',
  openOnce: 'Open this once',
  keptNote: 'Remember it only on a phone that is yours.',
  opening: 'Opening …',
  fault: {
    'wrong words': 'These words do not open it. Look at each word, and try again.',
    'wrong link': 'This link does not open it. It may not be whole, or not the latest: ask your coach.',
    damaged:
      'The booklet did not arrive as it was sent. Nothing of it is shown. Try again with a network; if that changes nothing, tell your coach.',
    newer: 'The booklet is newer than this page. Close the page, and open it again with a network.',
    older: 'The booklet is older than this page can read. Ask your coach to send it anew.',
    'not secure': 'A sealed booklet opens only at an address that begins with https. Tell your coach.',
    'not kept': 'This browser could not remember it. Next time it will ask again.',
  },
  paper: 'The booklet on paper (PDF)',
  calendar: 'Your sessions, for a calendar',
  notHad: 'That did not arrive. Try again with a network.',
  forget: 'Forget on this phone',
  forgetAsk: 'This takes the booklet and your marks off this phone for good. Marks you have not sent are lost.',
  forgetYes: 'Yes, forget them',
  forgetNo: 'No, keep them',
};
