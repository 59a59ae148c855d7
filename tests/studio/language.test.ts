/** The language of the demo studio: British, plain, one word for one idea, no sentence twice, cues a breath long. */
import { describe, expect, test } from 'vitest';
import { type DemoLine, exerciseFiles, linesOf, programmeFiles, show } from './demo-words.js';
import { countText, readingEase, sentencesOf, wordsOf } from './reading-ease.js';

const exercises = exerciseFiles();
const library = exercises.flatMap(linesOf);
const everything = [...library, ...programmeFiles().flatMap(linesOf), ...linesOf('studio.md')];
const under = (lines: readonly DemoLine[], heading: string) => lines.filter((line) => line.heading === heading);
const prose = everything.filter((line) => !line.text.startsWith('|') && line.heading !== 'Expect');

const failing = (lines: readonly DemoLine[], wrong: (text: string) => boolean): readonly string[] =>
  lines.filter((line) => wrong(line.text)).map(show);

/** A coach says a cue on one breath: common practice, no source; 14 words is our own measure of it. */
const MOST_WORDS_A_CUE = 14;
/** Easy enough for a reader of eleven or twelve; the bands are Flesch's own: 80 to 90 is *easy*, 70 to 80 *fairly easy*. */
const LEAST_EASE_OF_CUES = 85;
const LEAST_EASE_OF_A_CUE = 70;
const LEAST_EASE_OF_PAGES = 85;

describe('cues', () => {
  const cues = under(library, 'Cues');

  test('every exercise has three at least, each with its phase', () => {
    for (const file of exercises) {
      expect(under(linesOf(file), 'Cues').length, file).toBeGreaterThanOrEqual(3);
    }
    expect(cues.filter((cue) => cue.lead === '').map(show)).toEqual([]);
  });

  test('each is a breath long', () => {
    expect(failing(cues, (text) => wordsOf(text).length > MOST_WORDS_A_CUE)).toEqual([]);
  });

  test('none names a muscle: an image outside the body does more than anatomy', () => {
    const muscles =
      /\b(glute|gluteus|gluteal|quad|quadricep|hamstring|lat|latissimus|pec|pectoral|delt|deltoid|tricep|bicep|core|abs|abdominal|trapezius|rhomboid|adductor|oblique|scapula|erector)s?\b/i;
    expect(failing(cues, (text) => muscles.test(text))).toEqual([]);
  });

  test('the first three cover more than one phase, so that they stand alone during a set', () => {
    for (const file of exercises) {
      const first = under(linesOf(file), 'Cues').slice(0, 3);
      expect(new Set(first.map((cue) => cue.lead)).size, file).toBeGreaterThan(1);
    }
  });

  test('none is hard to take in', () => {
    expect(failing(cues, (text) => readingEase(countText(text)) < LEAST_EASE_OF_A_CUE)).toEqual([]);
  });

  test('each exercise’s are easy to read', () => {
    for (const file of exercises) {
      const text = under(linesOf(file), 'Cues')
        .map((cue) => cue.text)
        .join('\n');
      expect(readingEase(countText(text)), file).toBeGreaterThanOrEqual(LEAST_EASE_OF_CUES);
    }
  });
});

/**
 * Pictures a cue or a correction can be made of. One on every third page says nothing of any: two pages at most, which is
 * our own measure. Clothes, pockets and belts name a place on the body and are left out.
 */
const PICTURES =
  'arrow, barn, blind, boat, brick, broom, bucket, button on the ceiling, candle, cat, chimney, coat, coffee, coin, cork, crane, cup, curtain, dare, drawbridge, drawer, egg, fence, flagpole, glass, hammer, hammock, headlight, hedgehog, hen, honey, iron, knuckle, ladder, lamp post, lemon, lid, mooring, nail, oar, parcel, pastry, pencil, photograph, pillar, plate, raft, rail, rope, sand, saw, scale, seesaw, ski, smoke, snow, soup, spade, statue, stone, table, tent, tightrope, train, tray, wing, zip';

describe('pictures', () => {
  const said = library.filter(({ heading }) => heading === 'Cues' || heading === 'Faults');

  test('each on two pages at most', () => {
    const worn = PICTURES.split(', ').flatMap((picture) => {
      const pages = new Set(
        said.filter(({ text }) => new RegExp(`\\b${picture}s?\\b`, 'i').test(text)).map(({ file }) => file),
      );
      return pages.size > 2 ? [`${picture}: ${[...pages].join(', ')}`] : [];
    });
    expect(worn).toEqual([]);
  });

  test('nobody is dared, nothing is thrown', () => {
    expect(failing(said, (text) => /\b(dares?|throw (it|the bell))\b/i.test(text))).toEqual([]);
  });
});

