/** Norwegian bokmål for the page that a sealed booklet is opened on. */
import type { SealWords } from './seal-words.js';

export const norwegianSeal: SealWords = {
  unopened: [
    'Dette heftet er forseglet, så bare du kan lese det.',
    'Åpne lenken treneren sendte deg, i en nettleser som tillater skript, med nett. Eller be treneren om heftet på papir.',
  ],
  askLink: 'Åpne lenken treneren sendte deg. Eller sett den inn her.',
  linkLabel: 'Lenken',
  askWords: 'Skriv ordene treneren ga deg.',
  wordsLabel: 'Ordene, i rekkefølge',
  ready: 'Heftet ditt er forseglet, så bare du kan lese det.',
  openKept: 'Åpne, og husk det på denne telefonen',
  openOnce: 'Åpne bare denne gangen',
  keptNote: 'La det bare huskes på en telefon som er din.',
  opening: 'Åpner …',
  fault: {
    'wrong words': 'Disse ordene åpner det ikke. Se på hvert ord, og prøv igjen.',
    'wrong link': 'Denne lenken åpner det ikke. Den er kanskje ikke hel, eller ikke den siste: spør treneren.',
    damaged:
      'Heftet kom ikke fram slik det ble sendt. Ingenting av det vises. Prøv igjen med nett; hjelper ikke det, si fra til treneren.',
    newer: 'Heftet er nyere enn denne siden. Lukk siden, og åpne den igjen med nett.',
    older: 'Heftet er eldre enn denne siden kan lese. Be treneren sende det på nytt.',
    'not secure': 'Et forseglet hefte åpnes bare på en adresse som begynner med https. Si fra til treneren.',
    'not kept': 'Nettleseren kunne ikke huske det. Neste gang spør den igjen.',
  },
  paper: 'Heftet på papir (PDF)',
  calendar: 'Øktene dine, til en kalender',
  notHad: 'Det kom ikke fram. Prøv igjen med nett.',
  forget: 'Glem på denne telefonen',
  forgetAsk: 'Dette tar heftet og strekene dine bort fra telefonen for godt. Streker du ikke har sendt, går tapt.',
  forgetYes: 'Ja, glem dem',
  forgetNo: 'Nei, behold dem',
};
