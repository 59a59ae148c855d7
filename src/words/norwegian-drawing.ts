/** What a drawing shows, in Norwegian bokmål. */
import type { ArmBend, ArmPlace, DrawingWords, KneeBend, Whose } from './drawing-words.js';

const SIDES = { left: 'venstre', right: 'høyre' } as const;

const ARM_PLACES: Readonly<Record<ArmPlace, string>> = {
  hanging: 'hengende ned',
  before: 'foran brystet',
  head: 'ved siden av hodet',
  out: 'ut til siden',
  across: 'på tvers av kroppen',
  behind: 'bak kroppen',
  beside: 'langs kroppen',
};

/** Of one, then of two. */
const ARM_BENDS: Readonly<Record<ArmBend, readonly [string, string]>> = {
  straight: ['arm strak', 'armene strake'],
  'a little': ['arm litt bøyd', 'armene litt bøyd'],
  bent: ['albue bøyd', 'albuene bøyd'],
};
const ONE_KNEE: Readonly<Record<KneeBend, string>> = {
  straight: 'bein strakt',
  'a little': 'kne litt bøyd',
  bent: 'kne bøyd',
  deep: 'kne dypt bøyd',
};

const limb = (whose: Whose, [one, both]: readonly [string, string]): string =>
  whose === 'both' ? both : `${SIDES[whose]} ${one}`;

export const norwegianDrawing: DrawingWords = {
  view: {
    side: 'Sett fra siden',
    half: 'Sett skrått forfra',
    front: 'Sett forfra',
    back: 'Sett bakfra',
    above: 'Sett ovenfra',
  },
  stance: {
    standing: 'stående',
    'standing on one leg': 'stående på ett bein',
    'on the toes': 'på tærne',
    'in a stride': 'med den ene foten foran den andre',
    sitting: 'sittende',
    'half kneeling': 'på ett kne',
    kneeling: 'på knærne',
    'on hands and knees': 'på hender og knær',
    'on hands and feet': 'på hender og tær',
    'on the forearms': 'på underarmene',
    'on the back': 'liggende på ryggen',
    bridging: 'med hoftene løftet og skuldrene i gulvet',
    'on the belly': 'liggende på magen',
    'on the side': 'liggende på siden',
    'on one arm': 'støttet på én arm',
  },
  upright: 'overkroppen rett opp',
  leaning: (way, much) =>
    `overkroppen lent ${much ? 'langt ' : ''}${{ forward: 'fram', back: 'bakover', left: 'mot venstre', right: 'mot høyre' }[way]}`,
  rounded: 'ryggen rundet',
  arched: 'ryggen svaiet',
  bentAside: (way) => `overkroppen bøyd mot ${SIDES[way]}`,
  turned: (way) => `brystet vendt mot ${SIDES[way]}`,
  feetWide: 'føttene langt fra hverandre',
  footOut: (side) => `${SIDES[side]} fot ut til siden`,
  knees: { straight: 'strake bein', 'a little': 'litt bøyde knær', bent: 'bøyde knær', deep: 'dypt bøyde knær' },
  oneKnee: (side, bend) => `${SIDES[side]} ${ONE_KNEE[bend]}`,
  legLifted: (whose) => `${limb(whose, ['bein', 'beina'])} løftet`,
  legLow: (whose) => `${limb(whose, ['bein', 'beina'])} like over gulvet`,
  arm: (whose, bend, place) =>
    [
      limb(whose, bend === undefined ? ['arm', 'armene'] : ARM_BENDS[bend]),
      ...(place === undefined ? [] : [ARM_PLACES[place]]),
    ].join(' '),
  hands: {
    up: 'over hodet',
    ahead: 'rett fram',
    down: 'hengende ned',
    out: 'ut til siden',
    chest: 'ved brystet',
    shoulder: 'ved skulderen',
    ribs: 'ved ribbeina',
    belly: 'på magen',
    hip: 'på hofta',
    head: 'ved hodet',
    thigh: 'på låret',
    knee: 'på kneet',
    shin: 'ved leggen',
    floor: 'ved gulvet',
    bell: 'på håndtaket',
    'left ear': 'ved venstre øre',
    'right ear': 'ved høyre øre',
    neck: 'bak nakken',
  },
  handToCeiling: 'opp mot taket',
  bothHands: (place) => `hendene ${place}`,
  oneHand: (side, place) => `${SIDES[side]} hånd ${place}`,
  on: {
    floor: 'i gulvet',
    wall: 'mot veggen',
    chair: 'på stolen',
    bench: 'på benken',
    box: 'på kassen',
    step: 'på trinnet',
    blocks: 'på klossene',
  },
  kit: {
    bell: 'en kule',
    dumbbell: 'en manual',
    bar: 'en stang',
    band: 'en strikk',
    wall: 'en vegg',
    chair: 'en stol',
    bench: 'en benk',
    box: 'en kasse',
    step: 'et trinn',
    blocks: 'klosser',
    mat: 'en matte',
  },
  held: {
    both: 'i begge hender',
    each: 'i hver hånd',
    left: 'i venstre hånd',
    right: 'i høyre hånd',
    floor: 'på gulvet',
    back: 'over ryggen',
  },
};
