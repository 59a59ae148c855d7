/**
 * Codes of problems found while reading an author's folder. Codes are permanent: never rename, never reuse.
 * Said no more, and never to be used for anything else: `date-after-block` (now `block-ended` or `date-in-future`),
 * `curve-not-six` (now `curve-length`).
 */
import type { PictureKind } from './picture-kind.js';
import type { PoseColumn } from './pose.js';

type Nothing = Readonly<Record<string, never>>;

export interface ContentProblems {
  // The folder and its files.
  /** No `studio.md` at the top of the folder. */
  readonly 'no-studio': Nothing;
  /** A file where the format has no place for one; `belongs` is where such a file would stand, if that is known. */
  readonly 'unknown-file': { readonly belongs: string };
  /** A byte that is not UTF-8, in hexadecimal. */
  readonly 'not-utf-8': { readonly byte: string };
  /** A control character that no text editor types. */
  readonly 'control-character': { readonly character: string };
  /** A file or folder name that cannot be an id; `suggestion` may be empty. */
  readonly 'bad-id': { readonly id: string; readonly suggestion: string };
  /** Two things go by one id, or by ids that some computers cannot tell apart. */
  readonly 'id-taken': { readonly id: string; readonly by: string };
  /** A client's folder named like something every page speaks of. */
  readonly 'client-named-like-library': { readonly id: string; readonly like: string };
  /**
   * What is private to a client, by its kind, stands in a page of the library too; `line` is 0 where it runs over lines.
   * Publishing would refuse it.
   */
  readonly 'private-in-library': {
    readonly kind: 'name' | 'file-name' | 'e-mail' | 'phone' | 'opaque' | 'note' | 'key' | 'mark';
    readonly text: string;
    readonly page: string;
    readonly line: number;
  };

  // The front matter.
  readonly 'no-front-matter': Nothing;
  readonly 'front-matter-open': Nothing;
  readonly 'front-matter-too-long': { readonly kilobytes: number; readonly mostKilobytes: number };
  readonly 'front-matter-too-deep': { readonly most: number };
  readonly 'front-matter-not-keys': Nothing;
  readonly 'front-matter-unreadable': {
    readonly why:
      | 'tab'
      | 'second-colon'
      | 'quote-not-closed'
      | 'bracket-not-closed'
      | 'start-character'
      | 'no-colon'
      | 'indent'
      | 'other';
    readonly detail: string;
  };
  /** An anchor, an alias or a tag of YAML. */
  readonly 'yaml-feature': { readonly feature: 'anchor' | 'alias' | 'tag'; readonly text: string };
  readonly 'key-twice': { readonly key: string };
  /** A key the format does not have. */
  readonly 'unknown-key': { readonly key: string; readonly nearest: string };
  readonly 'missing-key': { readonly key: string; readonly example: string };
  readonly 'wrong-shape': { readonly key: string; readonly wanted: 'text' | 'list' | 'keys' | 'entries' };

  // Values.
  readonly 'not-a-date': { readonly text: string; readonly suggestion: string };
  readonly 'no-such-date': { readonly text: string };
  readonly 'not-one-of': { readonly text: string; readonly known: readonly string[]; readonly nearest: string };
  readonly 'not-a-number': { readonly text: string; readonly whole: boolean };
  readonly 'out-of-range': {
    readonly what: string;
    readonly figure: string;
    readonly least: string;
    readonly most: string;
  };
  readonly 'range-backwards': { readonly text: string };
  /** A mass without a unit where kilograms and pounds are both in use. */
  readonly 'no-unit': { readonly text: string };
  /** `suggestion` is the same in pounds where stones are written; else empty. */
  readonly 'not-a-mass': { readonly text: string; readonly what: 'load' | 'body mass'; readonly suggestion: string };
  readonly 'not-a-length': { readonly text: string };
  readonly 'not-a-floor': { readonly text: string };
  readonly 'not-a-time': { readonly text: string };
  readonly 'not-a-tempo': { readonly text: string };
  readonly 'not-a-language': { readonly text: string };
  readonly 'not-an-address': { readonly text: string };
  readonly 'not-a-phone-number': { readonly text: string };
  /** A quotation mark at one end of a value and none at the other. */
  readonly 'stray-quote': { readonly text: string };
  readonly 'too-long': { readonly letters: number; readonly most: number };
  /** A comma that may stand between two entries or before a decimal. */
  readonly 'comma-unclear': { readonly text: string };
  readonly 'entry-twice': { readonly entry: string };
  readonly 'empty-entry': Nothing;
  readonly 'share-unreadable': { readonly text: string };
  readonly 'source-missing': { readonly standing: string };
  readonly 'kit-unreadable': { readonly text: string; readonly key: string };
  readonly 'load-unreadable': { readonly text: string };
  readonly 'dose-unreadable': { readonly text: string };
  readonly 'dose-without-sets': { readonly text: string };
  readonly 'dose-in-circuit': { readonly text: string; readonly rounds: number };
  readonly 'effort-unreadable': { readonly text: string };
  readonly 'pattern-unreadable': { readonly text: string };
  readonly 'ask-unreadable': { readonly text: string };
  readonly 'pressure-unreadable': { readonly text: string };
  readonly 'main-bell-unreadable': { readonly text: string };
  readonly 'expect-unreadable': { readonly text: string };