describe('pages', () => {
  test.each(exercises)('%s has every part a client needs', (file) => {
    const lines = linesOf(file);
    for (const heading of ['', 'Set-up', 'Cues', 'Breath', 'Faults', 'Easier', 'Stop if', 'Partner']) {
      expect(under(lines, heading).length, heading).toBeGreaterThan(0);
    }
    const hands = under(lines, 'Pick up and put down').map((line) => line.lead);
    expect(hands).toContain('Pick up');
    expect(hands).toContain('Put down');
  });

  test('every fault says what to say', () => {
    expect(failing(under(library, 'Faults'), (text) => !/ — ".+"$/.test(text))).toEqual([]);
  });

  test('nearly every page has an easier way that is not another exercise', () => {
    const without = exercises.filter((file) => under(linesOf(file), 'Easier').every((line) => line.linked));
    expect(without.length, without.join(', ')).toBeLessThanOrEqual(2);
  });

  test('each page is easy to read', () => {
    for (const file of exercises) {
      const text = linesOf(file)
        .filter((line) => line.heading !== 'Easier' && line.heading !== 'Harder')
        .map((line) => line.text)
        .join('\n');
      expect(readingEase(countText(text)), file).toBeGreaterThanOrEqual(LEAST_EASE_OF_PAGES);
    }
  });

  test('no sentence stands twice', () => {
    const seen = new Map<string, string>();
    const twice: string[] = [];
    for (const line of prose.filter(({ heading }) => heading !== 'Easier' && heading !== 'Harder')) {
      for (const sentence of sentencesOf(line.text.replace(/[“”"]/g, '\n'))) {
        const plain = wordsOf(sentence).join(' ').toLowerCase();
        const before = seen.get(plain);
        if (before !== undefined && plain.split(' ').length > 2) twice.push(`${show(line)} — as in ${before}`);
        seen.set(plain, `${line.file}:${line.line}`);
      }
    }
    expect(twice).toEqual([]);
  });
});

describe('marks', () => {
  test('quotation marks and apostrophes are straight, as every keyboard gives them; the booklet turns them', () => {
    expect(failing(everything, (text) => /[‘’‚“”„]/.test(text))).toEqual([]);
  });
});

describe('words', () => {
  test('British spelling', () => {
    const american =
      /\b(color|colors|center|centers|centered|gray|program|programs|toward|meter|meters|liter|favorite|behavior|honor|labor|neighbor|neighbors|practicing|traveled|traveling|leveled|canceled|fulfill|skillful|plow|pajamas|counselor|defense|offense|license|aluminum|mom|sidewalk|pants|trash|flashlight|elevator|faucet|counter-?top|sneakers|analyze|organize|recognize|stabilizer|gotten|judgment)\b/i;
    expect(failing(everything, (text) => american.test(text))).toEqual([]);
  });

  test('one word for one idea', () => {
    const strangers: readonly (readonly [RegExp, string])[] = [
      [/\bkettlebells?\b/i, 'bell'],
      [/\b(equipment|gear|apparatus)\b/i, 'kit'],
      [/\b(workouts?|routines?|regimens?|regimes?)\b/i, 'session, programme'],
      [/\b(repetitions?)\b/i, 'rep'],
      [/\b(regress(ion|ions)?|scaled?|scaling)\b/i, 'easier'],
      [/\b(progress(ion|ions)?)\b/i, 'harder'],
      [/\b(deload)\b/i, 'easier week'],
      [/\b(trainers?|instructors?|therapist)\b/i, 'coach'],
      [/\b(buddy|spotter|mate)\b/i, 'partner'],
      [/\b(warmup|cooldown)\b/i, 'warm-up, cool-down'],
      [/\b(pushups?|press-ups?)\b/i, 'push-up'],
      [/\b(handout|leaflet|pamphlet)\b/i, 'booklet'],
      [/\b(ticks?|checkmarks?)\b/i, 'stroke'],
      [/\bweights?\b/i, 'bell, load'],
      [/\b(mistakes?|errors?)\b/i, 'fault'],
    ];
    for (const [stranger, ours] of strangers) {
      expect(
        failing(prose, (text) => stranger.test(text)),
        `say ${ours}`,
      ).toEqual([]);
    }
  });

  test('nothing on an exercise page that a client should not meet', () => {
    const notForClients =
      /\b(RPE|RIR|1RM|adherence|diagnos\w+|screening|medicines?|medication|body mass|streaks?|badges?|patients?)\b|%|\b\d-\d-\d-\d\b/i;
    expect(failing(library, (text) => notForClients.test(text))).toEqual([]);
  });

  test('no promise, no scolding', () => {
    const loud =
      /!|\b(guarantee\w*|amazing|perfect\w*|ultimate|crush|smash|beast|lazy|cheating|no excuses|burn fat)\b/i;
    expect(failing(everything, (text) => loud.test(text))).toEqual([]);
  });

  test('a partner watches and counts and lays on no hands', () => {
    const handsOn = /\b(hold|catch|grab|lift|support|push|pull|press|touch|spot|help) (them|him|her|their)\b/i;
    expect(failing(under(library, 'Partner'), (text) => handsOn.test(text))).toEqual([]);
  });
});
