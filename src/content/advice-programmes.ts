/** Gentle advice on what a programme leaves out, as it is written; sets are counted in each client's plan. */
import type { Pattern } from '../model/exercise.js';
import type { Row, SessionTemplate } from '../model/programme.js';
import { placeOf } from './open-file.js';
import type { ReadProgramme } from './read-programme.js';
import type { FolderCheck, ReadThings } from './read-things.js';

/** Three hinges with nothing pulled between them tire one grip and one back. Common practice, no source. */
const HINGES = 3;
/** One row alone is no programme. */
const ROWS_TO_JUDGE_BY = 2;

/** What a row works; a combination works what its parts work. `undefined` where its link leads nowhere. */
function patternsOf({ target }: Row, { exercises }: ReadThings): readonly Pattern[] | undefined {
  if (target.kind === 'pattern') return [target.pattern];
  const factsOf = (id: string) => exercises.find((read) => read.id === id)?.exercise?.facts;
  const facts = factsOf(target.id);
  return facts && [facts.pattern, ...facts.parts.flatMap((part) => factsOf(part)?.pattern ?? [])];
}

/** The patterns of each row of work; `undefined` while one of them cannot be told. */
function workOf(sessions: readonly SessionTemplate[], things: ReadThings): readonly (readonly Pattern[])[] | undefined {
  const blocks = sessions.flatMap((session) => session.blocks);
  const work = blocks.filter(({ kind }) => kind === 'straight' || kind === 'circuit');
  const patterns = work.flatMap(({ rows }) => rows.map((row) => patternsOf(row, things)));
  const told = patterns.flatMap((own) => (own === undefined ? [] : [own]));
  return told.length === patterns.length ? told : undefined;
}

const rowsOf = (work: readonly (readonly Pattern[])[], ...of: readonly Pattern[]): number =>
  work.filter((own) => own.some((pattern) => of.includes(pattern))).length;

const each =
  (check: (read: ReadProgramme, things: ReadThings) => void) =>
  (things: ReadThings): void => {
    for (const read of things.programmes) if (read.programme && read.wholeBody) check(read, things);
  };

const checkHinges = each(({ sessions, file }, things) => {
  for (const session of sessions) {
    const work = workOf([session], things) ?? [];
    const hinges = rowsOf(work, 'hinge');
    if (hinges < HINGES || rowsOf(work, 'pull') > 0) continue;
    file.report.add({ code: 'hinges-without-pull', data: { session: session.id, hinges } }, session.place);
  }
});

const checkPushes = each(({ sessions, file }, things) => {
  const work = workOf(sessions, things) ?? [];
  const pushes = rowsOf(work, 'push');
  if (pushes < ROWS_TO_JUDGE_BY || rowsOf(work, 'pull') > 0) return;
  file.report.add({ code: 'pushes-without-pull', data: { pushes } }, placeOf(file, 'name'));
});

const checkLegs = each(({ sessions, file }, things) => {
  const work = workOf(sessions, things) ?? [];
  const arms = rowsOf(work, 'push', 'pull');
  if (arms < ROWS_TO_JUDGE_BY || rowsOf(work, 'squat', 'hinge', 'lunge') > 0) return;
  file.report.add({ code: 'legs-left-out', data: { arms } }, placeOf(file, 'name'));
});

export const programmeAdvice: readonly FolderCheck[] = [
  { name: 'hinges without a pull', codes: ['hinges-without-pull'], check: checkHinges },
  { name: 'pushes without a pull', codes: ['pushes-without-pull'], check: checkPushes },
  { name: 'legs left out', codes: ['legs-left-out'], check: checkLegs },
];