  // The body.
  readonly 'unknown-heading': { readonly heading: string; readonly nearest: string };
  readonly 'heading-twice': { readonly heading: string };
  readonly 'missing-section': { readonly section: string };
  /** Something the section cannot hold; `wanted` is what it holds. */
  readonly 'wrong-content': { readonly section: string; readonly wanted: 'list' | 'table' | 'text' };
  /** Markdown the booklet has no use for. */
  readonly 'not-printed': { readonly what: 'picture' | 'quotation' | 'code' | 'line' | 'tag' };
  readonly 'unknown-column': { readonly column: string; readonly nearest: string; readonly known: readonly string[] };
  readonly 'missing-column': { readonly column: string };
  readonly 'column-twice': { readonly column: string };
  readonly 'too-many-cells': { readonly cells: number; readonly columns: number };
  readonly 'empty-cell': { readonly column: string };
  /** A clause of a table of poses that its column cannot hold. */
  readonly 'pose-unreadable': { readonly text: string; readonly column: PoseColumn };
  readonly 'pose-twice': { readonly position: string };
  /** One position is no movement. */
  readonly 'pose-alone': Nothing;
  // A coach's own picture.
  /** No such file beside the exercise. */
  readonly 'picture-missing': { readonly file: string; readonly nearest: string };
  /** Nothing says what is to be seen; `text` is what stands there in its place, or empty. */
  readonly 'picture-undescribed': { readonly text: string };
  /** A kind of picture that is not taken, by the ending of its name. */
  readonly 'picture-kind': { readonly file: string; readonly ending: string };
  /** The bytes are of another kind than the name says. */
  readonly 'picture-other-kind': { readonly file: string; readonly is: PictureKind | undefined };
  /** An address, a path out of the content folder, or another of its folders. */
  readonly 'picture-elsewhere': { readonly target: string; readonly why: 'address' | 'outside' | 'folder' };
  readonly 'picture-twice': Nothing;
  /** A picture beside the exercises that none of them shows. */
  readonly 'picture-unused': { readonly file: string };
  readonly 'pick-up-or-put-down': { readonly text: string };
  readonly 'unknown-cause': { readonly text: string; readonly nearest: string };
  readonly 'ratio-unreadable': { readonly text: string };
  readonly 'too-few-cues': { readonly cues: number; readonly least: number };
  readonly 'session-unnamed': { readonly heading: string };
  readonly 'circuit-unreadable': { readonly heading: string };
  readonly 'nothing-in-it': { readonly what: 'programme' | 'session' | 'block' };
  readonly 'id-twice': { readonly id: string; readonly what: 'session' | 'row' };

