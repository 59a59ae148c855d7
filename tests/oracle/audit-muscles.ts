/**
 * Weekly working sets counted again from the plan and the facts of its exercises: by major muscle group, indirect sets
 * half, and by pattern; and held to what the plan tells the coach of them.
 */
import { z } from 'zod';
import type { PlanItem, PlanJson } from './plan-json.js';

export interface MuscleFacts {
  readonly id: string;
  readonly facts: {
    readonly pattern: string;
    readonly muscles: { readonly main: readonly string[]; readonly assisting: readonly string[] };
  };
}

/** The seven groups of the Physical Activity Guidelines for Americans, 2nd edition (2018), by anatomy; from memory. */
const GROUPS: Readonly<Record<string, RegExp>> = {
  legs: /^(quadriceps|rectus femoris|vastus|hamstrings|biceps femoris|semi|triceps surae|gastrocnemius|soleus|calves|tibialis anterior|fibularis|peroneals)/,
  hips: /^(gluteus|gluteals|adductor|abductors|tensor fasciae|gracilis|pectineus|iliopsoas|hip flexors|psoas|iliacus|deep rotators|piriformis)/,
  back: /^(latissimus|trapezius|(upper|middle|lower) trapezius|rhomboid|levator scapulae|erector spinae|spinal extensors|back extensors|longissimus|iliocostalis|spinalis|multifidus)/,
  abdomen:
    /^(rectus abdominis|transversus abdominis|obliques|(external|internal) oblique|quadratus lumborum|pelvic floor|levator ani)/,
  chest: /^(pectoralis|serratus anterior)/,
  shoulders:
    /^(deltoid|(anterior|middle|lateral|posterior) deltoid|rotator cuff|supraspinatus|infraspinatus|teres|subscapularis)/,
  arms: /^(biceps brachii|brachialis|brachioradialis|coracobrachialis|triceps brachii|forearm (flexors|extensors)|finger flexors)/,
};

const told = z.looseObject({
  rule: z.string(),
  weeks: z.array(z.number()),
  reason: z.looseObject({ inputs: z.array(z.looseObject({ name: z.string(), value: z.unknown() })) }),
});

interface Sides {
  left: number;
  right: number;
}

export function auditMuscles(plan: PlanJson, exercises: readonly MuscleFacts[]): string[] {
  const library = new Map(exercises.map((one) => [one.id, one.facts]));
  const ruled = (id: string): number => plan.rules.find((rule) => rule.id === id)?.value ?? 0;
  const expected = new Map<string, string[]>();
  const expect = (rule: string, what: string) => expected.set(rule, [...(expected.get(rule) ?? []), what]);
  // The seventh day of a week that is whole is no later than the last day for sessions.
  const isCut = (begins: string): boolean =>
    plan.stops !== undefined && Date.parse(begins) + 6 * 86_400_000 > Date.parse(plan.stops.after);
  for (const week of plan.weeks.filter(({ deload, begins }) => !deload && !isCut(begins))) {
    const sums = new Map<string, Sides>();
    const add = (name: string, by: number, sides: Sides) => {
      const sum = sums.get(name) ?? { left: 0, right: 0 };
      sums.set(name, { left: sum.left + by * sides.left, right: sum.right + by * sides.right });
    };
    for (const [exercise, sides] of week.sessions.flatMap(({ groups }) => groups.filter(isCounted).flatMap(workedIn))) {
      const facts = library.get(exercise);
      if (facts === undefined) continue;
      add(`pattern ${facts.pattern}`, 10, sides);
      for (const [group, pattern] of Object.entries(GROUPS)) {
        const works = (names: readonly string[]): boolean =>
          names.some((name) => pattern.test(name.trim().toLowerCase()));
        const share = works(facts.muscles.main)
          ? ruled('audit-direct-set')
          : works(facts.muscles.assisting)
            ? ruled('audit-indirect-set')
            : 0;
        add(group, share / 100, sides);
      }
    }
    const fewest = (name: string): number => Math.min(sums.get(name)?.left ?? 0, sums.get(name)?.right ?? 0);
    for (const group of Object.keys(GROUPS)) {
      if (fewest(group) < 10 * ruled('audit-weekly-sets')) expect('audit-weekly-sets', `${week.number} ${group}`);
    }
    const off = (rule: string, one: number, other: number) => {
      if (1000 * Math.max(one, other) > ruled(rule) * Math.min(one, other)) expect(rule, String(week.number));
    };
    off('audit-push-pull', fewest('pattern push'), fewest('pattern pull'));
    off('audit-squat-hinge', fewest('pattern squat') + fewest('pattern lunge'), fewest('pattern hinge'));
  }
  return ['audit-weekly-sets', 'audit-push-pull', 'audit-squat-hinge'].flatMap((rule) => {
    const must = [...(expected.get(rule) ?? [])].sort().join(', ');
    const said = saidOf(plan, rule).sort().join(', ');
    return must === said ? [] : [`${rule}: told of ${said || 'nothing'}, counted again ${must || 'nothing'}`];
  });
}

/** Week and group, or the week alone. */
function saidOf(plan: PlanJson, rule: string): string[] {
  const findings = plan.findings.map((finding) => told.parse(finding)).filter((one) => one.rule === rule);
  return findings.flatMap(({ weeks, reason }) => {
    const groups = reason.inputs.flatMap(({ name, value }) => (name === 'group' ? [String(value)] : []));
    return weeks.flatMap((week) => (groups.length === 0 ? [String(week)] : groups.map((group) => `${week} ${group}`)));
  });
}

const isCounted = ({ kind }: { readonly kind: string }): boolean => kind !== 'warm-up' && kind !== 'cool-down';

/** Sets of work, trials and tests; a set of both sides, or of sides in turn, counts for each. */
function workedIn({ items }: { readonly items: readonly PlanItem[] }): (readonly [string, Sides])[] {
  return items.flatMap((item) => {
    if (item.way === 'mobility' || item.way === 'conditioning') return [];
    const sets = item.sets.filter(
      ({ kind, optional }) => ['work', 'trial', 'test'].includes(kind) && optional !== true,
    );
    return sets.map(({ exercise, side }) => {
      const sides = { left: side === 'right' ? 0 : 1, right: side === 'left' ? 0 : 1 };
      return [exercise ?? item.exercise, sides] as const;
    });
  });
}
