/** Norwegian bokmål for parts of the body, and for what makes another way the right one. */
import { BODY_PARTS, type BodyPart, type Cause } from '../model/exercise.js';
import { listed } from './listed.js';

interface Part {
  /** After a side: `venstre kne`. */
  readonly bare: string;
  /** Of one's own: `vondt i kneet`. */
  readonly own: string;
}

export const PARTS: Readonly<Record<BodyPart, Part>> = {
  neck: { bare: 'side av nakken', own: 'nakken' },
  shoulder: { bare: 'skulder', own: 'skulderen' },
  elbow: { bare: 'albue', own: 'albuen' },
  wrist: { bare: 'håndledd', own: 'håndleddet' },
  hand: { bare: 'hånd', own: 'hånden' },
  'upper back': { bare: 'side av øvre rygg', own: 'øvre rygg' },
  'lower back': { bare: 'side av korsryggen', own: 'korsryggen' },
  hip: { bare: 'hofte', own: 'hoften' },
  knee: { bare: 'kne', own: 'kneet' },
  ankle: { bare: 'ankel', own: 'ankelen' },
  foot: { bare: 'fot', own: 'foten' },
  'pelvic floor': { bare: 'side av bekkenbunnen', own: 'bekkenbunnen' },
  belly: { bare: 'side av magen', own: 'magen' },
};

/** What else than a sore part makes an easier way the right one. */
const TROUBLES: Readonly<Record<Exclude<Cause, BodyPart>, string>> = {
  load: 'det er for tungt',
  range: 'det går for langt',
  balance: 'du vakler',
  speed: 'det går for fort',
  floor: 'det er tungt å komme ned på gulvet',
  kit: 'utstyret ikke er der',
  grip: 'grepet gir seg først',
};

const isPart = (cause: Cause): cause is BodyPart => BODY_PARTS.some((part) => part === cause);

/** These are not sore; they are felt another way. */
const FELT: Readonly<Partial<Record<BodyPart, string>>> = {
  'pelvic floor': 'du kjenner tyngde eller lekker',
  belly: 'magen buler ut',
};

/** `når det er for tungt, du vakler, eller du har vondt i kneet eller hoften`. */
export function norwegianCauses(causes: readonly Cause[]): string {
  const parts = causes.filter(isPart);
  const sore = parts.filter((part) => FELT[part] === undefined).map((part) => PARTS[part].own);
  const told = [
    ...causes.flatMap((cause) => (isPart(cause) ? [] : [TROUBLES[cause]])),
    ...parts.flatMap((part) => FELT[part] ?? []),
    ...(sore.length === 0 ? [] : [`du har vondt i ${listed(sore, 'eller')}`]),
  ];
  return told.length === 0 ? '' : `når ${listed(told, 'eller')}`;
}

const HARDER: Readonly<Partial<Record<Cause, string>>> = {
  load: 'mer vekt',
  range: 'mer dybde eller rekkevidde',
  balance: 'mer balanse',
  speed: 'mer fart',
};

export function norwegianHarderCauses(causes: readonly Cause[]): string {
  const told = causes.flatMap((cause) => HARDER[cause] ?? []);
  return told.length === 0 ? '' : `for ${listed(told, 'og')}`;
}
