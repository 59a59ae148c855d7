/** Norwegian bokmål for the short lines beside an exercise. */
import type { SetWords } from './catalogue.js';
import { inSentence, inSentenceWhole } from './in-sentence.js';
import { listed } from './listed.js';
import { counted } from './norwegian-figures.js';
import { norwegianManner } from './norwegian-manner.js';
import { NO_BREAK } from './spacing.js';
import { weekRuns } from './week-runs.js';

/** `uke 1 til 4 og 6`; the word is the same for one and for several. */
const weekList = (weeks: readonly number[]): string => `uke${NO_BREAK}${listed(weekRuns(weeks, 'til'), 'og')}`;

/** `90 sekunder`, `2 minutter 40 sekunder`. */
function lasting(seconds: number): string {
  if (seconds < 120) return counted(seconds, 'sekund', 'sekunder');
  const minutes = counted(Math.floor(seconds / 60), 'minutt', 'minutter');
  const over = seconds % 60;
  return over === 0 ? minutes : `${minutes} ${counted(over, 'sekund', 'sekunder')}`;
}

function turnAbout(
  rounds: readonly { readonly weeks: string; readonly rounds: number }[],
  names: readonly string[],
): string {
  const order = names.map(inSentence).map((name, i) => (i === 0 ? name : `så ${name}`));
  const how = rounds.map(({ weeks, rounds: many }) => {
    const said = counted(many, 'runde', 'runder');
    return weeks === '' ? said : `${said} i ${weeks}`;
  });
  const turns = names.length === 1 ? 'Runde etter runde' : `Bytt på: ${order.join(', ')}`;
  return `${turns}. ${how.join(', ')}.`;
}

export const norwegianSets: SetWords = {
  ...norwegianManner,
  repsInTime: (reps) => `Du rekker omtrent ${counted(reps, 'repetisjon', 'repetisjoner')}. Flere trengs ikke.`,
  deadStop: 'La vekten stå helt stille før hver repetisjon.',
  onlyLike: (way) => `Bare slik: ${way}.`,
  namedWay: (name, way) => `${name}: ${way.slice(0, 1).toLowerCase()}${way.slice(1)}`,
  straightOn: 'Rett fra den ene vekten til den neste, uten pause.',
  steps: 'Ett sett er alle trinnene, med et pust mellom hvert.',
  sideAlone: (side, count, of, dose) => `${side}: ${count} av ${of}${NO_BREAK}sett med ${dose}.`,
  helped: 'Strikken hjelper: den bærer litt av deg.',
  rest: (seconds) => (seconds === 0 ? 'Ingen pause: rett videre.' : `Pause: ${lasting(seconds)}.`),
  leftFirst: 'Venstre først, så høyre.',
  rightFirst: 'Høyre først, så venstre.',
  inTurn: 'Venstre og høyre annenhver gang.',
  turnAbout,
  signal: (seconds) =>
    seconds === 60
      ? 'Start et sett hvert minutt. Det som er igjen av minuttet, er pause.'
      : `Start et sett hvert ${seconds}.${NO_BREAK}sekund. Det som er igjen, er pause.`,
  workAndPause: (work, pause, changes) =>
    `${lasting(work)} arbeid, ${lasting(pause)} ${changes ? 'til å bytte' : 'pause'}.`,
  tryLoad: (load, amount) => `Første sett: prøv ${load}, ${amount}${/^\d+$/.test(amount) ? `${NO_BREAK}ganger` : ''}.`,
  tryVersion: (name, dose) => `Første sett: prøv ${inSentence(name)}, ${dose}.`,
  gateNeeds: (dose, weeks, left) =>
    `Gjør først alle sett med ${dose}${weeks === '' ? '' : ` i ${weeks}`}.${left === undefined ? ' Alle skal være gode.' : ` Hvert med ${left} igjen.`}`,
  gateStill: (week) => `Bare hvis du gikk opp i uke${NO_BREAK}${week}.`,
  otherwise: (dose) => `Ellers: ${dose}.`,
  versionDose: (name, dose) => `${name}, ${dose}`,
  feelerIntro: (set, each) =>
    `Følesett: ${set}. Spør deg så: hvor mange gode til?${each ? ' Siden med færrest teller.' : ''}`,
  feelerNote: (week) => `Hvor mange til, uke${NO_BREAK}${week}:`,
  felt: (least, most) => {
    const from = least === 0 ? 'ingen' : `${least}`;
    if (most >= 99) return `${least} eller flere igjen`;
    if (least === most) return `${from} igjen`;
    return most === least + 1 ? `${from} eller ${most} igjen` : `${from} til ${most} igjen`;
  },
  feelerAgain: (week) => `Som du fant i uke${NO_BREAK}${week}: hvor mange gode var igjen?`,
  testStop: (left, most) =>
    `Test: stopp når du har ${left} gode igjen${most === undefined ? '' : `, eller ved ${most}`}.`,
  testAll: 'Test: stopp når de ikke er gode lenger.',
  testInTime: (seconds) =>
    `Test: så mange hele du rekker på ${counted(seconds, 'sekund', 'sekunder')}. Stopp straks ved et av stopptegnene.`,
  testHeld: (seconds) => `Test: hold stillingen godt, høyst ${counted(seconds, 'sekund', 'sekunder')}.`,
  testNote: (week, side, held) =>
    `${held ? 'Sekunder' : 'Gode'}, uke${NO_BREAK}${week}${side === '' ? '' : `, ${side}`}:`,
  yourLoad: 'din vekt',
  withYourLoad: (reps) => `${reps} med vekten du fant`,
  withLightest: (reps) => `${reps} med det letteste du har`,
  weekList,
  inSentence,
  inSentenceWhole,
};
