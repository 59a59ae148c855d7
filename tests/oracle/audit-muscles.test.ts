/** Weekly sets counted again: silent where the plan tells the coach right, and heard where it does not. */
import { describe, expect, it } from 'vitest';
import { auditMuscles } from './audit-muscles.js';
import { exercises, itemOf, planOf } from './plan-of-case.js';

const anatomical = exercises.map((one) => {
  const names: Readonly<Record<string, string>> = {
    thighs: 'quadriceps',
    glutes: 'gluteus maximus',
    chest: 'pectoralis major',
  };
  const main = one.facts.muscles.main.map((name) => names[name] ?? name);
  return { ...one, facts: { ...one.facts, muscles: { ...one.facts.muscles, main } } };
});

describe('weekly sets, counted again', () => {
  it.each(['short-version', 'role-lighter', 'fewer-days', 'everything-at-once'])('agree with %s', (name) => {
    expect(auditMuscles(planOf(name), exercises)).toEqual([]);
  });

  it('see a group passed over, a group too many, and a week forgotten', () => {
    const plan = planOf('short-version');
    expect(auditMuscles(plan, anatomical).join('\n')).toMatch(/audit-weekly-sets: told of .*legs.*, counted again/);
    const silent = { ...plan, findings: plan.findings.filter(({ rule }) => rule !== 'audit-weekly-sets') };
    expect(auditMuscles(silent, exercises).join('\n')).toMatch(/audit-weekly-sets: told of nothing/);
  });

  it('see pushes without pulls and squats without hinges that nobody told', () => {
    const plan = planOf('short-version');
    const quiet = { ...plan, findings: [] };
    expect(auditMuscles(quiet, exercises).join('\n')).toMatch(
      /audit-push-pull: told of nothing, counted again 1, 2, 3/,
    );
    expect(auditMuscles(quiet, exercises).join('\n')).toMatch(/audit-squat-hinge: told of nothing, counted again 1, 2/);
  });

  it('see work of which nothing was counted', () => {
    const plan = planOf('role-lighter');
    for (const set of itemOf(plan, 'straight').sets) set.side = 'left';
    const before = auditMuscles(planOf('role-lighter'), anatomical);
    expect(auditMuscles(plan, anatomical)).not.toEqual(before);
  });
});
