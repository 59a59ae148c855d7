/** Every set by itself: its key, its side, its load, what it may be lifted with, and an easier way out. */
import { howMade, inOneHand, isSameBell, listMasses, whyNotMakeable } from './audit-kit.js';
import { type Placed, type PlanItem, type PlanJson, type PlanLoad, type PlanSet, workOf } from './plan-json.js';

/** Pounds are rounded to whole grams: one more is the same bell. */
const ROUNDING = 1;

/** Every load printed anywhere in an item, what follows straight after a set too, with the exercise it is for. */
function loadsIn(item: PlanItem): readonly { readonly exercise: string; readonly load: PlanLoad }[] {
  const all: { exercise: string; load: PlanLoad }[] = [];
  const add = (exercise: string, load: PlanLoad | undefined) => {
    if (load !== undefined) all.push({ exercise, load });
  };
  const addSets = (exercise: string, sets: readonly PlanSet[]) => {
    for (const set of sets) {
      add(set.exercise ?? exercise, set.load);
      add(set.exercise ?? exercise, set.then?.load);
      add(set.gate?.needs.exercise ?? exercise, set.gate?.needs.load);
      for (const other of set.otherwise ?? []) add(other.exercise, other.load);
      for (const choice of set.choose ?? []) add(choice.exercise, choice.load);
    }
  };
  addSets(item.exercise, item.sets);
  for (const other of [...item.easier, ...item.harder]) addSets(other.exercise ?? item.exercise, other.sets);
  return all;
}

export function auditLoads(plan: PlanJson): string[] {
  const { kit, signOffs, strands } = plan.inputs;
  const found: string[] = [];
  const limits = new Map<string, number>();
  for (const { exercise, signedOffTo } of strands.flatMap((strand) => strand.versions)) {
    if (signedOffTo !== null) limits.set(exercise, signedOffTo);
  }
  const items = plan.weeks.flatMap((week) => week.sessions.flatMap((s) => s.groups.flatMap((group) => group.items)));
  for (const item of items) {
    for (const { exercise, load } of loadsIn(item)) {
      const why = whyNotMakeable(load, kit);
      if (why !== undefined) found.push(`${item.id}: ${load.label} cannot be made: ${why}`);
      if (load.band !== undefined) continue;
      if (load.kg !== load.grams / 1000) found.push(`${item.id}: ${load.kg} kg is not ${load.grams} g`);
      const top = limits.get(exercise);
      const mass = Math.max(load.grams, inOneHand(load, kit));
      if (top !== undefined && mass > top + ROUNDING && !isSameBell(load, mass, top))
        found.push(`${item.id}: ${exercise} with ${load.label} is above what is signed off`);
    }
  }
  found.push(...auditRungLoads(plan, limits));
  const masses = listMasses(kit, plan.rules.find((rule) => rule.id === 'plates-a-side')?.value);
  for (const strand of strands) {
    for (const version of strand.versions) {
      const name = `${strand.id} ${version.exercise}`;
      const top = version.signedOffTo ?? Number.POSITIVE_INFINITY;
      const held = (load: { readonly pieces: readonly { readonly grams: number }[] }) =>
        load.pieces.reduce((sum, piece) => sum + piece.grams, 0);
      version.loads.forEach((load, index) => {
        const why = whyNotMakeable(load, kit);
        const before = version.loads[index - 1];
        if (why !== undefined) found.push(`${name}: ${load.label} cannot be made: ${why}`);
        if (before !== undefined && held(before) >= held(load)) found.push(`${name}: loads are not lightest first`);
        const hand = Math.max(load.grams, inOneHand(load, kit));
        if (hand > top + ROUNDING && !isSameBell(load, hand, top))
          found.push(`${name}: ${load.label} is above what is signed off`);
      });
      const parts = strand.way === 'combination';
      const signed = signOffs.some(
        (one) => (parts || one.exercise === version.exercise) && (one.grams ?? 0) + ROUNDING >= top,
      );
      if (version.signedOffTo !== null && !signed) found.push(`${name}: no sign-off reaches ${version.signedOffTo} g`);
      for (const how of new Set(version.loads.map((load) => howMade(load, kit)))) {
        if (how === undefined) continue;
        for (const grams of masses.get(how) ?? []) {
          const said = how.startsWith('two') && version.mode !== 'per-hand' ? 2 * grams : grams;
          const missing = !version.loads.some((load) => load.grams === said);
          const heaviest = Math.max(...version.loads.map((load) => load.grams));
          const capped = isCapped(plan, strand, CAPS) && (said > heaviest || isCapped(plan, strand, HELD));
          if (missing && said <= top && !capped) found.push(`${name}: ${said} g of ${how} is left out`);
        }
      }
    }
  }
  return found;
}

/** A part of a maximum, the lighter bell, or a circuit with too many bells leave the heavier loads out. */
const CAPS = ['percent-of-maximum', 'lighter-bell', 'circuit-bells'];
/** A circuit keeps to the very pieces it begins with. */
const HELD = ['circuit-bells'];

const isCapped = (
  plan: PlanJson,
  { session, row }: { readonly session: string; readonly row: string },
  by: readonly string[],
): boolean =>
  workOf(plan).some(
    (placed) =>
      placed.session.id === session &&
      placed.item.row === row &&
      placed.item.reasons.some(({ rule }) => by.includes(rule)),
  );

