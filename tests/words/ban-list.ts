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
  // Rising reps stand behind a ×, or before the word.
  ['four-digit tempo', /(?<!×\s?)\b\d[-–]\d[-–](\d|x)[-–]\d\b(?!\sreps)/i],
  ['streak', /streak/i],
  ['praise', /well done|great job|congratulat|awesome|amazing|keep it up|you rock|personal best/i],
  ['regression', /regression|progression/i],
  ['engine words', /\bstrand\b|undefined|\bNaN\b|\[object/i],
];

/** What is wrong with a text for a client's eyes, by name. */
export const bannedIn = (text: string): readonly string[] =>
  BANNED.filter(([, pattern]) => pattern.test(text)).map(([name]) => `${name}: ${text}`);

/** Words of the longest sentence; a load and its amount count as one. */
export function longestSentence(text: string): number {
  const whole = text.replace(/\d[\d.]*\u00a0(kg|lb)( ×\u00a0\d+)?/g, 'load');
  return Math.max(
    0,
    ...whole.split(/[.!?:;]\s+/).map((sentence) => sentence.split(/\s+/).filter((word) => word !== '').length),
  );
}
