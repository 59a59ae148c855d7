/** English for what goes to a client with the booklet. */
import type { HandOverWords } from './hand-over-words.js';

export const englishHandOver: HandOverWords = {
  before: ({ client, edition, from, by }) => [
    `Hello ${client},`,
    `Your booklet is ready: edition ${edition}, from ${from}. ${
      by === 'words'
        ? 'This page opens with the words I give you, and with nothing else:'
        : 'Open this link on your phone. It is yours alone, so please pass it to nobody:'
    }`,
  ],
  after: ({ coach, studio, by, emergencyNumber }) => [
    ...(by === 'link'
      ? []
      : ['It asks once for a few words. You get them from me by voice or on paper, never in a message.']),
    'Once it has opened, it also opens without a network. Marks stay on your phone until you send them.',
    `The booklet is not medical advice. If something feels wrong, stop. In an emergency ring ${emergencyNumber}.`,
    `${coach}, ${studio}`,
  ],
  slip: {
    title: 'Your booklet',
    howTo: ({ by }) =>
      ({
        link: [
          'Hold your phone’s camera over the square.',
          'Whoever has this slip can open the booklet. Keep it as you keep a key.',
        ],
        words: [
          'Hold your phone’s camera over the square, then type the words below.',
          'Whoever has this slip can open the booklet. Keep it as you keep a key.',
        ],
        both: ['Open the link from your message, then type the words below.', 'Keep this slip apart from the link.'],
      })[by],
    words: 'The words that open it',
    code: 'The link, for a camera',
  },
  calendar: {
    title: (studio, client) => `${studio}: sessions for ${client}`,
    day: (session, client) => `${session} (${client})`,
    text: (minutes, { coach }) => `${minutes} Another day is fine. Ask ${coach} if you are unsure.`,
  },
};
