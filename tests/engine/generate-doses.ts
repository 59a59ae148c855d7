/** Doses, efforts and bells for rows of every way of working: nearly always such as the way takes. */
import type { BellRole, Dose, Effort } from '../../src/model/dose.js';
import type { Exercise } from '../../src/model/exercise.js';
import type { Range } from '../../src/model/quantity.js';
import type { Chance } from './chance.js';

type Kind = Dose['kind'];

const WALKED: readonly Kind[] = ['sets', 'sets', 'sets', 'timed', 'every', 'steps'];

function kindsFor({ facts }: Exercise): readonly Kind[] {
  if (facts.holds === 'band' || facts.holds === 'assisted') return ['sets', 'timed'];
  switch (facts.way) {
    case 'strength':
    case 'combination':
      return WALKED;
    case 'bodyweight':
      return [...WALKED, 'distance'];
    case 'swing':
      return ['sets', 'timed', 'every', 'main-next', 'steps'];
    case 'hold':
      return ['sets', 'timed', 'timed'];
    case 'carry':
      return ['timed', 'distance', 'distance'];
    case 'mobility':
      return ['sets', 'timed', 'rounds'];
    case 'conditioning':
      return ['sets', 'timed', 'distance', 'every', 'rounds'];
  }
}

export function generateDose(exercise: Exercise, chance: Chance): Dose {
  const misfit = chance.happens(1);
  const kind = misfit ? chance.oneOf<Kind>(['distance', 'main-next', 'rounds']) : chance.oneOf(kindsFor(exercise));
  const sets = chance.whole(1, 5);
  const eachSide = exercise.facts.sides !== 'both';
  const range = (least: number, most: number, by: number): Range => {
    const min = by * chance.whole(least, most);
    return { min, max: min + by * chance.whole(0, 4) };
  };
  switch (kind) {
    case 'sets':
      return { kind, sets, reps: range(3, 10, 1), eachSide };
    case 'timed':
      return { kind, sets, seconds: range(3, 8, 5), eachSide };
    case 'distance':
      return { kind, sets, metres: range(2, 5, 5), eachSide };
    case 'every':
      return {
        kind,
        minutes: chance.whole(3, 12),
        reps: chance.whole(2, 8),
        everySeconds: chance.oneOf([60, 90, 120]),
      };
    case 'main-next':
      return { kind, main: chance.whole(5, 15), next: chance.whole(2, 6) };
    case 'steps': {
      const rising = [1, 2, 3, 4, 5].slice(0, chance.whole(2, 5));
      return { kind, reps: chance.happens(70) ? rising : [...rising].reverse(), times: chance.whole(1, 4) };
    }
    case 'rounds':
      return { kind, rounds: chance.whole(1, 4) };
  }
}

export function generateEffort({ facts }: Exercise, chance: Chance): Effort | undefined {
  if (facts.way === 'conditioning') {
    return chance.oneOf<Effort | undefined>([
      undefined,
      { kind: 'talk', level: 'sentences' },
      { kind: 'talk', level: 'phrases' },
    ]);
  }
  const walked = facts.way === 'strength' || facts.way === 'bodyweight' || facts.way === 'combination';
  if (!walked || facts.holds === 'band' || facts.holds === 'assisted') return undefined;
  return chance.oneOf<Effort | undefined>([
    undefined,
    undefined,
    undefined,
    { kind: 'reserve', tenths: 10 * chance.whole(1, 4) },
    { kind: 'rpe', tenths: 10 * chance.whole(7, 9) },
    facts.way === 'bodyweight' ? undefined : { kind: 'percent', percent: chance.whole(50, 85) },
  ]);
}

export function generateBell({ facts }: Exercise, chance: Chance): BellRole | undefined {
  const held = facts.kit.load.some(({ kind }) => kind === 'bell' || kind === 'dumbbell');
  return held && chance.happens(25) ? chance.oneOf<BellRole>(['main', 'main', 'lighter', 'next up']) : undefined;
}
