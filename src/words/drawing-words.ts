/** What a drawing shows, for who does not see it: the words of each language that the sentences are put together from. */
import type { BodySide, HandPlace, PoseKit, Surface, View } from '../model/pose.js';

/** How the body is borne, as one would say it at a glance. */
export type Stance =
  | 'standing'
  | 'standing on one leg'
  | 'on the toes'
  | 'in a stride'
  | 'sitting'
  | 'half kneeling'
  | 'kneeling'
  | 'on hands and knees'
  | 'on hands and feet'
  | 'on the forearms'
  | 'on the back'
  | 'bridging'
  | 'on the belly'
  | 'on the side'
  | 'on one arm';

/** How far a knee is bent. */
export type KneeBend = 'straight' | 'a little' | 'bent' | 'deep';

/** Where an arm is, seen from the body it hangs on: true whether that stands or lies. */
export type ArmPlace = 'hanging' | 'before' | 'head' | 'out' | 'across' | 'behind' | 'beside';
export type ArmBend = 'straight' | 'a little' | 'bent';

/** Of one side, or of both alike. */
export type Whose = BodySide | 'both';

export interface DrawingWords {
  readonly view: Readonly<Record<View, string>>;
  readonly stance: Readonly<Record<Stance, string>>;
  readonly upright: string;
  readonly leaning: (way: 'forward' | 'back' | BodySide, much: boolean) => string;
  readonly rounded: string;
  readonly arched: string;
  readonly bentAside: (way: BodySide) => string;
  readonly turned: (way: BodySide) => string;
  readonly feetWide: string;
  readonly footOut: (side: BodySide) => string;
  readonly knees: Readonly<Record<KneeBend, string>>;
  readonly oneKnee: (side: BodySide, bend: KneeBend) => string;
  readonly legLifted: (whose: Whose) => string;
  readonly legLow: (whose: Whose) => string;
  /** How arms are that have no place for their hands; either may be unknown. */
  readonly arm: (whose: Whose, bend: ArmBend | undefined, place: ArmPlace | undefined) => string;
  readonly hands: Readonly<Record<HandPlace, string>>;
  /** In place of `up` for somebody who lies. */
  readonly handToCeiling: string;
  readonly bothHands: (place: string) => string;
  readonly oneHand: (side: BodySide, place: string) => string;
  /** Where a hand that bears weight is. */
  readonly on: Readonly<Record<Surface, string>>;
  readonly kit: Readonly<Record<PoseKit['kind'], string>>;
  readonly held: Readonly<Record<'both' | 'each' | 'left' | 'right' | 'floor' | 'back', string>>;
}