  // Facts that do not go together.
  readonly 'weeks-differ': { readonly key: string; readonly weeks: number; readonly reserve: number };
  /** A block has so many weeks as its reserve has figures. */
  readonly 'curve-length': { readonly weeks: number; readonly least: number; readonly most: number };
  /** An easy week, or one of which something is expected, that the block does not have. */
  readonly 'week-after-block': { readonly week: number; readonly weeks: number };
  readonly 'dates-out-of-order': { readonly first: string; readonly second: string };
  /** `reserve` asked for in a week is below what is left to anybody who trains alone. */
  readonly 'reserve-below-floor': { readonly reserve: number; readonly floor: number };
  readonly 'holds-not-said': { readonly load: string };
  readonly 'holds-does-not-fit': { readonly holds: string; readonly load: string };
  readonly 'way-needs-load': Nothing;
  /** A combination names at least two parts, and only a combination names any. */
  readonly 'parts-of-combination': { readonly wanted: boolean };
  /** A part of a combination that is the combination itself, or another one. */
  readonly 'part-unfit': { readonly part: string; readonly why: 'itself' | 'combination' };
  readonly 'sign-off-needed': { readonly because: string };
  readonly 'cut-and-kept': { readonly row: string };
  readonly 'rule-without-reason': { readonly rule: string };

  // Names that must mean something.
  readonly 'not-a-link': { readonly text: string; readonly to: string };
  readonly 'link-elsewhere': { readonly target: string; readonly to: string };
  /** A page that may be public leads to a client's. */
  readonly 'link-to-client': { readonly target: string };
  readonly 'broken-link': { readonly target: string; readonly nearest: string };
  readonly 'unknown-exercise': { readonly id: string; readonly nearest: string };
  readonly 'unknown-programme': { readonly id: string; readonly nearest: string };
  readonly 'unknown-client': { readonly id: string; readonly nearest: string };
  readonly 'unknown-session': { readonly id: string; readonly known: readonly string[] };
  readonly 'unknown-row': { readonly id: string; readonly nearest: string };
  readonly 'unknown-rule': { readonly id: string; readonly nearest: string };
  /** An expectation for a client this folder does not have. */
  readonly 'expect-nobody': { readonly id: string; readonly nearest: string };
  /** A phase of the movement that no exercise has. */
  readonly 'unknown-phase': { readonly phase: string; readonly known: readonly string[]; readonly nearest: string };
  readonly 'partner-self': Nothing;
  /** Easier all the way round: each of these is said to be easier than the one before. */
  readonly 'easier-in-a-circle': { readonly path: readonly string[] };
  readonly 'test-load': { readonly exercise: string; readonly wanted: boolean };
  readonly 'test-side': { readonly exercise: string; readonly wanted: boolean };
  /** A phrase that is said of an exercise, with none beside it. */
  readonly 'observation-needs-exercise': { readonly seen: string };
  /** Shorter on one side without saying which; or the words name the one and the column the other (`apart`). */
  readonly 'observation-needs-side': { readonly seen: string; readonly apart: boolean };
  /** Pain without a whole number, or in a part nobody knows; `where` is the part it may have meant, or empty. */
  readonly 'observation-pain': { readonly text: string; readonly where: string };

  // Advice: holds nothing back, and is left unsaid by `advice off`.
  /** Something seen, and nothing to say to it. */
  readonly 'fault-unsaid': { readonly fault: string };
  /** More cues than are heard, in all where `phase` is empty. */
  readonly 'many-cues': { readonly cues: number; readonly most: number; readonly phase: string };
  readonly 'long-cue': { readonly words: number; readonly most: number };
  /** One stop sign on `pages` of `of` exercises. */
  readonly 'stop-sign-everywhere': { readonly pages: number; readonly of: number };
  readonly 'easier-for-what': { readonly version: string };
  /** No way down the easier versions to one that needs no kit. */
  readonly 'easier-needs-kit': Nothing;
  readonly 'exercise-unreached': Nothing;
  readonly 'hinges-without-pull': { readonly session: string; readonly hinges: number };
  readonly 'pushes-without-pull': { readonly pushes: number };
  readonly 'legs-left-out': { readonly arms: number };
  /** Words that no rule reads, not said to be a note; `nearest` may be empty. */
  readonly 'observation-unread': { readonly text: string; readonly nearest: string };
  /** A partner whose own page does not name this client. */
  readonly 'partner-one-way': { readonly partner: string; readonly client: string };
  /** Language tags: of the booklet's own words, and of the exercises in it. */
  readonly 'exercises-other-language': { readonly booklet: string; readonly exercises: string };
}
