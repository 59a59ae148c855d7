/** Norwegian bokmål for the fixed prose of a booklet. Its safety sentences say no less than the English ones. */

import type { BookletWords, Shows, WhoIsWho } from './booklet-words.js';
import { listed } from './listed.js';
import { counted } from './norwegian-figures.js';
import { norwegianSets } from './norwegian-sets.js';
import { begun } from './rule-words.js';
import { sessionLetter } from './session-letter.js';
import { NO_BREAK } from './spacing.js';

const notMedical = (who: WhoIsWho): string =>
  `Dette heftet er ikke medisinske råd, og det kommer ikke i stedet for slike. ${who.coach} har skrevet det til ${who.client} alene, ut fra det som var kjent ${who.date}. Endrer helsen eller behandlingen din seg, eller er du i tvil: spør lege, jordmor eller fysioterapeut før du trener. Det de sier, går foran alt som står her.`;

const dosesByWeek = (doses: readonly { readonly weeks: string; readonly dose: string }[]): string =>
  doses.map(({ weeks, dose }) => (weeks === '' ? dose : `${dose} i ${weeks}`)).join('; ');

/** Where a bell changes hands: on the floor, or on what it was lifted from. */
const bells: Readonly<Record<Shows['bells'], readonly string[]>> = {
  '': [],
  floor: ['Kulene går alltid via gulvet, aldri fra hånd til hånd. Glipper en kule, så slipp den og gå unna.'],
  raised: [
    'Sett kulen fra deg før den andre hånden tar den; gi den aldri over. Glipper en kule, så slipp den og gå unna.',
  ],
};

const times = (rounds: number): string =>
  rounds === 1 ? 'én gang' : rounds === 2 ? 'to ganger' : `${rounds}${NO_BREAK}ganger`;

const minutes = (count: number): string => counted(count, 'minutt', 'minutter');

const FILMED = { front: 'forfra', side: 'fra siden', behind: 'bakfra' } as const;

