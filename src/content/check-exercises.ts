/** What every exercise must say before it may stand in a booklet, and facts of it that must go together. */
import type { Facts } from '../model/exercise.js';
import type { LoadNeed } from '../model/kit.js';
import type { Place } from '../model/place.js';
import { nearestOf } from './nearest.js';
import { placeOf, placeOfEntry } from './open-file.js';
import { knownPhases } from './phases.js';
import type { ReadExercise } from './read-exercise.js';
import type { FolderCheck, ReadThings } from './read-things.js';
import { writeLoadNeed } from './write-kit.js';

/** The first three are what a client sees during a set. */
const LEAST_CUES = 3;

const eachWithBody =
  (check: (read: ReadExercise) => void) =>
  ({ exercises }: ReadThings): void => {
    // A file without front matter was not read to its body: what is missing there is not missing.
    for (const read of exercises) if (read.file.keys !== undefined) check(read);
  };

const eachRead =
  (check: (read: ReadExercise, facts: Facts) => void) =>
  ({ exercises }: ReadThings): void => {
    for (const read of exercises) if (read.exercise) check(read, read.exercise.facts);
  };

type Named = 'Cues' | 'Breath' | 'Stop if' | 'Pick up and put down';

const sectionPlace = ({ sections, file }: ReadExercise, name: Named): Place => sections.get(name)?.place ?? file.place;

/** Something stands in the section that is no list, or under a heading misspelt: that has been told of already. */
function isMuddled({ sections }: ReadExercise, name: Named): boolean {
  const blocks = sections.get(name)?.blocks ?? [];
  return sections.misspelt(name) || blocks.some(({ kind }) => kind !== 'list');
}

const checkCues = eachWithBody((read) => {
  const cues = read.words.cues.length;
  if (cues >= LEAST_CUES || isMuddled(read, 'Cues')) return;
  read.file.report.add({ code: 'too-few-cues', data: { cues, least: LEAST_CUES } }, sectionPlace(read, 'Cues'));
});

const checkSections = eachWithBody((read) => {
  const { words, file } = read;
  for (const [section, lines] of [
    ['Breath', words.breath],
    ['Stop if', words.stopIf],
  ] as const) {
    if (lines.length > 0 || isMuddled(read, section)) continue;
    file.report.add({ code: 'missing-section', data: { section } }, sectionPlace(read, section));
  }
});

const checkPickUp = eachRead((read, { kit }) => {
  const { words, file } = read;
  const section = 'Pick up and put down';
  if (kit.load.length === 0 || (words.pickUp.length > 0 && words.putDown.length > 0)) return;
  const items = read.sections.get(section)?.blocks.flatMap((block) => (block.kind === 'list' ? block.items : [])) ?? [];
  // An item that says neither has been told of already.
  if (isMuddled(read, section) || items.length > words.pickUp.length + words.putDown.length) return;
  file.report.add({ code: 'missing-section', data: { section } }, sectionPlace(read, section));
});

function checkPhases(things: ReadThings): void {
  const known = knownPhases(things);
  if (!known) return;
  for (const { exercise, file } of things.exercises) {
    for (const { of, phases } of exercise?.facts.asks ?? []) {
      for (const phase of phases) {
        if (known.includes(phase)) continue;
        const data = { phase, known, nearest: nearestOf(phase, known) };
        file.report.add({ code: 'unknown-phase', data }, placeOf(file, 'asks', of));
      }
    }
  }
}

/** Which ways of counting go with which way of loading. */
function fits(need: LoadNeed, holds: Facts['holds']): boolean {
  if (need.kind === 'band') return holds === 'band' || holds === 'assisted';
  if (need.kind === 'bar') return holds === 'total' || holds === 'added';
  return holds !== 'band';
}

