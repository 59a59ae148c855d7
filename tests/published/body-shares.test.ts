/** The shares of body mass the demo's exercises claim, against the published tables they name. */
import { beforeAll, describe, expect, test } from 'vitest';
import { type ReadDemo, readDemo } from '../studio/demo-library.js';

let demo: ReadDemo;
beforeAll(async () => {
  demo = await readDemo();
});
const shareOf = (id: string) => demo.library.exercises.find((exercise) => exercise.id === id)?.facts.bodyShare;

/**
 * Ebben et al. 2011, Kinetic analysis of several variations of push-ups, J Strength Cond Res 25(10):2891-2894, n = 23:
 * peak force at the hands as a part of body mass.
 */
const PUSH_UP = { 'push-up': 0.64, 'knee-push-up': 0.49 };

/** Dempster's segment masses as printed by Winter, Biomechanics and Motor Control of Human Movement, table 4.1: parts of body mass. */
const FOOT_AND_SHANK = 0.061;

describe('body shares', () => {
  test.each(Object.entries(PUSH_UP))('%s is %d, as measured', (id, share) => {
    expect(shareOf(id)).toMatchObject({ share: Math.round(share * 1000), standing: 'published' });
    expect(shareOf(id)?.source).toContain('Ebben');
  });

  test('squats and lunges move all but shanks and feet', () => {
    const share = Math.round((1 - 2 * FOOT_AND_SHANK) * 1000);
    const moved = demo.library.exercises.filter(
      ({ id, facts }) =>
        (facts.pattern === 'squat' || (facts.pattern === 'lunge' && id !== 'supported-split-squat')) &&
        ['strength', 'bodyweight'].includes(facts.way) &&
        facts.holds !== 'band' &&
        facts.measure === undefined,
    );
    expect(moved.length).toBeGreaterThan(4);
    for (const { id, facts } of moved) {
      expect(facts.bodyShare, id).toMatchObject({ share, standing: 'derived' });
      expect(facts.bodyShare?.source, id).toContain('Dempster');
    }
  });

  // Capacity passes along a link only where both shares are known: another angle of the arm, or a hand on a chair, is no such case.
  test.each(['supported-split-squat', 'floor-press'])(
    '%s claims none, so nothing is derived across its links',
    (id) => {
      expect(shareOf(id)).toBeUndefined();
    },
  );

  test('where nothing is published, practice is called practice or nothing is claimed', () => {
    for (const { id, facts } of demo.library.exercises) {
      if (facts.bodyShare === undefined || facts.bodyShare.standing === 'practice') continue;
      const sourced = facts.bodyShare.share === 0 || /Ebben|Dempster/.test(facts.bodyShare.source);
      expect(sourced, id).toBe(true);
    }
  });
});
