/**
 * Least doses of training and the counting of sets, as published; and the regions of the muscles.
 *
 * - Pelland et al. 2024 (preprint): sets counted as 1 direct, 0.5 indirect fitted best. Confirmed.
 * - Iversen et al. 2021, Sports Med 51:2079-2095: at least 4 weekly sets a muscle group. Confirmed.
 * - WHO guidelines 2020: all major groups on 2 days a week or more; from 65 balance and strength on 3 or more. Seen in
 *   reproductions of its fact sheet.
 * - Giangregorio et al. 2014, Osteoporos Int 25:821-835, table 4: balance and spinal extensors daily. Confirmed; that a
 *   booklet asks it of training days alone is ours.
 * - Physical Activity Guidelines for Americans, 2nd edition, 2018: legs, hips, back, abdomen, chest, shoulders, arms.
 *   Confirmed on the page of the Centers for Disease Control and Prevention.
 * - Terminologia Anatomica (1998), codes of chapter A04: from memory.
 */
import { describe, expect, it } from 'vitest';
import { EVERY_MUSCLE, muscleOf } from '../../src/engine/audit/muscle-groups.js';
import { RULES_OF_THE_AUDIT } from '../../src/engine/rules-of-the-audit.js';
import { MUSCLE_GROUPS } from '../../src/model/weekly-sets.js';

const PUBLISHED: readonly (readonly [string, number, string])[] = [
  ['audit-direct-set', 1000, 'per-mille'],
  ['audit-indirect-set', 500, 'per-mille'],
  ['audit-weekly-sets', 4, 'sets'],
  ['audit-group-days', 2, 'days'],
  ['audit-balance-days', 3, 'days'],
];

describe('least doses', () => {
  it.each(PUBLISHED)('%s is %d %s', (id, value, unit) => {
    const rule = RULES_OF_THE_AUDIT.find((each) => each.id === id);
    expect(rule).toMatchObject({ value, unit, standing: 'published' });
  });

  it('names the seven major groups', () => {
    expect([...MUSCLE_GROUPS]).toEqual(['legs', 'hips', 'back', 'abdomen', 'chest', 'shoulders', 'arms']);
  });
});

/** Region by the third part of a code: 3 back, 4 thorax, 5 abdomen, 6 upper limb, 7 lower limb. */
const REGIONS: Readonly<Record<string, readonly string[]>> = {
  '3': ['back'],
  '4': ['chest'],
  '5': ['abdomen'],
  '6': ['shoulders', 'arms'],
  '7': ['hips', 'legs'],
};

const CODES: readonly (readonly [string, string])[] = [
  ['trapezius', 'A04.3.01.001'],
  ['latissimus dorsi', 'A04.3.01.006'],
  ['rhomboid major', 'A04.3.01.007'],
  ['rhomboid minor', 'A04.3.01.008'],
  ['levator scapulae', 'A04.3.01.009'],
  ['erector spinae', 'A04.3.02.002'],
  ['pectoralis major', 'A04.4.01.002'],
  ['pectoralis minor', 'A04.4.01.006'],
  ['serratus anterior', 'A04.4.01.008'],
  ['rectus abdominis', 'A04.5.01.001'],
  ['external oblique', 'A04.5.01.008'],
  ['internal oblique', 'A04.5.01.013'],
  ['transversus abdominis', 'A04.5.01.019'],
  ['quadratus lumborum', 'A04.5.01.027'],
  ['levator ani', 'A04.5.04.002'],
  ['deltoid', 'A04.6.02.002'],
  ['supraspinatus', 'A04.6.02.006'],
  ['infraspinatus', 'A04.6.02.008'],
  ['teres minor', 'A04.6.02.010'],
  ['teres major', 'A04.6.02.011'],
  ['subscapularis', 'A04.6.02.012'],
  ['biceps brachii', 'A04.6.02.013'],
  ['coracobrachialis', 'A04.6.02.017'],
  ['brachialis', 'A04.6.02.018'],
  ['triceps brachii', 'A04.6.02.019'],
  ['brachioradialis', 'A04.6.02.038'],
  ['iliopsoas', 'A04.7.02.002'],
  ['gluteus maximus', 'A04.7.02.006'],
  ['gluteus medius', 'A04.7.02.007'],
  ['gluteus minimus', 'A04.7.02.008'],
  ['piriformis', 'A04.7.02.011'],
  ['quadriceps femoris', 'A04.7.02.019'],
  ['adductor magnus', 'A04.7.02.028'],
  ['biceps femoris', 'A04.7.02.032'],
  ['semitendinosus', 'A04.7.02.035'],
  ['semimembranosus', 'A04.7.02.036'],
  ['tibialis anterior', 'A04.7.02.037'],
  ['triceps surae', 'A04.7.02.043'],
];

describe('muscles', () => {
  it.each(CODES)('%s (%s) stands in its region', (name, code) => {
    expect(REGIONS[code.split('.')[1] ?? '']).toContain(muscleOf(name)?.group);
  });

  it('reaches every group, and no name means two muscles', () => {
    expect(new Set(EVERY_MUSCLE.map(({ group }) => group))).toEqual(new Set(MUSCLE_GROUPS));
    expect(new Set(EVERY_MUSCLE.map(({ name }) => name)).size).toBe(EVERY_MUSCLE.length);
  });

  it('reads a name as it is written, and makes nothing of one it does not know', () => {
    expect(muscleOf(' Gluteus Maximus ')?.name).toBe('gluteus maximus');
    expect(['core', 'glutes', '', 'biceps'].map(muscleOf)).toEqual([undefined, undefined, undefined, undefined]);
  });
});
