/**
 * What was done, from a client's issued editions and the marks that came back: session by session, and block by block
 * what was planned last. Neither the order of logs and events nor their number of copies decides anything.
 */
import type { Edition } from '../model/edition.js';
import type { DoneSession, History, PlannedBlock, QueuedPlan } from '../model/history.js';
import type { Log } from '../model/log.js';
import type { Problem } from '../model/problem.js';
import type { Result } from '../model/result.js';
import { gatherSession, localDay } from './gather-session.js';
import { mergeEvents } from './merge-events.js';
import { isProblem, type PlacedMark, placeMark } from './place-marks.js';
import { type EditionPlaces, placesOf } from './planned-sessions.js';

/**
 * `editions` and `logs` are one client's. A mark of something that its edition does not have is told and counts for
 * nothing. Reports `mark-unknown`.
 */
export function gatherHistory(editions: readonly Edition[], logs: readonly Log[]): Result<History> {
  const issued = [...editions].sort((a, b) => a.n - b.n).map(placesOf);
  const byNumber = new Map(issued.map((one) => [one.edition.n, one]));
  const marks = mergeEvents(logs);
  const problems: Problem[] = [];
  const sessions = new Map<string, PlacedMark[]>();
  for (const marked of marks) {
    const placing = placeMark(marked, byNumber);
    if (placing === undefined) continue;
    if (isProblem(placing)) {
      problems.push(placing);
      continue;
    }
    const { block, session } = placing.place;
    const key = `${block}/${session.occurrence}`;
    const own = sessions.get(key);
    if (own === undefined) sessions.set(key, [placing]);
    else own.push(placing);
  }
  const done = [...sessions.values()]
    .flatMap((own) => gatherSession(own) ?? [])
    .sort((a, b) => a.day - b.day || a.block - b.block || a.occurrence - b.occurrence);
  const days = marks.map(({ event }) => localDay(event.at));
  return {
    value: {
      blocks: blocksOf(issued, done),
      sessions: done,
      notes: marks.flatMap(({ event }) =>
        event.kind === 'note' ? [{ day: localDay(event.at), text: event.text }] : [],
      ),
      lastMark: days.reduce<History['lastMark']>((last, one) => (last === null || one > last ? one : last), null),
    },
    problems,
  };
}

function blocksOf(issued: readonly EditionPlaces[], done: readonly DoneSession[]): readonly PlannedBlock[] {
  const latest = new Map(issued.map((one) => [one.block, one]));
  return [...latest.values()]
    .sort((a, b) => a.block - b.block)
    .map(({ block, edition, places }): PlannedBlock => {
      const queue = new Map<number, QueuedPlan>();
      for (const [occurrence, { week, session }] of places) {
        queue.set(occurrence, { edition: edition.n, week, session });
      }
      for (const { block: of, occurrence, edition: n } of done) {
        const place = of === block ? issued.find((one) => one.edition.n === n)?.places.get(occurrence) : undefined;
        if (place !== undefined) queue.set(occurrence, { edition: n, week: place.week, session: place.session });
      }
      const inOrder = [...queue].sort(([a], [b]) => a - b).map(([, planned]) => planned);
      return { block, edition: edition.n, plan: edition.plan, queue: inOrder };
    });
}
