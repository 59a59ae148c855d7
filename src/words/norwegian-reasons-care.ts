/** Norwegian bokmål for breaks, tests, marks, pain, what was seen, and health, as a client reads it: what to do, never what is wrong. */
import type { CareRuleTold } from './client-reason-words.js';
import { clause, type Figure, held, type Saying } from './rule-words.js';

const ILL =
  'Du har vært syk, så dette er rolig. Fortsatt feber, eller noe galt i brystet? Snakk med legen før du trener.';

const WHY_GENTLE: Readonly<Record<string, string>> = {
  away: 'Du har vært borte, så dette er rolig med vilje.',
  ill: ILL,
  hurt: 'Du har vært skadet, så dette begynner rolig. Kommer smerten tilbake: stopp, og spør lege eller fysioterapeut.',
};

/** `én vekt`; empty where it begins as heavy as before. */
const lighter = (f: Figure): string => f('loads lighter').replace(/^1(?=\s)/, 'én');

/** Without a lighter load to begin with. */
const fromThere = (f: Figure): string =>
  `Du har vært borte en stund: det begynner fra ${f('marked') === '' ? 'den siste testen din' : 'det du sist førte opp'}, og ikke lenger ennå.`;

/** The body alone has no load. */
const withLoad = (f: Figure): string => clause(f('load'), (load) => ` med ${load}`);
const often = (f: Figure): string => (f('weeks') === '2' ? 'to ganger' : `${f('weeks')} ganger`);

/** `venstre` or `høyre`. */
const thatSide = (f: Figure): string => f('side') || 'korteste';

