/**
 * An author's cues and set-up → what of them a drawing can be held to. Few turns of phrase, and only plain ones: what
 * might mean something else asks nothing. English alone; a library in another language is not held to its words.
 */
import type { Words } from '../model/exercise.js';
import type { Asked, FigureAsk } from '../model/figure-ask.js';
import { plainText } from '../model/prose.js';

interface Phrase {
  readonly form: RegExp;
  readonly asks: Asked;
}

const below: Asked = { what: 'deep', wanted: 'below' };
const level: Asked = { what: 'deep', wanted: 'level with' };
const straight = (limb: 'arm' | 'leg', both: boolean): Asked => ({ what: 'straight', limb, both });

/** Of a joint, “straight back” is a direction and not a shape; of a whole arm “straight up” is both. */
const NOT_A_WAY = '(?! (?:up|down|on|ahead|out|back|at|to|towards|through|over|under|line|pole))';
const NOT_BACK = '(?! (?:back|on|at|to|towards|through|line|pole))';

const PHRASES: readonly Phrase[] = [
  {
    form: /\b(?:hips?|creases?(?: of (?:the|your) hips?)?) (?:\w+ )?(?:below|lower than) (?:the |your )?(?:tops? of (?:the |your )?)?knees?\b/,
    asks: below,
  },
  { form: /\bthighs? (?:level|parallel)\b/, asks: level },
  { form: /\bhips? (?:as low as|level with) (?:the |your )?knees?\b/, asks: level },
  {
    form: new RegExp(`\\barms (?:(?:are|as|grow|stay|quite|both) ){0,2}(?:straight|long)\\b${NOT_BACK}`),
    asks: straight('arm', true),
  },
  { form: /\b(?:long|straight|straighten) (?:(?:the|your|both) )*arms\b/, asks: straight('arm', true) },
  {
    form: new RegExp(`\\belbows (?:(?:are|stay|quite|both) ){0,2}(?:straight|locked)\\b${NOT_A_WAY}`),
    asks: straight('arm', true),
  },
  { form: /\b(?:straighten|lock) (?:(?:the|your|both) )*elbows\b/, asks: straight('arm', true) },
  {
    form: new RegExp(`\\b(?:arm|elbow) (?:(?:is|stays|quite) )?(?:straight|locked)\\b${NOT_A_WAY}`),
    asks: straight('arm', false),
  },
  { form: /\b(?:straight|straighten|lock) (?:(?:the|your|one|that) )*(?:arm|elbow)\b/, asks: straight('arm', false) },
  {
    form: new RegExp(`\\b(?:legs|knees) (?:(?:are|as|stay|quite|both) ){0,2}straight\\b${NOT_A_WAY}`),
    asks: straight('leg', true),
  },
  { form: /\b(?:straight|straighten) (?:(?:the|your|both) )*(?:legs|knees)\b/, asks: straight('leg', true) },
  { form: new RegExp(`\\b(?:leg|knee) (?:(?:is|stays|quite) )?straight\\b${NOT_A_WAY}`), asks: straight('leg', false) },
  {
    form: /\b(?:straight|straighten) (?:(?:the|your|one|that|other|back|front) )*(?:leg|knee)\b/,
    asks: straight('leg', false),
  },
];

/** Before a phrase in the same clause these turn it round, or make it a picture of something else. */
const TURNED =
  /\b(?:not|never|no|nor|without|unless|before|avoid|stop|almost|nearly|half|above|as if|than|if)\b|n['’]t\b/;
const CLAUSE = /[,;:.!?—–()]/;

function asksOf(text: string): readonly Asked[] {
  const found = text
    .toLowerCase()
    .split(CLAUSE)
    .flatMap((clause) =>
      PHRASES.flatMap(({ form, asks }) => {
        const at = clause.search(form);
        return at < 0 || TURNED.test(clause.slice(0, at)) ? [] : [asks];
      }),
    );
  return found.filter(
    (asks, index) => found.findIndex((one) => JSON.stringify(one) === JSON.stringify(asks)) === index,
  );
}

export function readFigureAsks({ setUp, cues }: Pick<Words, 'setUp' | 'cues'>): readonly FigureAsk[] {
  const of = (phase: string | undefined, text: string): readonly FigureAsk[] =>
    asksOf(text).map((asks) => ({ phase, text, asks }));
  return [
    ...setUp.flatMap((line) => of(undefined, plainText(line))),
    // A cue of no phase may speak of any of them.
    ...cues.flatMap(({ phase, line }) => (phase === '' ? [] : of(phase, plainText(line)))),
  ];
}
