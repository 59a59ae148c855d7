/**
 * The demo's library hangs together: every loaded exercise leads, easier by easier, to one that needs no kit; whatever
 * an exercise asks of a body can be spared; and what may not go home unseen is named.
 */
import { beforeAll, describe, expect, test } from 'vitest';
import { muscleOf } from '../../src/engine/audit/muscle-groups.js';
import { type LinksOf, linkVersions } from '../../src/engine/versions/linked-versions.js';
import { CAUSES_OF } from '../../src/engine/versions/regress-order.js';
import {
  BODY_PARTS,
  type BodyPart,
  CAUSES,
  type Cause,
  type Exercise,
  PATTERNS,
  type Pattern,
  QUALITIES,
  type Quality,
  WAYS,
} from '../../src/model/exercise.js';
import { speechOf } from '../../src/words/speech.js';
import { type ReadDemo, readDemo } from './demo-library.js';

let demo: ReadDemo;
beforeAll(async () => {
  demo = await readDemo();
});

const byId = (id: string): Exercise => {
  const found = demo.library.exercises.find((exercise) => exercise.id === id);
  if (found === undefined) throw new Error(`no exercise ${id}`);
  return found;
};
const linked = (versions: Exercise['words']['easier']): readonly Exercise[] =>
  versions.flatMap(({ to }) => (to.kind === 'exercise' ? [byId(to.id)] : []));
const needsNothing = ({ facts }: Exercise): boolean => facts.kit.load.length === 0 && facts.kit.things.length === 0;
const asks = ({ facts }: Exercise, of: BodyPart | Quality): boolean => facts.asks.some((ask) => ask.of === of);

function easierThan(exercise: Exercise): ReadonlySet<Exercise> {
  const reached = new Set<Exercise>();
  const waiting = [exercise];
  for (let next = waiting.pop(); next !== undefined; next = waiting.pop()) {
    for (const easier of linked(next.words.easier)) {
      if (reached.has(easier)) continue;
      reached.add(easier);
      waiting.push(easier);
    }
  }
  return reached;
}

const isQuality = (of: BodyPart | Quality): of is Quality => QUALITIES.some((quality) => quality === of);
const isPart = (of: BodyPart | Quality): of is BodyPart => BODY_PARTS.some((part) => part === of);

/** A way of its own spares it, or a path with a link that is for it leads to an exercise that does not ask it. */
function canBeSpared(exercise: Exercise, of: BodyPart | Quality, linksOf: LinksOf): boolean {
  const causes: readonly Cause[] = isPart(of) ? [of] : isQuality(of) ? CAUSES_OF[of] : [];
  const isFor = (link: { readonly causes: readonly Cause[] }): boolean =>
    link.causes.some((cause) => causes.includes(cause));
  const before = new Set([exercise]);
  const after = new Set<Exercise>();
  for (const at of before) {
    if (linksOf(at).easierWays.some(isFor)) return true;
    for (const link of linksOf(at).easier) (isFor(link) ? after : before).add(link.to);
  }
  for (const at of after) {
    if (!asks(at, of)) return true;
    for (const { to } of linksOf(at).easier) after.add(to);
  }
  return false;
}

/**
 * Where nothing unloaded is of the pattern itself and may go home unseen, what is nearest to it: a carry is a walk with
 * a load, and what keeps the trunk from turning braces it.
 */
const NEIGHBOURS: Readonly<Partial<Record<Pattern, Pattern>>> = { carry: 'travel', rotate: 'brace' };

/** Patterns whose depth can be cut short. */
const DEEP: readonly Pattern[] = ['squat', 'hinge', 'lunge', 'push'];

const isCause = (of: string): of is Cause => CAUSES.some((cause) => cause === of);
const hasLineFor = ({ words }: Exercise, cause: Cause): boolean =>
  words.easier.some(({ causes }) => causes.includes(cause));

/** Seen before they go home: fast, overhead, turned under a load, or too heavy to set down anywhere but on a bar. */
const PASSED_FIRST = [
  'bar-deadlift',
  'bar-front-squat',
  'bar-row',
  'clean-and-press',
  'dead-clean',
  'dead-stop-swing',
  'double-front-squat',
  'double-press',
  'elbow-get-up',
  'get-up',
  'half-kneeling-press',
  'one-arm-swing',
  'overhead-carry',
  'overhead-press',
  'two-hand-swing',
];

