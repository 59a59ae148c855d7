/**
 * Chooses words at random from a published list: 2048 English words of three to eight letters, no two alike in their first
 * four (BIP-0039; as `@scure/bip39` carries it, MIT licence). A client reads them off a slip of paper from their
 * coach: words that are no pleasure to find there are left out.
 */
import { wordlist } from '@scure/bip39/wordlists/english.js';

const LEFT_OUT = new Set(
  `abandon absurd abuse accident accuse acid addict afraid alarm alcohol alien amateur anger angry ankle anxiety arm armed
  army arrest arrow assault asthma attack awful awkward betray bitter blame blast bleak blind blood body bomb bone brain
  brutal bullet burden burst cannon casino chaos cigar clinic coil cough crash crazy crime cruel crumble crush cry damage
  danger death debris decline demise denial despair destroy dirt disease disorder divorce dizzy doctor dose drastic drip
  drop drug duck dumb dwarf elbow enemy erode evil execute exhaust exile explode eye eyebrow fade faint fall false fat
  fatal father fatigue fault fee fever fight fire flee foot fragile fury garbage gas gasp ghost gloom grief grit grunt
  guilt gun hammer hand harsh hazard head heart hip horror hospital hunt hurdle hurt idle ignore ill illegal illness
  infant inflict inject injury inmate insane jealous junk kick kidney knee knife lawsuit lazy leg liar limb lonely lose
  loyal lung mad mercy misery miss mistake monster mother muscle nasty neck negative nerve nose nuclear nurse obey pain
  panic patient penalty pig pill pistol police poverty pregnant prison protest pulse punch rebel regret reject rib rifle
  riot risk rough rude sad sadness satoshi scare scorpion shock shoe shoot shoulder shove sibling sick siege skin skull
  slam slave slim snake spine stomach sting struggle stumble suffer surgery suspect swear sword symptom tattoo terror
  thumb toe tongue tooth topple torch tragic trap trash trigger trouble ugly unfair unhappy upset useless vague vicious
  victim virus warfare weapon weird whip wolf worry wreck wrestle wrist wrong wound`.split(/\s+/),
);

export const WORDS: readonly string[] = wordlist.filter((word) => !LEFT_OUT.has(word));

/** Six of them: more than 64 bits, each guess of which costs as much as `WORDS_COUNT` makes it. */
const WORDS_GIVEN = 6;

/** `count` of at least six. */
export const bitsOfWords = (count = WORDS_GIVEN): number => count * Math.log2(WORDS.length);

/** Each word as likely as any other. */
export function chooseWords(count = WORDS_GIVEN): string {
  return Array.from({ length: Math.max(count, WORDS_GIVEN) }, () => WORDS[below(WORDS.length)]).join(' ');
}

/** A whole number from 0, drawn anew where it would favour the lower ones. */
function below(end: number): number {
  const fair = Math.floor(0x1_0000_0000 / end) * end;
  for (;;) {
    const [drawn = 0] = crypto.getRandomValues(new Uint32Array(1));
    if (drawn < fair) return drawn % end;
  }
}