/** Loads of every rung of every ladder, and what comes straight after them. */
function auditRungLoads({ inputs }: PlanJson, limits: ReadonlyMap<string, number>): string[] {
  const { kit, ladders } = inputs;
  return ladders.flatMap(({ id, rungs }) =>
    rungs.flatMap(({ exercise, load, nextUp }, index) =>
      [load, nextUp].flatMap((one) => {
        if (one === null) return [];
        const why = whyNotMakeable(one, kit);
        const top = limits.get(exercise) ?? Number.POSITIVE_INFINITY;
        const held = one.band === undefined ? Math.max(one.grams, inOneHand(one, kit)) : 0;
        const above = held > top + ROUNDING && !isSameBell(one, held, top);
        const name = `${id} rung ${index + 1}: ${one.label}`;
        return [
          ...(why === undefined ? [] : [`${name} cannot be made: ${why}`]),
          ...(above ? [`${name} is above what is signed off`] : []),
        ];
      }),
    ),
  );
}

/** Block, occurrence, row, side, kind, ordinal. */
const KEY = /^(\d+)\/(\d+)\/([^/]+)\/(left|right|both)\/(warm-up|work|feeler|trial|test|cool-down)\/(\d+)$/;

export function auditKeys(plan: PlanJson): string[] {
  const found: string[] = [];
  const seen = new Set<string>();
  const blocks = new Set<string>();
  for (const week of plan.weeks) {
    for (const session of week.sessions) {
      for (const item of session.groups.flatMap((group) => group.items)) {
        const ordinals = new Map<string, number>();
        if (item.id !== `${session.id}/${item.row}/${week.number}`) found.push(`${item.id} is not session/row/week`);
        for (const set of item.sets) {
          if (seen.has(set.key)) found.push(`key ${set.key} stands twice`);
          seen.add(set.key);
          const [, block, occurrence, row, side, kind, ordinal] = KEY.exec(set.key) ?? [];
          const run = `${side}/${kind}`;
          const next = (ordinals.get(run) ?? 0) + 1;
          ordinals.set(run, next);
          blocks.add(block ?? '');
          const isRight =
            Number(occurrence) === session.occurrence &&
            row === item.row &&
            side === (set.side ?? 'both') &&
            kind === set.kind &&
            Number(ordinal) === next;
          if (!isRight) found.push(`key ${set.key} does not name its set`);
        }
      }
    }
  }
  if (blocks.size > 1) found.push(`keys of ${blocks.size} blocks`);
  return found;
}

/** Work and trial sets number rounds × sides, the weaker side first. */
export function auditSides(plan: PlanJson): string[] {
  return workOf(plan).flatMap((placed) => sidesOf(plan, placed).map((text) => `${placed.item.id}: ${text}`));
}

function sidesOf(plan: PlanJson, { item, session }: Placed): string[] {
  const found: string[] = [];
  const sets = item.sets.filter(({ kind }) => kind === 'work' || kind === 'trial' || kind === 'test');
  const hands = item.sides === 'each' ? 2 : 1;
  if (sets.length !== item.asked.sets * hands)
    found.push(`${sets.length} sets for ${item.asked.sets} on ${hands} sides`);
  const strand = plan.inputs.strands.find((one) => one.session === session.id && one.row === item.row);
  const weaker = strand?.capacity?.side;
  const trials = sets.filter((set) => set.kind === 'trial').length;
  if (trials !== 0 && trials !== hands) found.push(`${trials} trial sets`);
  if (hands === 1) {
    if (sets.some((set) => set.side !== undefined)) found.push('a side where both work');
    return found;
  }
  for (const side of ['left', 'right']) {
    const ofSide = sets.filter((set) => set.side === side);
    if (ofSide.length !== item.asked.sets) found.push(`${ofSide.length} sets on the ${side}`);
  }
  sets.forEach((set, index) => {
    const mate = sets[index + 1];
    if (index % 2 !== 0 || mate === undefined) return;
    if (set.side === mate.side) found.push(`two sets running on the ${set.side}`);
    if (set.reps !== mate.reps || set.kind !== mate.kind) found.push('the sides do not do the same');
    if ((weaker === 'left' || weaker === 'right') && set.side !== weaker) found.push('the stronger side goes first');
  });
  return found;
}

/** Everything has an easier way out, with sets that can be done, and reasons. */
export function auditEasier(plan: PlanJson): string[] {
  return workOf(plan).flatMap(({ item }) => {
    const found: string[] = [];
    if (item.easier.length === 0) found.push('no easier way');
    for (const easier of item.easier) {
      if (easier.say.trim() === '') found.push('an easier way without a name');
      if (easier.exercise === item.exercise) found.push('the easier way is the same exercise');
    }
    if (item.reasons.length === 0) found.push('no reasons');
    found.push(...easierThanSure(item));
    return found.map((text) => `${item.id}: ${text}`);
  });
}

const held = (load: PlanLoad | undefined): number => load?.pieces.reduce((sum, piece) => sum + piece.grams, 0) ?? 0;

/**
 * From a gate on the easier ways are read by those who passed it and by those who did not: no heavier and no more reps
 * than what is done otherwise. Against the week's own set they are judged where nothing stands otherwise.
 */
function easierThanSure(item: PlanItem): string[] {
  const found: string[] = [];
  const sure = item.sets.flatMap((set) => set.otherwise ?? [])[0] ?? item.sets.find((set) => set.kind === 'work');
  if (sure?.reps === undefined || (sure.load === undefined && item.capacity === null)) return found;
  for (const set of item.sets.filter(({ kind }) => kind === 'warm-up')) {
    if (held(set.load) > held(sure.load)) found.push(`a warm-up with ${set.load?.label} is heavier than what follows`);
  }
  for (const { say, sets } of item.easier) {
    for (const { load, reps } of sets) {
      if (held(load) > held(sure.load))
        found.push(`${say} with ${load?.label} is heavier than what is done in any case`);
      if ((reps ?? 0) > sure.reps) found.push(`${say} for ${reps} reps is more than what is done in any case`);
    }
  }
  return found;
}
