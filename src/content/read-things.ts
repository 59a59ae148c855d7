/** Everything read from a folder, as the checks across files see it. */
import type { RuleOverride, Studio } from '../model/studio.js';
import type { OpenFile } from './open-file.js';
import type { ReadClient } from './read-client.js';
import type { ReadExercise } from './read-exercise.js';
import type { ReadProgramme } from './read-programme.js';
import type { ContentCode } from './read-value.js';
import type { Report } from './report.js';

export interface ReadThings {
  readonly studio: Studio | undefined;
  /** The coach's own values for rules. */
  readonly overrides: readonly RuleOverride[];
  readonly exercises: readonly ReadExercise[];
  readonly programmes: readonly ReadProgramme[];
  readonly clients: readonly ReadClient[];
  /** Every file that was opened. */
  readonly files: readonly OpenFile[];
  /** Paths of every file given. */
  readonly paths: ReadonlySet<string>;
  /** Pictures beside the exercises, by path: at least their first bytes. */
  readonly pictures: ReadonlyMap<string, Uint8Array>;
  /** For what belongs to no page. */
  readonly folder: Report;
}

/** A check across files. Each stands alone: a test takes them out one by one. */
export interface FolderCheck {
  readonly name: string;
  /** The codes it can report. */
  readonly codes: readonly ContentCode[];
  readonly check: (things: ReadThings) => void;
}
