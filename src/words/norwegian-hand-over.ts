/** Norwegian bokmål for what goes to a client with the booklet. */
import type { HandOverWords } from './hand-over-words.js';

export const norwegianHandOver: HandOverWords = {
  before: ({ client, edition, from, by }) => [
    `Hei ${client},`,
    `Heftet ditt er klart: utgave ${edition}, fra ${from}. ${
      by === 'words'
        ? 'Denne siden åpnes med ordene du får av meg, og ikke med noe annet:'
        : 'Åpne denne lenken på telefonen. Den er bare din, så ikke gi den videre:'
    }`,
  ],
  after: ({ coach, studio, by, emergencyNumber }) => [
    ...(by === 'link'
      ? []
      : ['Den spør én gang etter noen ord. Dem får du av meg muntlig eller på papir, aldri i en melding.']),
    'Når heftet er åpnet én gang, åpnes det også uten nett. Strekene blir på telefonen din til du sender dem.',
    `Heftet er ikke medisinsk råd. Stopp hvis noe kjennes galt. Ring ${emergencyNumber} i en nødssituasjon.`,
    `${coach}, ${studio}`,
  ],
  slip: {
    title: 'Heftet ditt',
    howTo: ({ by }) =>
      ({
        link: [
          'Hold kameraet på telefonen over ruten.',
          'Den som har lappen, kan åpne heftet. Ta vare på den som en nøkkel.',
        ],
        words: [
          'Hold kameraet på telefonen over ruten, og skriv så inn ordene under.',
          'Den som har lappen, kan åpne heftet. Ta vare på den som en nøkkel.',
        ],
        both: ['Åpne lenken fra meldingen, og skriv så inn ordene under.', 'Ha lappen et annet sted enn lenken.'],
      })[by],
    words: 'Ordene som åpner det',
    code: 'Lenken, for kameraet',
  },
  calendar: {
    title: (studio, client) => `${studio}: økter for ${client}`,
    day: (session, client) => `${session} (${client})`,
    text: (minutes, { coach }) => `${minutes} En annen dag går også bra. Spør ${coach} om du er usikker.`,
  },
};