const checkHolds = eachRead(({ file }, { kit, holds }) => {
  if (kit.load.length === 0) return;
  const load = writeLoadNeed(kit);
  const place = placeOf(file, 'holds');
  if (!file.keys?.entries.some(({ key }) => key === 'holds')) {
    file.report.add({ code: 'holds-not-said', data: { load } }, placeOf(file, 'load'));
    return;
  }
  const odd = kit.load.find((need) => !fits(need, holds));
  if (odd) {
    const data = { holds: holds.replace('-', ' '), load: writeLoadNeed({ load: [odd], unloaded: false }) };
    file.report.add({ code: 'holds-does-not-fit', data }, place);
  }
});

const checkWay = eachRead(({ file }, { way, kit }) => {
  if (way === 'strength' && kit.load.length === 0) {
    file.report.add({ code: 'way-needs-load', data: {} }, placeOf(file, 'way'));
  }
});

/** Fast, overhead, loaded-twist and barbell work goes home only once it has been seen: common practice, no source. */
function needsSignOff({ way, kit, room, asks }: Facts): string | undefined {
  const loaded = kit.load.length > 0;
  if (way === 'swing') return 'fast work';
  if (asks.some(({ of }) => of === 'speed')) return 'fast work';
  const overhead = loaded && asks.some(({ of }) => of === 'overhead');
  if (room.ceiling === 'load overhead' || overhead) return 'done with the load overhead';
  if (asks.some(({ of }) => of === 'loaded twist')) return 'a loaded twist';
  return kit.load.some(({ kind }) => kind === 'bar') ? 'barbell work' : undefined;
}

const checkParts = eachRead(({ file, id }, { way, parts }) => {
  const wanted = way === 'combination';
  const place = placeOf(file, 'parts');
  if (wanted ? parts.length < 2 : parts.length > 0) {
    file.report.add({ code: 'parts-of-combination', data: { wanted } }, wanted ? placeOf(file, 'way') : place);
  }
  parts.forEach((part, index) => {
    if (part !== id) return;
    file.report.add({ code: 'part-unfit', data: { part, why: 'itself' } }, placeOfEntry(file, ['parts'], index));
  });
});

function checkPartsThere({ exercises }: ReadThings): void {
  const ids = exercises.map(({ id }) => id);
  for (const { exercise, file } of exercises) {
    exercise?.facts.parts.forEach((part, index) => {
      const place = placeOfEntry(file, ['parts'], index);
      const found = exercises.find(({ id }) => id === part);
      if (found === undefined) {
        file.report.add({ code: 'unknown-exercise', data: { id: part, nearest: nearestOf(part, ids) } }, place);
      } else if (part !== exercise.id && found.exercise?.facts.way === 'combination') {
        file.report.add({ code: 'part-unfit', data: { part, why: 'combination' } }, place);
      }
    });
  }
}

const checkSignOff = eachRead(({ file }, facts) => {
  const because = needsSignOff(facts);
  if (because === undefined || facts.signOff) return;
  file.report.add({ code: 'sign-off-needed', data: { because } }, placeOf(file, 'sign-off'));
});

export const exerciseChecks: readonly FolderCheck[] = [
  { name: 'cues', codes: ['too-few-cues'], check: checkCues },
  { name: 'breath and stop signs', codes: ['missing-section'], check: checkSections },
  { name: 'pick up and put down', codes: ['missing-section'], check: checkPickUp },
  { name: 'phases asked in', codes: ['unknown-phase'], check: checkPhases },
  { name: 'how the load is held', codes: ['holds-not-said', 'holds-does-not-fit'], check: checkHolds },
  { name: 'strength has a load', codes: ['way-needs-load'], check: checkWay },
  { name: 'parts of a combination', codes: ['parts-of-combination', 'part-unfit'], check: checkParts },
  { name: 'parts are there', codes: ['unknown-exercise', 'part-unfit'], check: checkPartsThere },
  { name: 'sign-off', codes: ['sign-off-needed'], check: checkSignOff },
];