export const norwegianBooklet: BookletWords = {
  title: 'Heftet ditt',
  documentTitle: (client, weeks, from) => `${client}: ${counted(weeks, 'uke', 'uker')} fra ${from}`,
  edition: (edition) => (edition === 0 ? 'Utkast, ikke utgitt' : `Utgave${NO_BREAK}${edition}`),
  studioAt: (studio, place) => (place === '' ? studio : `${studio}, ${place}`),
  notMedical,
  sessionSafety: (who) =>
    `Ikke medisinske råd. Smerte på 4 eller mer: la det være, si fra til ${who.coach}. Faretegn: stopp, ring ${who.emergencyNumber}.`,

  howToTitle: 'Slik bruker du heftet',
  howTo: (shows) => [
    'Ta øktene i rekkefølge. Mistet du en? Ta den neste gang. Aldri to på én dag.',
    'Finn uken din i økten, og gå nedover.',
    ...(shows.example === ''
      ? []
      : [
          `${shows.example} er ett sett: vekten, så ${shows.exampleReps} repetisjoner. Under står ett merke for hvert sett.`,
        ]),
    'Stopp med 2 i reserve betyr: stopp når du har 2 gode repetisjoner igjen. Gode betyr like fine som den første. Færre enn planlagt er helt greit; en du må presse fram, er det ikke.',
    ...(shows.sides ? ['Én side om gangen? Ta siden som er nevnt først, og gi den andre det samme.'] : []),
    ...(shows.feelers
      ? ['Et følesett finner vekten din. Gjør det, skriv hvor mange gode som var igjen, og les av linjen.']
      : []),
    ...(shows.trials
      ? ['Prøv betyr ett sett av det som kan komme neste gang. Ser det ikke ut som de andre, så stopp der.']
      : []),
    ...(shows.tests
      ? ['En test viser hvor du står i dag. Stopp der det står, og skriv tallet på linjen. Én er nok.']
      : []),
    ...(shows.talk
      ? ['Si en setning høyt mens du jobber. Kommer ikke ordene som det står, så senk farten til de gjør det.']
      : []),
    ...(shows.signals
      ? ['Starter et sett hvert minutt, så la en klokke gå. Ikke klar ved signalet? La det settet være.']
      : []),
    ...(shows.gates
      ? ['Står det Først ved et steg opp, så gjør det som står, før du tar steget. Hvis ikke: ta linjen Ellers.']
      : []),
    'Ikke helt i form i dag? Ta den lettere måten under øvelsen. Den teller like mye.',
    ...(shows.short ? ['En dårlig dag? Gjør det som står for slike dager øverst i økten, og ikke mer.'] : []),
    'Sett én strek etter hvert sett. Tom telefon? En blyant her teller like mye.',
  ],
  key: [
    { mark: 'to do', text: 'Fot = å gjøre.' },
    { mark: 'done', text: 'Strek = gjort.' },
    { mark: 'easier', text: 'e = gjort, lettere.' },
    { mark: 'left out', text: 'Tom = utelatt.' },
    { mark: 'extra', text: '+ = ekstra.' },
  ],

  safetyTitle: 'Før du begynner',
  emergencyTitle: 'Stopp med én gang og ring etter hjelp',
  emergency: [
    'Smerte, trykk eller stramming i brystet, kjeven eller armen.',
    'Du besvimer, eller er i ferd med det.',
    'Plutselig, kraftig hodepine.',
    'Du blir svak i den ene siden av ansiktet eller kroppen, eller klarer ikke å snakke tydelig.',
    'Ny nummenhet, eller du mister kontrollen over blære eller tarm.',
    'Du er mye mer tungpustet enn arbeidet skulle tilsi.',
    'En hoven og vond legg: ring lege eller legevakt samme dag. Tungpustet eller brystsmerter i tillegg? Ring med én gang.',
  ],
  call: (number) => `Ring ${number}. Tren ikke videre. Vent ikke for å se om det går over.`,
  painTitle: 'Smerte, fra 0 (ingen) til 10 (det verste du kan tenke deg)',
  pain: (who) => [
    { degree: '0 til 2', text: 'Fortsett, forsiktig.' },
    { degree: '3', text: 'Ta den lettere måten.' },
    { degree: '4 og mer', text: `La denne øvelsen være, og si fra til ${who.coach}.` },
    {
      degree: 'Verre neste morgen',
      text: `Gå et steg tilbake: den lettere måten neste gang. Si fra til ${who.coach}.`,
    },
  ],
  safety: (who, shows) => [
    'Dette heftet er ikke medisinske råd: hele teksten står på første side.',
    `Har fysioterapeuten eller legen gitt deg andre grenser for smerte? Da gjelder de. Si fra til ${who.coach}.`,
    'Spør først, før du begynner eller fortsetter, hvis du er syk, har vært på sykehus, er eller kan være gravid, eller har nye symptomer. Tren ikke med feber.',
    `Dette heftet er laget til ${who.client}. Ingen andre skal trene etter det.`,
    'Rydd gulvet. Bruk sko som ikke glir, eller bare føtter. Ha vann og telefon innen rekkevidde.',
    'Pust hele tiden. Hold aldri pusten for å presse fram en repetisjon.',
    ...(shows.plates
      ? ['Skiver på håndtak eller stang? Kjenn på hver lås før hvert sett. Ingenting skal kunne gli.']
      : []),
    ...(shows.bands ? ['Strikk: se etter sprekker før hver økt, og hold ansiktet unna der den kan sprette.'] : []),
    ...bells[shows.bells],
    'En partner ser på, teller og snakker. Ingen hjelper til med hendene.',
    'Der lokale regler sier hvem som kan gi trening til hvem, gjelder de reglene.',
  ],
  forYouLead: 'For deg',
  onlyLike: (way) => `Bare slik: ${way}. Sier denne siden noe annet, er det dette som gjelder.`,
  forYou: (words) => `For deg: ${words}`,

  calendarTitle: (weeks) => (weeks === 1 ? 'Uken din' : `De ${weeks} ukene dine`),
  weekLabel: (week) => `Uke${NO_BREAK}${week}`,

  sessionTitle: (id, name) => {
    const letter = `Økt${NO_BREAK}${sessionLetter(id)}`;
    return name === '' || name.toLowerCase() === id.toLowerCase() ? letter : `${letter}: ${name}`;
  },
  again: (title) => `${title}, en gang til`,
  minutes: (least, most) => (least === most ? `Omtrent ${minutes(least)}.` : `Omtrent ${least} til ${minutes(most)}.`),
  warmUp: (count, names) => [
    `${count === 0 ? '' : `${minutes(count)}. `}Gå, eller gå på stedet, til du er varm og puster litt raskere.`,
    ...(names.length === 0 ? [] : [`Så 6 rolige av hver, uten vekt og bare et stykke på vei: ${listed(names, 'og')}.`]),
  ],
  inOrder: (count, walk, through) => {
    const said = through.map(({ weeks, rounds }) => (weeks === '' ? times(rounds) : `${times(rounds)} i ${weeks}`));
    const order = `i denne rekkefølgen${said.length === 0 ? '' : `, ${said.join(', ')}`}`;
    return `Omtrent ${minutes(count)}. ${walk ? `Gå, eller gå på stedet, til du puster litt raskere, så ${order}:` : `${begun(order)}:`}`;
  },
  drill: dosesByWeek,
  warmUpSet: (name, doses) => `Før ${name}, ett lettere sett: ${dosesByWeek(doses)}.`,
  coolDown: (count) => [`${minutes(count)}. Gå sakte til pusten er rolig, og la så armer og bein henge løst.`],
  shortVersion: (count, warmUp, sets) => {
    const each = sets.map(({ name, sets: many, sides }) => `${many}${NO_BREAK}sett ${name}${sides ? ' per side' : ''}`);
    return `${warmUp ? 'En kort oppvarming, så ' : ''}${listed(each, 'og')}. Omtrent ${minutes(count)}. Det teller.`;
  },
  noSessions: 'Ingen økter.',
  inWeeks: (weeks, text) => `${begun(weeks)}: ${text}`,
  askAfter: (date) => `Spør før du trener videre etter ${date}. Ingen økt er planlagt etter den dagen.`,

  sections: {
    parts: 'Satt sammen av',
    'set-up': 'Oppsett',
    'pick up': 'Ta opp',
    'put down': 'Sett ned',
    cues: 'Tenk på',
    breath: 'Pust',
    faults: 'Du ser, du sier',
    easier: 'Lettere',
    harder: 'Tyngre',
    film: 'En kort film',
    partner: 'Partner',
  },
  film: (coach, from) => [
    `${coach} ber om en film av ett sett, ${FILMED[from]}.`,
    'Sett telefonen støtt. Hele deg i bildet.',
    'Send den selv. Den går ingen steder av seg selv.',
  ],
  partsDone: {
    'as one': 'Den ene etter den andre, og alle sammen er én repetisjon.',
    'in turn': 'Alle repetisjoner av den første, så alle av den neste.',
  },
  stopTitle: 'Stopp hvis',
  quotes: ['«', '»'],

  whyLead: (where) =>
    where
      .map(({ session, weeks }) => {
        const said = weeks.length === 0 ? '' : norwegianSets.weekList(weeks);
        return session === '' ? begun(said) : [session, said].filter((part) => part !== '').join(', ');
      })
      .join('; '),

  testAgain: (names) => `Vi tester på nytt når du er varm: ${listed(names, 'og')}.`,

  partnerTitle: (partner) => `Til ${partner}: tell, se og si fra`,
  partner: (client) => [
    'Du teller, du ser på, du snakker. Ingen hjelp med hendene.',
    `Stå ved siden av, der ${client} ser deg. Aldri der en vekt kan falle.`,
    'Vekter går via gulvet: sett ned, så tatt opp. Aldri fra hånd til hånd.',
    'Si én ting om gangen, med få ord.',
    `Be aldri om én til. ${client} sier når det er nok.`,
  ],
  partnerEmergency: [
    'Smerte, trykk eller klemming i bryst, kjeve eller arm.',
    'Besvimer, eller er nær ved å besvime.',
    'Plutselig, sterk hodepine.',
    'Svak i den ene siden av ansikt eller kropp, eller utydelig tale.',
    'Ny nummenhet, eller mister kontroll over blære eller tarm.',
    'Langt mer andpusten enn arbeidet forklarer.',
    'Hoven og vond legg: lege eller legevakt samme dag. Sammen med tung pust eller brystsmerter: ring med én gang.',
  ],
  partnerStop: (client) => `Slik ${client} leser det: stopp hvis`,
  partnerCounts: {
    reps: 'Tell de gode repetisjonene høyt.',
    seconds: 'Se på klokken. Si de fem siste sekundene høyt.',
    metres: 'Se fram: er veien fri? Si når det er tid for å snu.',
    rounds: 'Tell rundene høyt.',
  },
  partnerSides: 'Si hvilken side som er neste.',

  recordTitle: 'Det du merket',
  record: (who) => [
    'Etter hver økt: datoen, hvor hardt det var fra 0 til 10, og et ord om det som føltes lett, tungt eller sårt.',
    `Ta det med til ${who.coach}, eller send det. Det gjør det neste heftet ditt bedre.`,
  ],
};
