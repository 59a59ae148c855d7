/** Facts of health, breaks, clearances and main bells of made-up clients; most of them have few. */
import {
  type Birth,
  type Break,
  type Clearance,
  CONDITIONS,
  type Health,
  type MainBell,
  MEDICINES,
  PREGNANCY_ABSOLUTE,
  PREGNANCY_RELATIVE,
} from '../../src/model/client.js';
import { addDays, type Day } from '../../src/model/day.js';
import { PATTERNS } from '../../src/model/exercise.js';
import type { Mass } from '../../src/model/quantity.js';
import type { Chance } from './chance.js';
import { PLACE } from './generate-exercises.js';

export function generateHealth(chance: Chance, starts: Day): Health {
  return {
    ...(chance.happens(25) ? { medicines: chance.some(MEDICINES, 20) } : {}),
    ...(chance.happens(20) ? { conditions: chance.some(CONDITIONS, 20) } : {}),
    ...(chance.happens(12)
      ? {
          bloodPressure: {
            systolic: chance.oneOf([118, 128, 138, 152, 159, 160, 179, 180, 184]),
            diastolic: chance.oneOf([70, 82, 88, 99, 100, 109, 110]),
            date: addDays(starts, -chance.whole(1, 200)),
            cuff: chance.happens(50),
            place: PLACE,
          },
        }
      : {}),
    ...(chance.happens(5)
      ? {
          pregnancy: {
            due: addDays(starts, chance.whole(10, 240)),
            conditions: [...chance.some(PREGNANCY_ABSOLUTE, 1), ...chance.some(PREGNANCY_RELATIVE, 5)],
            place: PLACE,
          },
        }
      : {}),
    ...(chance.happens(5) ? { birth: birthOf(chance, starts) } : {}),
    ...(chance.happens(20) ? { falls: chance.whole(0, 3) } : {}),
  };
}

function birthOf(chance: Chance, starts: Day): Birth {
  const date = addDays(starts, -chance.whole(7, 300));
  return {
    date,
    by: chance.oneOf(['vaginal', 'caesarean'] as const),
    ...(chance.happens(80) ? { checked: addDays(date, chance.whole(20, 60)) } : {}),
    place: PLACE,
  };
}

/** Before the block, inside it, and across its start; none overlapping. */
export function generateBreaks(chance: Chance, starts: Day): readonly Break[] {
  const cause = () => chance.oneOf(['ill', 'away', 'hurt'] as const);
  const before = addDays(starts, -chance.whole(1, 30));
  const inside = addDays(starts, chance.whole(1, 35));
  return [
    ...(chance.happens(15)
      ? [{ from: addDays(before, -chance.whole(2, 60)), until: before, cause: cause(), place: PLACE }]
      : []),
    ...(chance.happens(12)
      ? [{ from: inside, until: addDays(inside, chance.whole(2, 20)), cause: cause(), place: PLACE }]
      : []),
  ];
}

export function generateClearance(chance: Chance, starts: Day): Clearance | undefined {
  if (!chance.happens(20)) return undefined;
  return {
    by: 'Nobody',
    date: addDays(starts, -chance.whole(20, 300)),
    ...(chance.happens(40) ? { until: addDays(starts, chance.whole(15, 200)) } : {}),
    for: chance.oneOf(['moderate', 'vigorous', 'vigorous'] as const),
  };
}

export const generateMainBells = (chance: Chance, bells: readonly Mass[]): readonly MainBell[] =>
  bells.length === 0 || !chance.happens(60)
    ? []
    : chance.some(PATTERNS, 40).map((pattern) => ({ pattern, mass: chance.oneOf(bells), place: PLACE }));