describe('the library', () => {
  test('eighty-two exercises at least, in every way of working and of every pattern', () => {
    const { exercises } = demo.library;
    expect(exercises.length).toBeGreaterThanOrEqual(82);
    expect(new Set(exercises.map(({ facts }) => facts.way))).toEqual(new Set(WAYS));
    expect(new Set(exercises.map(({ facts }) => facts.pattern))).toEqual(new Set(PATTERNS));
  });

  test('every loaded exercise reaches one that needs no kit', () => {
    for (const exercise of demo.library.exercises.filter(({ facts }) => facts.kit.load.length > 0)) {
      expect([...easierThan(exercise)].some(needsNothing), exercise.id).toBe(true);
    }
  });

  test('and one of its own movement pattern, or of the nearest to it, that goes home unseen', () => {
    for (const exercise of demo.library.exercises.filter(({ facts }) => facts.kit.load.length > 0)) {
      const { pattern, way } = exercise.facts;
      if (way === 'mobility') continue;
      const near = [...easierThan(exercise)].filter(
        ({ facts }) =>
          facts.kit.load.length === 0 && !facts.signOff && [pattern, NEIGHBOURS[pattern]].includes(facts.pattern),
      );
      expect(near.length, exercise.id).toBeGreaterThan(0);
    }
  });

  test('what it asks of grip, balance, speed, the floor or a sore place has an easier line by that name on its page', () => {
    const without = demo.library.exercises.flatMap((exercise) =>
      exercise.facts.asks
        .filter(({ of }) => isCause(of) && !hasLineFor(exercise, of))
        .map(({ of }) => `${exercise.id}: ${of}`),
    );
    expect(without).toEqual([]);
    const asked = demo.library.exercises.filter((exercise) => asks(exercise, 'grip'));
    expect(asked.length).toBeGreaterThan(20);
  });

  test('no easier exercise is for what it asks more of', () => {
    const degree = ({ facts }: Exercise, of: Cause): number =>
      ['some', 'much'].indexOf(facts.asks.find((ask) => ask.of === of)?.degree ?? '') + 1;
    const odd = demo.library.exercises.flatMap((exercise) =>
      exercise.words.easier.flatMap(({ to, causes }) => {
        const easier = to.kind === 'exercise' ? byId(to.id) : exercise;
        return causes
          .filter((of) => degree(easier, of) > degree(exercise, of))
          .map((of) => `${exercise.id} → ${easier.id}: ${of}`);
      }),
    );
    expect(odd).toEqual([]);
  });

  test('what is trained by load or by the body’s own has a line for load; what goes deep comes to one for range', () => {
    for (const exercise of demo.library.exercises) {
      const { way, kit, pattern, measure } = exercise.facts;
      if (way === 'mobility' || measure === 'one-leg stand') continue;
      if (kit.load.length > 0 || way === 'strength' || way === 'bodyweight')
        expect(hasLineFor(exercise, 'load'), exercise.id).toBe(true);
      const below = [exercise, ...easierThan(exercise)];
      if (DEEP.includes(pattern) && measure === undefined)
        expect(
          below.some((each) => hasLineFor(each, 'range')),
          exercise.id,
        ).toBe(true);
    }
  });

  test('a heel raise too hard leads to another exercise, for load', () => {
    const { easier } = byId('heel-raise').words;
    expect(easier.filter(({ to, causes }) => to.kind === 'exercise' && causes.includes('load'))).not.toEqual([]);
  });

  test('from a swing or a clean the next step down is still done with a load: empty hands are no neighbour of it', () => {
    for (const exercise of demo.library.exercises.filter(({ facts }) => facts.way === 'swing')) {
      expect(exercise.facts.pattern).toBe('hinge');
      for (const easier of linked(exercise.words.easier))
        expect(needsNothing(easier) || easier.facts.kit.things.includes('wall'), `${exercise.id} → ${easier.id}`).toBe(
          false,
        );
    }
  });

  test('every link resolves, and none leads in a circle', () => {
    for (const exercise of demo.library.exercises) {
      linked([...exercise.words.easier, ...exercise.words.harder]);
      expect(easierThan(exercise).has(exercise), exercise.id).toBe(false);
    }
  });

  test('harder on one page is never also easier on the way back round', () => {
    for (const exercise of demo.library.exercises) {
      for (const harder of linked(exercise.words.harder)) {
        expect(easierThan(exercise).has(harder), `${exercise.id} → ${harder.id}`).toBe(false);
      }
    }
  });

  test('no exercise stands alone, but what loosens a joint and can stand in a warm-up or cool-down', () => {
    const joined = new Set(
      demo.library.exercises.flatMap(({ words }) => linked([...words.easier, ...words.harder]).map(({ id }) => id)),
    );
    for (const exercise of demo.library.exercises) {
      expect(exercise.words.easier.length, exercise.id).toBeGreaterThan(0);
      const links = linked([...exercise.words.easier, ...exercise.words.harder]).length;
      if (links === 0 && !joined.has(exercise.id)) expect(exercise.facts.pattern, exercise.id).toBe('mobility');
    }
  });

  test('what is fast, overhead, turned under a load or done with a bar is seen before it goes home', () => {
    const passed = demo.library.exercises.filter(({ facts }) => facts.signOff).map(({ id }) => id);
    expect(passed).toEqual(PASSED_FIRST);
    for (const exercise of demo.library.exercises) {
      const { way, room, kit, signOff } = exercise.facts;
      const bars = kit.load.length > 0 && kit.load.every(({ kind }) => kind === 'bar');
      const grave = asks(exercise, 'speed') || asks(exercise, 'loaded twist') || room.ceiling === 'load overhead';
      if (grave || bars || way === 'swing') expect(signOff, exercise.id).toBe(true);
    }
  });

  test('no two are called the same in the middle of a sentence', () => {
    const { inSentence } = speechOf('en-GB').words.sets;
    const called = demo.library.exercises.map(({ name }) => inSentence(name));
    expect(called.filter((name, i) => called.indexOf(name) !== i)).toEqual([]);
  });

  test('whatever an exercise asks can be spared: a way of its own, or links that end where it is not asked', () => {
    const linksOf = linkVersions(new Map(demo.library.exercises.map((each) => [each.id, each])));
    const stuck = demo.library.exercises.flatMap((exercise) =>
      exercise.facts.asks
        .filter(({ of }) => !canBeSpared(exercise, of, linksOf))
        .map(({ of }) => `${exercise.id}: ${of}`),
    );
    expect(stuck).toEqual([]);
  });

  test('what is held in the hand asks the hand; whoever stands with arms overhead needs a ceiling', () => {
    for (const exercise of demo.library.exercises) {
      const { kit, room, holds } = exercise.facts;
      if (kit.load.length > 0 && holds !== 'assisted') expect(asks(exercise, 'hand'), exercise.id).toBe(true);
      if (asks(exercise, 'overhead') && !asks(exercise, 'lying on the back'))
        expect(room.ceiling, exercise.id).not.toBe('any');
      if (room.ceiling === 'load overhead') expect(asks(exercise, 'overhead'), exercise.id).toBe(true);
    }
  });

  test('every muscle is one that the weekly sets count', () => {
    const unknown = demo.library.exercises.flatMap(({ id, facts }) =>
      [...facts.muscles.main, ...facts.muscles.assisting]
        .filter((muscle) => muscleOf(muscle) === undefined)
        .map((muscle) => `${id}: ${muscle}`),
    );
    expect(unknown).toEqual([]);
  });

  test('thirty words for phases at most, and a word of its own only where the movement is', () => {
    const pages = new Map<string, Set<string>>();
    for (const { id, words } of demo.library.exercises)
      for (const { phase } of words.cues) pages.set(phase, (pages.get(phase) ?? new Set()).add(id));
    expect(pages.size).toBeLessThanOrEqual(30);
    const once = [...pages].filter(([, on]) => on.size === 1).flatMap(([, on]) => [...on]);
    const ofItsOwn = new Set([
      'get-up',
      'elbow-get-up',
      'dead-clean',
      'clean-and-press',
      'dead-stop-swing',
      'halo',
      'bear-crawl',
    ]);
    expect(once.filter((id) => !ofItsOwn.has(id))).toEqual([]);
  });

  test('what an exercise needs no other exercise for is said on its own page', () => {
    const ways = demo.library.exercises.filter(({ words }) => words.easier.some(({ to }) => to.kind === 'way'));
    expect(ways.length).toBeGreaterThanOrEqual(demo.library.exercises.length - 2);
  });
});

