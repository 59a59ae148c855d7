/** Norwegian bokmål where a caution changes the work or keeps it gentle: what to do, never what is wrong with a client. */
import { BODY_PARTS, type Quality } from '../model/exercise.js';
import { PARTS } from './norwegian-body.js';

interface Spoken {
  /** Another exercise, or an easier way, was chosen for it. */
  readonly changed: string;
  /** The exercise stays. */
  readonly kept: string;
}

const QUALITY_WORDS: Readonly<Record<Quality, Spoken>> = {
  balance: {
    changed: 'Valgt slik at balansen aldri er det vanskelige.',
    kept: 'Hold deg innen rekkevidde av noe stødig.',
  },
  grip: { changed: 'Valgt slik at grepet ikke gir seg først.', kept: 'Sett den fra deg før grepet blir slitent.' },
  impact: { changed: 'Valgt fordi ingenting lander hardt.', kept: 'Gjør det mykt: ingenting her skal lande hardt.' },
  speed: { changed: 'Valgt fordi den kan gjøres sakte.', kept: 'Ta denne sakte.' },
  floor: {
    changed: 'Valgt slik at du ikke må ned på gulvet.',
    kept: 'Ta deg tid ned og opp, med en stol til hjelp.',
  },
  overhead: { changed: 'Valgt slik at ingenting går over hodet.', kept: 'Gå bare så høyt som det er behagelig.' },
  'breath hold': {
    changed: 'Valgt slik at du kan puste fritt hele veien.',
    kept: 'Pust hele tiden: ut når du tar i, og hold aldri pusten.',
  },
  'head down': { changed: 'Valgt slik at hodet holder seg oppe.', kept: 'Kom sakte opp.' },
  'lying on the back': {
    changed: 'Valgt slik at du ikke må ligge på ryggen.',
    kept: 'Bli ikke liggende på ryggen mellom settene.',
  },
  'spinal load': { changed: 'Valgt for å ta vekten av ryggen.', kept: 'Hold deg rak, og hold vekten lett.' },
  'loaded bend': {
    changed: 'Valgt slik at du aldri bøyer deg med vekt.',
    kept: 'Hold ryggen lang når du bøyer deg med vekten.',
  },
  'loaded twist': { changed: 'Valgt slik at du aldri vrir deg med vekt.', kept: 'Vri føttene med vekten.' },
  'deep bend': { changed: 'Valgt slik at du ikke må så dypt.', kept: 'Gå bare så dypt som det er behagelig.' },
  'deep twist': { changed: 'Valgt slik at du ikke må vri så langt.', kept: 'Vri bare så langt som det er behagelig.' },
  reach: {
    changed: 'Valgt slik at du ikke må strekke deg så langt.',
    kept: 'Strekk deg bare så langt som det er behagelig.',
  },
  'lifting from the floor': {
    changed: 'Valgt slik at ingenting tungt løftes fra gulvet.',
    kept: 'Løft fra en stol eller en kasse, og sett det ned der.',
  },
};

/** `side` is `left` or `right` as the language has it, or empty. */
export function norwegianCautionWords(what: string, side: string, changed: boolean): string {
  const part = BODY_PARTS.find((name) => name === what);
  if (part !== undefined) {
    const name = side === '' ? PARTS[part].own : `${side} ${PARTS[part].bare}`;
    return changed ? `Denne er snill mot ${name}.` : `Pass på ${name}: hold deg der det er behagelig.`;
  }
  const known = (text: string): text is Quality => Object.hasOwn(QUALITY_WORDS, text);
  if (!known(what)) return '';
  return changed ? QUALITY_WORDS[what].changed : QUALITY_WORDS[what].kept;
}
