/** Norwegian bokmål for why the work is what it is, as a client reads it. No sentence is over 12 words. */
import type { WorkRuleTold } from './client-reason-words.js';
import { norwegianCautionWords } from './norwegian-cautions.js';
import { SIDES } from './norwegian-figures.js';
import { clause, type Saying, sentence } from './rule-words.js';

const oneSide = (side: string): string => (side === SIDES.left || side === SIDES.right ? side : '');

export const norwegianReasonsWork: Readonly<Record<WorkRuleTold, Saying>> = {
  'walk-asked': 'Så mange du klarer, og likevel har krefter igjen.',
  'walk-back-up': 'Opp igjen til vekten du hadde før.',
  'walk-big-step': 'To gode økter med flest repetisjoner gir deg neste vekt.',
  'walk-easier-version': 'En lettere variant inntil videre, godt utført.',
  'walk-easy-asked': 'En lettere uke, med vilje.',
  'walk-easy-least': 'En lettere uke, med vilje.',
  'walk-easy-one-fewer': 'En lettere uke: én repetisjon færre, med vilje.',
  'walk-easy-week': 'En lettere uke, med vilje.',
  'walk-fewer-reps': 'Færre repetisjoner inntil videre, så hver av dem blir god.',
  'walk-fewest': 'En forsiktig start, med de færreste repetisjonene.',
  'walk-floor': 'Hjemme stopper du alltid med gode repetisjoner igjen.',
  'walk-harder-version': 'To gode økter med flest repetisjoner gir deg den tyngre varianten.',
  'walk-held': 'Vi blir her inntil videre, og gjør det godt.',
  'walk-held-reps': 'Ikke flere enn sist, inntil videre.',
  'walk-normal-tempo': 'I jevnt tempo inntil videre, så du har nok igjen.',
  'walk-lower-load': 'En lettere vekt, så hver repetisjon blir god.',
  'walk-new-is-lighter': 'Ny for deg, så den begynner lettere.',
  'walk-range': 'Det meste vi ber om her.',
  'walk-slower': 'Saktere på vei ned gjør samme vekt tyngre.',
  'walk-small-step': 'Du har fortjent neste vekt opp.',
  'walk-tempo-reset': 'En ny vekt: tilbake til vanlig tempo.',
  'walk-trial': 'Ett sett for å bli kjent med neste vekt.',
  'walk-version-trial': 'Ett sett for å bli kjent med den tyngre varianten.',
  'walk-volume': 'Litt mer enn før, aldri et hopp.',
  'begin-lighter': (f) =>
    f('by') === ''
      ? 'Inntil videre gjør du en lettere variant: vekten hjemme er tung nok.'
      : 'Inntil videre gjør du en lettere variant, så du har gode igjen.',
  'begin-tested': 'Du begynner med den treneren har sett deg gjøre.',
  'circuit-reserve': 'Settene følger tett, så stopp én repetisjon tidligere.',
  'feeler-rise': (f) =>
    `Følesettet finner ${f('finds') === 'reps' ? 'antallet' : 'vekten'}, så ingen trenger å gjette.`,
  'floor-alone': 'Hjemme stopper du alltid med gode repetisjoner igjen.',
  'floor-cautioned': 'Stopp mens det fortsatt ser godt ut.',
  'floor-first-weeks': 'De to første ukene er rolige, med vilje.',
  'floor-novice': 'Ny for deg: stopp mens det fortsatt ser godt ut.',
  'floor-older': 'Stopp mens det fortsatt ser godt ut.',
  'floor-signal': 'Ved hvert signal har du like mange gode igjen som du gjør.',
  'lighter-bell': (f) =>
    `Den lettere${clause(f('load'), (load) => `, ${load}`)}: dette er for raskt og presist arbeid, ikke tungt.`,
  'main-bell': (f) => `Den begynner med vekten du kjenner${clause(f('main'), (main) => `: ${main}`)}.`,
  'new-movement-lighter': 'Ny for deg, så den begynner én vekt lettere.',
  'next-up-bell': (f) => `Denne går ett steg opp fra ${f('main') || 'den vanlige vekten'}: få repetisjoner, alle gode.`,
  'percent-of-maximum': 'Lett nok til at bevegelsen blir god.',
  'side-gap-own-bell': (f) => `Den ${f('side') || 'sterkeste'} siden beholder sin egen vekt i de første settene.`,
  'side-gap-told': 'Den svakeste siden går først og bestemmer tallet for begge.',
  'unequal-hands': 'Bytt hender etter hvert sett: den ene er tyngre.',
  'warm-up-load': 'Ett lettere sett først, for å kjenne etter.',
  'weaker-side': (f) => `Den ${f('weaker') || 'svakeste'} siden går først og bestemmer tallet for begge.`,
  'weakest-part': 'Bestemt av den delen som er tyngst for deg.',
  'dead-stop-reps': 'Ny for deg: la vekten stå stille før hver repetisjon.',
  'ladder-earned': 'Gjør denne godt noen ganger før den blir tyngre.',
  'ladder-easy': 'En lettere uke: det samme, men mindre av det.',
  'ladder-easy-down': 'En lettere uke: ett steg tilbake, med vilje.',
  'ladder-gate': 'Noe nytt, hvis øktene før gikk som planlagt.',
  'ladder-held': 'Vi blir her inntil videre, så ingenting blir tyngre.',
  'ladder-up': 'Det forrige steget gikk bra, så dette er litt mer.',
  'mobility-fixed': 'Denne er den samme hele tiden, med vilje.',
  'swing-cap': 'Korte sett med vilje, så hver repetisjon er skarp.',
  'talk-limit': (f) =>
    f('talk') === 'phrases'
      ? 'Bare så hardt at du fortsatt kan si korte setninger.'
      : 'Bare så hardt at du fortsatt kan snakke i hele setninger.',
  'talk-sentences': 'Bare så hardt at du fortsatt kan snakke i hele setninger.',
  'circuit-apart': (f) =>
    f('circuit') === ''
      ? 'I denne rekkefølgen får grepet og ryggen hvile etter tur.'
      : 'Én øvelse om gangen her, så grepet og ryggen får hvile.',
  'circuit-bells': (f) =>
    f('circuit') === ''
      ? 'Det du begynner med, er nok til alle rundene.'
      : 'Én øvelse om gangen her: da slipper du å løpe mellom vektene.',
  'cool-down-older': 'Ta deg god tid til å roe ned.',
  'easy-week-sets': 'En lettere uke: færre sett, med vilje.',
  'fast-first': 'Raskt arbeid kommer først, mens grepet er uthvilt.',
  'floor-last': 'Gulvøvelsene kommer samlet, så du slipper å gå mye ned og opp.',
  'queue-slides': 'Etter en pause fortsetter du der du slapp: ingenting å ta igjen.',
  'short-minutes': 'Den korte varianten teller som gjort.',
  'warm-up': 'Varm opp hver gang.',
  'warm-up-older': 'Ta deg god tid til å varme opp.',
  'caution-met': (f) =>
    sentence(f('say')) || norwegianCautionWords(f('caution'), oneSide(f('side')), f('kept') !== 'kept'),
  'version-chosen': (f) => `Valgt for deg i stedet for ${f('programme') || 'den vanlige'}.`,
  'way-unlocks': (f) => `Bare slik for deg: ${f('way') || 'den lettere måten'}.`,
};
