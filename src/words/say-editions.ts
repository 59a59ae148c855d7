/** For the coach, after a build: how an issued edition stands, and what would be issued now. */
import type { EditionStanding } from '../model/edition.js';

export interface EditionTold {
  /** Id. */
  readonly client: string;
  readonly name: string;
  readonly n: number;
  readonly standing: EditionStanding;
  /** What would be issued now says something else. */
  readonly draft: boolean;
  /** It has ended, and what would be issued now is of the same block. */
  readonly over: boolean;
  /** In how many rows its work is otherwise, and in how many things of the block as a whole. */
  readonly changes: number;
}

/** Nothing where the edition stands and says what would be issued now. */
export function sayEdition({ client, name, n, standing, draft, over, changes }: EditionTold): readonly string[] {
  if (standing === 'stands' && !draft) return [];
  const next = over
    ? '  The next block wants a new `starts`, and one more in `blocks before`.'
    : `  \`chalkleaf issue ${client}\` makes it edition ${n + 1}.`;
  const work = changes === 0 ? 'The work in it is the same.' : `It changes the work in ${counted(changes)}.`;
  const stands: Readonly<Record<EditionStanding, string>> = {
    stands: `edition ${n} stands; what changed since is not in it.`,
    ended: `edition ${n} has ended, and says so.`,
    withdrawn: `edition ${n} is withdrawn, and shows no sets any more.`,
  };
  return [
    `${name}: ${stands[standing]}`,
    ...(draft ? [`  See the draft beside it. ${work}`] : []),
    ...(draft || over ? [next] : []),
  ];
}

const counted = (changes: number): string => (changes === 1 ? '1 place' : `${changes} places`);
