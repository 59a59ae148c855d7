/**
 * The links between easier and harder versions, in both directions: an author writes a link once, on either page.
 * Which version is chosen stands elsewhere.
 */
import type { Cause, Exercise, Version } from '../../model/exercise.js';
import type { ExerciseId } from '../../model/identity.js';
import { compareIds } from '../../model/identity.js';
import { plainText } from '../../model/prose.js';
import type { PerMille } from '../../model/quantity.js';

export interface Link {
  readonly to: Exercise;
  readonly causes: readonly Cause[];
  /** K of the version led to, for 1000 of the one it leads from; `null` where not known. */
  readonly ratio: PerMille | null;
  /** What the author calls it; the exercise's name where the link was written on the other page. */
  readonly say: string;
}

/** An easier way that is not another exercise. */
export interface EasierWay {
  readonly slug: string;
  readonly causes: readonly Cause[];
  readonly say: string;
}

interface Links {
  /** As the author wrote them; then those written on the other exercise's page, by id. */
  readonly easier: readonly Link[];
  readonly harder: readonly Link[];
  readonly easierWays: readonly EasierWay[];
}

export type LinksOf = (exercise: Exercise) => Links;

/** Reads every link once. A link to an exercise that is not in the library is left out: reading the folder reports it. */
export function linkVersions(exercises: ReadonlyMap<string, Exercise>): LinksOf {
  const all = [...new Set(exercises.values())].sort((a, b) => compareIds(a.id, b.id));
  const written = new Map<ExerciseId, { readonly easier: readonly Link[]; readonly harder: readonly Link[] }>();
  for (const exercise of all) {
    const { easier, harder } = exercise.words;
    written.set(exercise.id, { easier: follow(easier, exercises), harder: follow(harder, exercises) });
  }
  const derived = { easier: new Map<ExerciseId, Link[]>(), harder: new Map<ExerciseId, Link[]>() };
  for (const exercise of all) {
    for (const link of written.get(exercise.id)?.easier ?? []) addTo(derived.harder, link.to.id, back(exercise, link));
    for (const link of written.get(exercise.id)?.harder ?? []) addTo(derived.easier, link.to.id, back(exercise, link));
  }
  const links = new Map<ExerciseId, Links>();
  for (const exercise of all) {
    links.set(exercise.id, {
      easier: join(written.get(exercise.id)?.easier ?? [], derived.easier.get(exercise.id) ?? []),
      harder: join(written.get(exercise.id)?.harder ?? [], derived.harder.get(exercise.id) ?? []),
      easierWays: exercise.words.easier.flatMap((version) =>
        version.to.kind === 'way'
          ? [{ slug: version.to.slug, causes: version.causes, say: plainText(version.say) }]
          : [],
      ),
    });
  }
  const none: Links = { easier: [], harder: [], easierWays: [] };
  return (exercise) => links.get(exercise.id) ?? none;
}

function follow(versions: readonly Version[], exercises: ReadonlyMap<string, Exercise>): readonly Link[] {
  return versions.flatMap((version) => {
    const to = version.to.kind === 'exercise' ? exercises.get(version.to.id) : undefined;
    if (to === undefined) return [];
    return [{ to, causes: version.causes, ratio: version.ratio?.share ?? null, say: plainText(version.say) }];
  });
}

/** The other direction: the same causes, the ratio turned round, rounded down. */
function back(from: Exercise, link: Link): Link {
  const ratio = link.ratio === null || link.ratio === 0 ? null : Math.floor(1_000_000 / link.ratio);
  return { to: from, causes: link.causes, ratio, say: from.name };
}

function addTo(map: Map<ExerciseId, Link[]>, id: ExerciseId, link: Link): void {
  const list = map.get(id);
  if (list === undefined) map.set(id, [link]);
  else list.push(link);
}

/** The author's own link wins over the derived one; a ratio known only from the other page is taken from there. */
function join(own: readonly Link[], other: readonly Link[]): readonly Link[] {
  const joined = own.map((link) => {
    const same = other.find((it) => it.to.id === link.to.id);
    return link.ratio === null && same !== undefined ? { ...link, ratio: same.ratio } : link;
  });
  return [...joined, ...other.filter((link) => !own.some((it) => it.to.id === link.to.id))];
}
