/** A client's page as it would be with what a review proposes: all of it, or where that cannot be, as much as can. */
import { applyEdits, type EditedPage, type EditOptions } from '../content/edit/apply-edits.js';
import type { FolderFile } from '../content/read-folder.js';
import type { Edit } from '../model/edit.js';
import type { Problem } from '../model/problem.js';
import type { Proposal } from '../model/review.js';

export interface ProposedPage {
  /** `null` where there is nothing to write. */
  readonly page: EditedPage | null;
  readonly problems: readonly Problem[];
}

/** In the order of the proposals, each whole or not at all. Reports `edit-not-possible`. */
export function proposedPage(
  files: readonly FolderFile[],
  path: string,
  proposals: readonly Proposal[],
  options: EditOptions = {},
): ProposedPage {
  const wanted = proposals.filter(({ edits }) => edits.length > 0);
  if (wanted.length === 0) return { page: null, problems: [] };
  const all = applyEdits(files, path, editsOf(wanted), options);
  if (!('problem' in all)) return { page: all, problems: [] };
  let page: EditedPage | null = null;
  const made: Proposal[] = [];
  const problems: Problem[] = [];
  for (const proposal of wanted) {
    const more = applyEdits(files, path, editsOf([...made, proposal]), options);
    if ('problem' in more) problems.push(more.problem);
    else {
      made.push(proposal);
      page = more;
    }
  }
  return { page, problems };
}

/** Several proposals may come to one edit, which is made once. */
function editsOf(proposals: readonly Proposal[]): readonly Edit[] {
  const edits = proposals.flatMap((proposal) => proposal.edits);
  const texts = edits.map((edit) => JSON.stringify(edit));
  return edits.filter((_, index) => texts.indexOf(texts[index] ?? '') === index);
}
