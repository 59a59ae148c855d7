/** What screening and the facts of health come to for one block. Whom they withhold stands beside it. */
import type { Caution } from '../../model/client.js';
import { addDays, type Day } from '../../model/day.js';
import type { Talk } from '../../model/plan.js';
import type { ModerateCause } from '../../model/problems-plan.js';
import type { Tenths } from '../../model/quantity.js';
import type { Rule } from '../../model/reason.js';
import { BIRTH_WINDOW } from '../rules/birth-window.js';
import { FIRST_WEEKS } from '../rules/first-weeks.js';
import { FLOOR_BEGINS } from '../rules/floor-begins.js';
import { FLOOR_LIGHT } from '../rules/floor-light.js';
import { FLOOR_MODERATE } from '../rules/floor-moderate.js';
import { PREGNANCY_LAST } from '../rules/pregnancy-last.js';
import { type Derived, deriveCautions } from './derive-cautions.js';
import { listHealth } from './list-health.js';
import { isWithin } from './read-birth.js';
import { knownDisease, readClearance } from './read-clearance.js';
import { readPressure } from './read-pressure.js';
import type { Screened } from './screened.js';

export interface Standing {
  /** Only moderate work: more left in reserve, no trials, no gates, nothing fast, talk test. */
  readonly moderate: boolean;
  /** Why it is moderate; empty where it is not. */
  readonly moderateBecause: readonly ModerateCause[];
  /** The coach's cautions and those that follow by a rule from a fact of health. */
  readonly cautions: readonly Caution[];
  /** Those that follow, by rule; `words` has for each rule what the client reads. */
  readonly derived: readonly Derived[];
  /** The highest floor of reserve that follows from it, for every week. */
  readonly floor: { readonly rule: Rule; readonly reserve: Tenths } | null;
  /** Floors for so many first weeks of this block. */
  readonly begins: readonly { readonly rule: Rule; readonly reserve: Tenths; readonly weeks: number }[];
  /** Breath never beyond this; `null` where the row decides. */
  readonly talk: Talk | null;
  /** No gain is counted on, no trial or gate is offered. */
  readonly steady: boolean;
  /** The last day a session may be held; `null` where the block runs to its end. */
  readonly lastDay: { readonly day: Day; readonly because: 'clearance' | 'due date' } | null;
  /** Facts of health, as the plan lists them. */
  readonly health: readonly { readonly fact: string; readonly value: string }[];
}

export function standingOf(screened: Screened): Standing {
  const { client, rules } = screened;
  const { birth, pregnancy } = client.health;
  const moderateBecause = causesOfModerate(screened);
  const moderate = moderateBecause.length > 0;
  const derived = deriveCautions(screened);
  const lately = birth !== undefined && isWithin(BIRTH_WINDOW, birth, screened);
  const weeks = rules.valueOf(FIRST_WEEKS);
  const floorOf = (rule: Rule) => ({ rule, reserve: rules.valueOf(rule) });
  return {
    moderate,
    moderateBecause,
    cautions: [...client.cautions, ...derived.map((one) => cautionOf(one, screened))],
    derived,
    floor: moderate ? floorOf(FLOOR_MODERATE) : null,
    begins: [
      ...(client.screening?.regularExercise === 'yes' ? [] : [{ ...floorOf(FLOOR_BEGINS), weeks }]),
      ...(lately ? [{ ...floorOf(FLOOR_LIGHT), weeks }] : []),
    ],
    talk: moderate ? 'sentences' : slowsHeart(screened) ? 'phrases' : null,
    steady: lately || pregnancy !== undefined,
    lastDay: lastDayOf(screened),
    health: listHealth(client.health),
  };
}

/** In the order of the six boxes, then of the facts on file. */
function causesOfModerate(screened: Screened): readonly ModerateCause[] {
  const { client } = screened;
  const { pregnancy, birth, conditions } = client.health;
  const pressure = readPressure(screened);
  const clearance = readClearance(screened);
  const free = client.screening?.regularExercise === 'yes' && clearance.allows === 'vigorous';

  const causes: readonly (readonly [ModerateCause, boolean])[] = [
    ['known disease', knownDisease(screened) === 'yes' && !free],
    ['clearance', clearance.onlyModerate],
    ['blood pressure', pressure.asks || pressure.unmeasured],
    ['pregnancy', pregnancy !== undefined],
    ['birth', birth !== undefined && isWithin(BIRTH_WINDOW, birth, screened)],
    ['vertebral fracture', (conditions ?? []).includes('vertebral fracture')],
  ];
  return causes.flatMap(([cause, holds]) => (holds ? [cause] : []));
}

/** A medicine that slows the heart, or nobody asked. */
const slowsHeart = ({ client }: Screened): boolean =>
  client.health.medicines === undefined || client.health.medicines.includes('slows the heart');

/** Holds for the whole block, on both sides, throughout the movement; its author is the fact it follows from. */
function cautionOf({ fact, what, degree }: Derived, { client, firstDay }: Screened): Caution {
  return { what, degree, side: 'both', phases: [], from: firstDay, by: fact, place: client.place };
}

/** The earlier of the day a clearance ends and the day a child is due, where either is before the block's end. */
function lastDayOf(screened: Screened): Standing['lastDay'] {
  const { client, lastDay, rules } = screened;
  const { ends } = readClearance(screened);
  const { pregnancy } = client.health;
  const due = pregnancy === undefined ? null : addDays(pregnancy.due, -rules.valueOf(PREGNANCY_LAST));
  if (ends !== null && (due === null || ends <= due)) return { day: ends, because: 'clearance' };
  return due !== null && due < lastDay ? { day: due, because: 'due date' } : null;
}
