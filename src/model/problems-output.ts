/** Codes of problems met while reading from disk, drawing and writing. Codes are permanent: never rename, never reuse. */
import type { WhyNoEdit } from './edit.js';

export interface OutputProblems {
  /** There is no such content folder, or it is not a folder. */
  readonly 'content-missing': { readonly folder: string };
  /** A file that could not be read: gone meanwhile, or not ours to read. */
  readonly 'file-unreadable': { readonly path: string; readonly why: string };
  readonly 'file-too-large': { readonly path: string; readonly megabytes: number; readonly mostMegabytes: number };
  readonly 'too-many-files': { readonly most: number };
  readonly 'folder-too-deep': { readonly path: string; readonly most: number };
  /** Links are not followed: they can lead outside the folder, or round in a circle. */
  readonly 'link-not-followed': { readonly path: string };
  /** No client of this id in the folder. */
  readonly 'no-such-client': { readonly client: string; readonly nearest: string };
  /** No exercise of this id in the folder. */
  readonly 'no-such-exercise': { readonly exercise: string; readonly nearest: string };
  /** An exercise without a table of poses, of which a drawing was asked for. */
  readonly 'no-poses': { readonly exercise: string };
  /** The output folder cannot be written. */
  readonly 'output-not-writable': { readonly folder: string; readonly why: string };
  /** Output and content would lie inside one another. */
  readonly 'output-in-content': { readonly folder: string };
  /** Something of the coach's own stands where the build puts its links. */
  readonly 'output-occupied': { readonly path: string };
  /** A frozen edition that is not as it was written. */
  readonly 'edition-unreadable': { readonly path: string; readonly why: string };
  /** The client has no edition of this number; 0 is the latest, and `last` 0 where nothing was issued. */
  readonly 'no-such-edition': { readonly client: string; readonly edition: number; readonly last: number };
  /** A log on file that cannot be read. */
  readonly 'marks-unreadable': { readonly path: string; readonly why: string };
  /** A mark in a log of an edition, session, row or set that was never issued; `what` names it, `mark` is its id. */
  readonly 'mark-unknown': { readonly edition: number; readonly mark: string; readonly what: string };
  /** A change to a client's page that is not made in place; `about` is the key, section, column or code, or empty. */
  readonly 'edit-not-possible': { readonly why: WhyNoEdit; readonly about: string };
  /** A page that is not what it was when it was read: nothing is written over it. */
  readonly 'page-changed': { readonly path: string };
  readonly 'page-not-writable': { readonly path: string; readonly why: string };
  /** Editions are written into the client's folder. */
  readonly 'edition-not-writable': { readonly folder: string; readonly why: string };
  /** `why` was asked about a week, session or exercise the plan does not have. */
  readonly 'nothing-there': { readonly week: string; readonly session: string; readonly exercise: string };
  /** A line a programme expects of a client's plan, and the plan says otherwise; `planned` may be empty. */
  readonly 'expectation-missed': {
    readonly week: number;
    readonly session: string;
    readonly row: string;
    readonly wanted: string;
    readonly planned: string;
  };
  /** A first studio is begun only where nothing stands yet; `found` is what does. */
  readonly 'begin-not-empty': { readonly folder: string; readonly found: string };
  readonly 'begin-not-writable': { readonly folder: string; readonly why: string };
  /** `issue` freezes one client's booklet at a time. */
  readonly 'issue-whom': { readonly clients: string };
  readonly 'state-not-writable': { readonly folder: string; readonly why: string };
  /** Keys or public folder names that cannot be read; `why` says nothing of what stands in them. */
  readonly 'state-unreadable': { readonly folder: string; readonly why: string };
  /** Keys, or what is uploaded, would lie in a folder that is read, written or kept for something else. */
  readonly 'folder-misplaced': {
    readonly what: 'state' | 'upload';
    readonly folder: string;
    readonly within: 'content' | 'output' | 'state';
  };
  /** A backup is put back only where no keys stand. */
  readonly 'state-occupied': { readonly folder: string };
  /** A client with an issued booklet and nothing that would open it: it is not sealed, and nothing of it is public. */
  readonly 'no-key': { readonly client: string };
  readonly 'backup-not-writable': { readonly path: string; readonly why: string };
  readonly 'backup-not-opened': {
    readonly path: string;
    readonly why: 'unreadable' | 'wrong words' | 'damaged' | 'newer' | 'older';
  };
  /**
   * Words the paper booklet cannot show: letters its typefaces lack, each once in order of code point, or a whole
   * booklet written from right to left. `where` is a text they stand in, empty for the direction.
   */
  readonly 'not-printable': {
    readonly why: 'letters' | 'direction';
    readonly characters: readonly string[];
    readonly where: string;
  };
  /** More pages than fold into one booklet. */
  readonly 'too-many-pages': {
    readonly pages: number;
    /** That fold into one. */
    readonly most: number;
    /** False where there are so many that none are drawn. */
    readonly drawn: boolean;
  };
}
