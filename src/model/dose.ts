/** Sets and reps in trade notation, as data. */
import type { Range, Seconds } from './quantity.js';

export type Dose =
  /** `3 × 8–12`, `4 × 6 each side` */
  | { readonly kind: 'sets'; readonly sets: number; readonly reps: Range; readonly eachSide: boolean }
  /** `3 × 30 s`, `3 × 20–40 s each side` */
  | { readonly kind: 'timed'; readonly sets: number; readonly seconds: Range; readonly eachSide: boolean }
  /** `3 × 20 m` */
  | { readonly kind: 'distance'; readonly sets: number; readonly metres: Range; readonly eachSide: boolean }
  /** `10 min: 8 every minute`, `10 min: 8 every 90 s` */
  | { readonly kind: 'every'; readonly minutes: number; readonly reps: number; readonly everySeconds: Seconds }
  /** `15 main + 5 next up` */
  | { readonly kind: 'main-next'; readonly main: number; readonly next: number }
  /** `1-2-3 × 4`: rising or falling reps, so many times through */
  | { readonly kind: 'steps'; readonly reps: readonly number[]; readonly times: number }
  /** `3 rounds` */
  | { readonly kind: 'rounds'; readonly rounds: number };

/** Effort asked for, as the coach wrote it. */
export type Effort =
  | { readonly kind: 'reserve'; readonly tenths: number }
  /** Rating of perceived exertion, 10 = nothing left; 8.5 is 85. */
  | { readonly kind: 'rpe'; readonly tenths: number }
  | { readonly kind: 'percent'; readonly percent: number }
  /** By the talk test: whole sentences, or short phrases. */
  | { readonly kind: 'talk'; readonly level: 'sentences' | 'phrases' };

/** A bell by its role for this client and movement pattern. */
export type BellRole = 'main' | 'lighter' | 'next up';
