/**
 * A problem found in an author's folder. A record, not a sentence: the code is permanent, the numbers and
 * names needed to phrase it travel in `data`, and `words` phrases it last.
 * Each layer lists its own codes; this file only joins them.
 */
import type { ClientId } from './identity.js';
import type { Place } from './place.js';
import type { ContentProblems } from './problems-content.js';
import type { FigureProblems } from './problems-figures.js';
import type { LogProblems } from './problems-log.js';
import type { OutputProblems } from './problems-output.js';
import type { PictureProblems } from './problems-pictures.js';
import type { PlanProblems } from './problems-plan.js';
import type { PublishProblems } from './problems-publish.js';

export type ProblemTable = ContentProblems &
  FigureProblems &
  PictureProblems &
  PlanProblems &
  LogProblems &
  OutputProblems &
  PublishProblems;
export type ProblemCode = keyof ProblemTable;

/**
 * A folder problem of severity `error` publishes nothing; a client's withholds that client alone, and one of their paper
 * nothing but what there would be to print.
 */
export type Scope =
  | { readonly kind: 'folder' }
  | { readonly kind: 'client'; readonly client: ClientId; readonly paper?: true };

/** `error` stops a publication, `warning` does not, `advice` is a gentle hint. */
export type Severity = 'error' | 'warning' | 'advice';

export type Problem = {
  readonly [Code in ProblemCode]: {
    readonly code: Code;
    readonly severity: Severity;
    readonly scope: Scope;
    /** Absent only where a problem belongs to no file (a full disk, say). */
    readonly place?: Place;
    readonly data: ProblemTable[Code];
    /** A matter of safety: an earlier booklet of this client is withdrawn. */
    readonly unsafe?: true;
  };
}[ProblemCode];

export const FOLDER: Scope = { kind: 'folder' };
export const ofClient = (client: ClientId): Scope => ({ kind: 'client', client });
export const ofPaper = (client: ClientId): Scope => ({ kind: 'client', client, paper: true });

/** The client who gets no booklet because of it. */
export const withheldBy = ({ severity, scope }: Problem): ClientId | undefined =>
  severity === 'error' && scope.kind === 'client' && scope.paper !== true ? scope.client : undefined;