export const norwegianReasonsCare: Readonly<Record<CareRuleTold, Saying>> = {
  'birth-test': 'Det første settet finner vekten på nytt. Begynn lett.',
  'break-floor': 'De første ukene tilbake er rolige, med vilje.',
  'break-held': (f) => WHY_GENTLE[f('cause')] ?? 'Ingenting blir tyngre ennå.',
  'break-held-ill': ILL,
  'chair-stand-seconds': 'En test av styrken i beina. Den kommer først og sist, så du kan sammenligne.',
  'one-leg-seconds':
    'En test av balansen. Den kommer først og sist, så du kan sammenligne. Hold deg innen rekkevidde av noe stødig.',
  'pregnancy-test': (f) =>
    `${f('marked') === '' ? 'Testet' : 'Ført opp'} før svangerskapet: det begynner ${clause(lighter(f), (loads) => `${loads} lettere`) || 'der, og ikke lenger ennå'}.`,
  'return-lighter': (f) => `Du har vært borte en stund, så det begynner ${lighter(f) || 'én vekt'} lettere.`,
  'strength-kept': fromThere,
  'strength-kept-older': fromThere,
  'strength-unknown': 'Etter så lang tid finner det første settet vekten på nytt.',
  'test-reserve': (f) =>
    `En test, for å se hvor du står. Så mange gode du klarer, og stopp med ${f('reserve') || held(f, '1')} igjen.`,
  'done-earned': 'Du nådde det høyeste antallet sist.',
  'done-easier': 'Du valgte den lettere, så dette begynner lettere.',
  'done-median': (f) => `Bestemt av det du førte opp${clause(f('marked'), (day) => ` ${day}`)}.`,
  'done-missed': 'Den siste var tung, så dette begynner litt lettere.',
  'done-over-target': 'Du hadde mer igjen enn planlagt, to ganger.',
  'done-trial': (f) =>
    f('tried') === ''
      ? 'For første gang med denne: de færreste repetisjonene.'
      : `Du gjorde ${f('tried')}${withLoad(f)} ${often(f)}. Nå kan du trene med det.`,
  'done-unsaid': (f) =>
    `Bestemt av det du førte opp${clause(f('marked'), (day) => ` ${day}`)}. Si hvor mange du hadde igjen.`,
  'pain-back': 'Du er tilbake på denne etter en stund, så den begynner lettere. Stopp hvis det gjør vondt.',
  'pain-easier': 'Det gjorde vondt sist, så dette er lettere inntil videre.',
  'pain-gentle': 'Det gjorde litt vondt sist, så ingenting blir tyngre ennå.',
  'pain-leave': 'Det som gjorde vondt, venter inntil videre. Si fra til lege eller fysioterapeut hvis det varer.',
  'pain-next-morning': 'Det var verre neste morgen, så vi er mer forsiktige.',
  'seen-balance': (f) => (f('programme') === '' ? '' : 'En stødigere variant inntil videre. Du har god tid.'),
  'seen-breath': 'Pust ut når du tar i. Stopp mens du ennå kan snakke.',
  'seen-grip': (f) =>
    f('programme') === ''
      ? 'Litt lettere, så grepet holder ut.'
      : 'En variant som krever mindre av grepet, inntil videre.',
  'seen-heavy': 'Treneren lar dette begynne litt lettere.',
  'seen-hurrying': 'Saktere ned enn opp.',
  'seen-light': 'Dette så lett ut for deg. Neste steg kommer tidligere.',
  'seen-missed-reps': 'Dette begynner litt lettere, og du stopper én repetisjon tidligere.',
  'seen-new': 'Denne er ny for deg. Ta deg tid til å lære den.',
  'seen-shorter-side': (f) =>
    f('drill for') === ''
      ? `Den ${thatSide(f)} siden først; så gjør den andre det samme.`
      : `For den ${thatSide(f)} siden: sakte, og bare så langt som det er lett.`,
  'birth-belly': 'Buler eller drar det i magen, så gjør det lettere.',
  'birth-breath': 'Pust ut når du løfter. Kjenner du tyngde nedentil, eller lekker, så gjør det lettere.',
  'birth-impact': 'Hold én fot på gulvet: ingen hopp eller landinger.',
  'birth-signs':
    'Stopp, og spør jordmor eller lege, ved noe av dette: blødning som kommer tilbake eller øker; et arr som gjør vondt eller væsker; tyngde nedentil; feber.',
  'bone-bend': 'Bøy i hoftene, og hold ryggen lang.',
  'bone-fast': 'Beveg deg sakte og med kontroll.',
  'bone-lift': 'Løft fra en stol eller en kasse, og sett det ned der.',
  'bone-twist': 'Vri med føttene, ikke i ryggen.',
  'clearance-warned': (f) =>
    `${f('last day') === '' ? 'Den siste dagen å trene etter dette heftet er nær' : `Den siste dagen å trene etter dette heftet er ${f('last day')}`}. Gå til legen før det; treneren lager det neste.`,
  'falls-support': 'Ha en vegg eller en tung stol innen rekkevidde av hånden.',
  'floor-begins': 'Disse ukene er lette med vilje.',
  'floor-light': 'Disse ukene er lette med vilje.',
  'floor-moderate': 'Dette er godt innenfor det du klarer, med vilje.',
  'fracture-bend': 'Bøy i hoftene, og hold ryggen lang.',
  'fracture-fast': 'Beveg deg sakte, og hold én fot på gulvet.',
  'fracture-floor': 'Ta deg tid ned og opp, med en stol til hjelp.',
  'fracture-lift': 'Løft fra en stol eller en kasse, og sett ned der. Ingenting tungt skal på gulvet.',
  'fracture-twist': 'Vri med føttene, ikke i ryggen.',
  'lowers-blood-pressure': 'Kom sakte opp, og sett deg hvis du blir ør i hodet.',
  'lowers-blood-sugar':
    'Ha noe søtt innen rekkevidde, slik klinikken har sagt. Blir du skjelven, svett eller forvirret, så stopp og ta det.',
  'pregnancy-back': 'Ligg ikke flatt på ryggen; støtt deg opp, eller snu deg på siden.',
  'pregnancy-belly': 'Buler magen, eller kjenner du tyngde nedentil, så gjør det lettere.',
  'pregnancy-breath': 'Pust ut når du løfter.',
  'pregnancy-falls': 'Hold én fot på gulvet, og noe stødig innen rekkevidde.',
  'pregnancy-last': (f) =>
    `Dette heftet slutter ${f('last day') || 'den dagen du har termin'}. Jordmoren sier hvordan du går videre.`,
  'pregnancy-signs':
    'Stopp, og ring jordmor eller lege, ved noe av dette: blødning; vann som går; regelmessige eller vonde sammentrekninger; smerter i magen; hodepine; svimmelhet; tung pust før du begynner, eller som hvile ikke roer; svakhet som går ut over balansen. En vond og hoven legg: ring dem samme dag. Smerter i brystet, eller tung pust i tillegg, er en nødssituasjon.',
  'pressure-at-home': (f) =>
    `Mål i hvile før du trener. Over ${f('limit') || '180/110'}, det ene eller det andre tallet: tren ikke, ring legen.`,
  'pressure-breath': 'Pust ut når du løfter, og hold aldri pusten.',
  'slows-the-heart': 'Gå etter pusten og ordene, aldri etter pulsen.',
  'talk-moderate': 'Jobb slik at du alltid kunne snakket i hele setninger.',
  'thins-the-blood':
    'Unngå støt og fall. Etter et slag mot hodet: skaff hjelp med én gang; at du føler deg bra, beviser ingenting.',
};
