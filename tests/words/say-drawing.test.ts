/** What a drawing shows, in words, for who does not see it. */
import { describe, expect, test } from 'vitest';
import { BODY_SIDES, type Contact, type Pose } from '../../src/model/pose.js';
import { english } from '../../src/words/english.js';
import { norwegian } from '../../src/words/norwegian.js';
import { sayDrawing } from '../../src/words/say-drawing.js';
import { standing } from '../fixtures/drawn.js';
import { readDemo } from '../studio/demo-library.js';

const bears = (...parts: readonly ('foot' | 'toes' | 'knee' | 'hand' | 'forearm')[]): readonly Contact[] =>
  parts.flatMap((part) => BODY_SIDES.map((side): Contact => ({ part, side, on: 'floor' })));
const lies = (...parts: readonly ('back' | 'belly' | 'shoulders' | 'seat')[]): readonly Contact[] =>
  parts.map((part): Contact => ({ part, on: 'floor' }));

const pose = (more: Partial<Pose>): Pose => ({ ...standing('here'), ...more });
const said = (more: Partial<Pose>): string => sayDrawing([pose(more)], english.drawing);

const both = <Value>(value: Value) => ({ left: value, right: value });
const here = (more: Partial<Pose>): readonly [string, string] => [
  said(more).replace('Seen from the side. Here: ', ''),
  sayDrawing([pose(more)], norwegian.drawing).replace('Sett fra siden. Here: ', ''),
];

describe('a drawing in words', () => {
  test.each<[string, Partial<Pose>]>([
    ['standing', {}],
    ['standing on one leg, left leg lifted', { contacts: [{ part: 'foot', side: 'right', on: 'floor' }] }],
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

  test.each<[Partial<Pose>, string, string]>([
    [{ trunk: { bend: 30 } }, 'standing, back rounded.', 'stående, ryggen rundet.'],
    [{ trunk: { bend: -30 } }, 'standing, back arched.', 'stående, ryggen svaiet.'],
    [{ trunk: { turn: 20 } }, 'standing, chest turned to the left.', 'stående, brystet vendt mot venstre.'],
    [{ trunk: { sideBend: 20 } }, 'standing, trunk bent to the right.', 'stående, overkroppen bøyd mot høyre.'],
    [
      { trunk: { lean: 5, tip: -40 } },
      'standing, trunk leaning to the left.',
      'stående, overkroppen lent mot venstre.',
    ],
    [
      { feet: { left: {}, right: { out: 45 } } },
      'standing, right foot out to the side.',
      'stående, høyre fot ut til siden.',
    ],
    [
      { knees: { left: 95, right: 12 } },
      'standing, left knee deeply bent, right knee a little bent.',
      'stående, venstre kne dypt bøyd, høyre kne litt bøyd.',
    ],
    [
      { shoulders: both({ flex: 90 }), elbows: both(0) },
      'standing, arms straight before the chest.',
      'stående, armene strake foran brystet.',
    ],
    [
      { shoulders: { left: { flex: 170 }, right: { flex: 88, out: 88 } } },
      'standing, left arm beside the head, right arm out to the side.',
      'stående, venstre arm ved siden av hodet, høyre arm ut til siden.',
    ],
    [
      { shoulders: both({ flex: -25 }), elbows: both(95) },
      'standing, elbows bent behind the body.',
      'stående, albuene bøyd bak kroppen.',
    ],
    [
      { trunk: { lean: 60 }, shoulders: both({ flex: 55 }), elbows: both(0) },
      'standing, trunk leaning far forward, arms straight hanging down.',
      'stående, overkroppen lent langt fram, armene strake hengende ned.',
    ],
    [
      { contacts: lies('back'), trunk: { lying: 'face up' }, hips: { left: { flex: 90 }, right: { flex: 12 } } },
      'lying on the back, left leg lifted, right leg just above the floor.',
      'liggende på ryggen, venstre bein løftet, høyre bein like over gulvet.',
    ],
    [
      { contacts: lies('back'), trunk: { lying: 'face up' }, hands: both('up') },
      'lying on the back, hands up towards the ceiling.',
      'liggende på ryggen, hendene opp mot taket.',
    ],
    [
      {
        contacts: bears('hand', 'toes'),
        trunk: { lying: 'face down' },
        shoulders: both({ flex: 66 }),
        elbows: both(0),
      },
      'on hands and toes, arms straight.',
      'på hender og tær, armene strake.',
    ],
    [
      { contacts: [...bears('foot'), { part: 'hand', side: 'left', on: 'chair' }], kit: [{ kind: 'chair' }] },
      'standing, a chair, left hand on the chair.',
      'stående, en stol, venstre hånd på stolen.',
    ],
  ])('tells what limbs and back do: %#', (more, inEnglish, inNorwegian) => {
    expect(here(more)).toEqual([inEnglish, inNorwegian]);
  });

  test('what stands beside somebody is not said to be in the hands', () => {
    const hands = both('chest' as const);
    expect(here({ hands, kit: [{ kind: 'bell', held: 'both' }, { kind: 'chair' }] })[0]).toBe(
      'standing, a bell in both hands at the chest, a chair.',
    );
  });

  test.each([english, norwegian])('no position of the demo reads like the one before it', async ({ drawing }) => {
    const { library } = await readDemo();
    let read = 0;
    for (const { id, poses } of library.exercises) {
      const each = poses.map((one) => sayDrawing([{ ...one, name: 'here' }], drawing));
      read += each.length;
      for (const [index, text] of each.slice(1).entries()) expect(text, `${id}: ${index + 2}`).not.toBe(each[index]);
    }
    expect(read).toBeGreaterThan(2 * library.exercises.length);
  });
});
