/** Words that have no place in front of a client: coaches' shorthand, private facts, praise and pressure. */
const BANNED: readonly (readonly [string, RegExp])[] = [
  ['RPE', /\brpe\b/i],
  ['deload', /deload/i],
  ['RIR', /\brir\b/i],
  ['1RM', /\b\d*rm\b/i],
  ['a percentage', /%|\bper ?cent/i],
  ['adherence', /adheren|complian/i],
  ['diagnosis', /diagnos/i],
  ['screening', /screening|clearance/i],
  ['medicines', /\bmedicines?\b|medication/i],
  ['body mass', /body ?mass|body ?weight|\bBMI\b/i],
  ['side gap', /side gap|asymmetr/i],
  // Rising reps stand behind a ×, or before the word; of more than four steps they are no tempo.
  ['four-digit tempo', /(?<!×\s?|[-–\d])\d[-–]\d[-–](\d|x)[-–]\d\b(?![-–]\d|\sreps)/i],
  ['streak', /streak/i],
  ['praise', /well done|great job|congratulat|awesome|amazing|keep it up|you rock|personal best/i],
  ['regression', /regression|progression/i],
  ['engine words', /\bstrand\b|undefined|\bNaN\b|\[object/i],
];

/** What is wrong with a text for a client's eyes, by name. */
export const bannedIn = (text: string): readonly string[] =>
  BANNED.filter(([, pattern]) => pattern.test(text)).map(([name]) => `${name}: ${text}`);

/** A load, a band by its name, and how much of it: `16 kg × 8`, `light band × 12`, `20 kg, 30 s`. */
const DOSE = /(\d[\d.]*\u00a0(kg|lb)|\p{L}+\u00a0band)([ \u00a0]×\u00a0[\d-]+|, \d+\u00a0(s|m|min))?/gu;

/** Words of the longest sentence; a dose counts as one. */
export function longestSentence(text: string): number {
  const whole = text.replace(DOSE, 'load').replace(/\d+[ \u00a0]×[ \u00a0]load/g, 'load');
  return Math.max(
    0,
    ...whole.split(/[.!?:;]\s+/).map((sentence) => sentence.split(/\s+/).filter((word) => word !== '').length),
  );
}
