/** What a drawing shows, in words, for who does not see it. */
import { describe, expect, test } from 'vitest';
import { BODY_SIDES, type Contact, type Pose } from '../../src/model/pose.js';
import { english } from '../../src/words/english.js';
import { norwegian } from '../../src/words/norwegian.js';
import { sayDrawing } from '../../src/words/say-drawing.js';
import { standing } from '../fixtures/drawn.js';

const bears = (...parts: readonly ('foot' | 'toes' | 'knee' | 'hand' | 'forearm')[]): readonly Contact[] =>
  parts.flatMap((part) => BODY_SIDES.map((side): Contact => ({ part, side, on: 'floor' })));
const lies = (...parts: readonly ('back' | 'belly' | 'shoulders' | 'seat')[]): readonly Contact[] =>
  parts.map((part): Contact => ({ part, on: 'floor' }));

const pose = (more: Partial<Pose>): Pose => ({ ...standing('here'), ...more });
const said = (more: Partial<Pose>): string => sayDrawing([pose(more)], english.drawing);

describe('a drawing in words', () => {
  test.each<[string, Partial<Pose>]>([
    ['standing', {}],
    ['standing on one leg', { contacts: [{ part: 'foot', side: 'right', on: 'floor' }] }],
    ['on the toes', { contacts: bears('toes') }],
    ['feet one before the other', { feet: { left: {}, right: { ahead: 60 } } }],
    ['sitting', { contacts: [...bears('foot'), ...lies('seat')] }],
    ['kneeling', { contacts: bears('knee') }],
    ['on hands and knees', { contacts: bears('hand', 'knee'), trunk: { lying: 'face down' } }],
    ['on hands and toes', { contacts: bears('hand', 'toes'), trunk: { lying: 'face down' } }],
    ['on the forearms', { contacts: bears('forearm', 'toes'), trunk: { lying: 'face down' } }],
    ['lying on the back', { contacts: lies('back'), trunk: { lying: 'face up' } }],
    ['hips lifted, shoulders on the floor', { contacts: [...bears('foot'), ...lies('shoulders')] }],
    ['lying on the belly', { contacts: lies('belly'), trunk: { lying: 'face down' } }],
  ])('says %s', (stance, more) => {
    expect(said(more)).toBe(`Seen from the side. Here: ${stance}.`);
  });

  test('says how the trunk leans, how far the knees bend, and what is held where', () => {
    const both = { left: 'chest', right: 'chest' } as const;
    const squat = { trunk: { lean: 45 }, knees: { left: 120, right: 120 }, hands: both };
    expect(said({ ...squat, kit: [{ kind: 'bell', held: 'both' }] })).toBe(
      'Seen from the side. Here: standing, trunk leaning far forward, knees deeply bent, a bell in both hands at the chest.',
    );
    expect(said({ hands: { left: undefined, right: 'hip' }, trunk: { lean: 2 } })).toBe(
      'Seen from the side. Here: standing, trunk upright, right hand on the hip.',
    );
  });

  test('names the view once as long as it stays, and every position by its own name', () => {
    const poses = [pose({ name: 'start' }), pose({ name: 'bottom' }), pose({ name: 'top', view: 'front' })];
    expect(sayDrawing(poses, english.drawing)).toBe(
      'Seen from the side. Start: standing. Bottom: standing. Seen from the front. Top: standing.',
    );
    expect(sayDrawing(poses, norwegian.drawing)).toBe(
      'Sett fra siden. Start: stående. Bottom: stående. Sett forfra. Top: stående.',
    );
  });
});
