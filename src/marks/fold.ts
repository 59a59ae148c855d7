/**
 * What a message goes through on its way: quotation marks bent, spaces made unbreakable, lines quoted and wrapped.
 * A line is folded to what none of that changes, on both sides; what folding would change in a client's own words is
 * written as a sign that it leaves alone.
 */

const FOLDED: readonly (readonly [RegExp, string])[] = [
  [/[\u2018\u2019\u201a\u201b\u2032]/g, "'"],
  [/[\u201c\u201d\u201e\u201f\u2033]/g, '"'],
  [/[\u2010\u2011]/g, '-'],
  [/\u2026/g, '...'],
  [/[\s\u0085]/g, ' '],
  // Left out: controls, and marks of format that nobody sees; not the joiner inside an emoji.
  [/\p{Cc}|(?!\u200d)\p{Cf}/gu, ''],
];

const foldSigns = (text: string): string => FOLDED.reduce((so, [from, to]) => so.replace(from, to), text);

/** One line of a message as both sides compare it: signs folded, quoting and blanks at its ends gone, one blank at a time. */
export function foldLine(line: string): string {
  return foldSigns(line)
    .replace(/^[ >|]+/, '')
    .replace(/ +/g, ' ')
    .trim()
    .normalize('NFC');
}

const SIGNS: readonly (readonly [string, string])[] = [
  ['\\', '\\\\'],
  ['\n', '\\n'],
  ['\u2019', "\\'"],
  ['\u201c', '\\<'],
  ['\u201d', '\\>'],
  ['\u2026', '\\.'],
  ['\u00a0', '\\_'],
];
const SIGN_OF: ReadonlyMap<string, string> = new Map(SIGNS);
const LETTER_OF: ReadonlyMap<string, string> = new Map([...SIGNS.map(([a, b]) => [b, a] as const), ['\\s', ' ']]);

const byNumber = (letter: string): string => `\\u{${(letter.codePointAt(0) ?? 0).toString(16)}}`;

/** Any words at all as part of one line that folding leaves alone. `also` are letters that mean something around them. */
export function writeWords(text: string, also = ''): string {
  const composed = text.normalize('NFC') === text;
  const letters = Array.from(text, (letter) => {
    const sign = SIGN_OF.get(letter);
    if (sign !== undefined) return sign;
    const stands =
      foldSigns(letter) === letter && !/\p{Cs}/u.test(letter) && (composed || letter <= '~') && !also.includes(letter);
    return stands ? letter : byNumber(letter);
  });
  return letters.join('').replace(/^ | (?= )| $/g, '\\s');
}

/** The words again; `null` where a sign is none. */
export function readWords(text: string): string | null {
  let known = true;
  const words = text.replace(/\\(?:u\{([0-9a-f]{1,6})\}|[\s\S]|$)/g, (sign, number: string | undefined) => {
    const letter = number === undefined ? LETTER_OF.get(sign) : letterOf(Number.parseInt(number, 16));
    if (letter === undefined) known = false;
    return letter ?? '';
  });
  return known ? words : null;
}

const letterOf = (point: number): string | undefined => (point > 0x10ffff ? undefined : String.fromCodePoint(point));