describe('the programmes', () => {
  test('five, and one of them a block of two weeks', () => {
    const { programmes } = demo.library;
    expect(programmes.map(({ id }) => id)).toEqual([
      'bands-away',
      'four-bells',
      'steady-threes',
      'three-days',
      'two-days',
    ]);
    expect(programmes.map(({ curve }) => curve.length)).toEqual([2, 6, 6, 6, 6]);
  });

  test('each expects three figures at least, in weeks that it has', () => {
    for (const { id, expectations, curve } of demo.library.programmes) {
      expect(expectations.length, id).toBeGreaterThanOrEqual(3);
      for (const { week } of expectations) expect(week, id).toBeLessThanOrEqual(curve.length);
    }
  });

  test('what is never cut and what goes first are rows of it, and no row is both', () => {
    for (const { id, sessions, neverCut, cutFirst } of demo.library.programmes) {
      const rows = new Set(
        sessions.flatMap(({ blocks }) => blocks.flatMap((block) => block.rows.map((row) => row.id))),
      );
      const named = [...neverCut, ...cutFirst];
      expect(
        named.filter((row) => !rows.has(row)),
        id,
      ).toEqual([]);
      expect(new Set(named).size, id).toBe(named.length);
      expect(neverCut.length, id).toBeGreaterThan(1);
    }
  });
});
