/** What a drawing shows, for who does not see it: the words of each language that the sentences are put together from. */
import type { HandPlace, PoseKit, View } from '../model/pose.js';

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

export interface DrawingWords {
  readonly view: Readonly<Record<View, string>>;
  readonly stance: Readonly<Record<Stance, string>>;
  readonly upright: string;
  readonly leaning: (way: 'forward' | 'back', much: boolean) => string;
  readonly knees: Readonly<Record<'straight' | 'a little' | 'bent' | 'deep', string>>;
  readonly hands: Readonly<Record<HandPlace, string>>;
  readonly bothHands: (place: string) => string;
  readonly oneHand: (side: 'left' | 'right', place: string) => string;
  readonly kit: Readonly<Record<PoseKit['kind'], string>>;
  readonly held: Readonly<Record<'both' | 'each' | 'left' | 'right' | 'floor' | 'back', string>>;
}
