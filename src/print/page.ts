/**
 * A laid-out page: boxes with their coordinates, in points from the top left corner, in reading order.
 * The layout makes them, the drawing puts them down; neither needs the other.
 */
import type { Mark, PictureCopy, Box as Plane, Spot } from '../model/picture.js';
import type { PageSide } from './sheet.js';
import type { StyleName } from './type-styles.js';

/** Structure types of ISO 32000 that the booklet uses. */
export type TagRole =
  | 'Document'
  | 'Sect'
  | 'H1'
  | 'H2'
  | 'H3'
  | 'P'
  | 'L'
  | 'LI'
  | 'Lbl'
  | 'LBody'
  | 'Span'
  | 'Table'
  | 'TR'
  | 'TH'
  | 'TD'
  | 'Link'
  | 'Figure';

/** An element of the document's structure. Its children are the tags and boxes that name it, in order of appearance. */
export interface Tag {
  readonly role: TagRole;
  /** Absent for a child of the whole document. */
  readonly parent?: Tag;
  /** Read in place of what is drawn. */
  readonly spoken?: string;
  /** What a drawing shows. */
  readonly alt?: string;
  /** Of a `TH`. */
  readonly scope?: 'Column' | 'Row';
  /** Of a `TH` or `TD`. */
  readonly columns?: number;
  /** BCP 47, where it is another language than the document's. */
  readonly lang?: string;
}

export type TagParts = Omit<Tag, 'role' | 'parent'>;

export function tag(role: TagRole, parent?: Tag, parts: TagParts = {}): Tag {
  return parent ? { role, parent, ...parts } : { role, ...parts };
}

export interface TextBox {
  readonly kind: 'text';
  readonly style: StyleName;
  readonly x: number;
  /** Of the baseline. */
  readonly y: number;
  readonly width: number;
  readonly text: string;
  /** Without one, the box is furniture of the page and is not read aloud. */
  readonly tag?: Tag;
  /** A space was left out here because the line ended. */
  readonly endsAtSpace: boolean;
  /** Name of the place a click leads to; the tag is then a `Link`. */
  readonly to?: string;
}

/** One line of text: its boxes stand on the baseline of a first line, from `x` 0. */
export interface SetLine {
  readonly boxes: readonly TextBox[];
  readonly width: number;
  /** In lines of the grid. */
  readonly lines: number;
}

export interface LineBox {
  readonly kind: 'line';
  readonly x: number;
  readonly y: number;
  readonly toX: number;
  readonly toY: number;
  readonly thickness: number;
  readonly dotted?: true;
  readonly tag?: Tag;
}

export interface FrameBox {
  readonly kind: 'frame';
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly thickness: number;
}

/** Nothing to see: a cell that is empty still has its place in the table. */
export interface EmptyBox {
  readonly kind: 'empty';
  readonly x: number;
  readonly y: number;
  readonly tag: Tag;
}

/** Marks painted together, moved `by` on their plane. */
export interface Layer {
  readonly marks: readonly Mark[];
  readonly by: Spot;
  /** In thin broken lines and nothing of it filled: where the body was before. */
  readonly faint: boolean;
}

/** A part of a drawing's plane, as wide as it says; its height goes with it. */
export interface PictureBox {
  readonly kind: 'picture';
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly plane: Plane;
  /** In the order they are painted. */
  readonly layers: readonly Layer[];
  readonly tag?: Tag;
}

/** A coach's own picture, in greys. */
export interface PhotographBox {
  readonly kind: 'photograph';
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly copy: PictureCopy;
  readonly tag?: Tag;
}

export type Box = TextBox | LineBox | FrameBox | EmptyBox | PictureBox | PhotographBox;

export const emptyCell = (of: Tag): EmptyBox => ({ kind: 'empty', x: 0, y: 0, tag: of });

export interface Target {
  readonly name: string;
  readonly y: number;
}

export interface Bookmark {
  readonly title: string;
  readonly level: 1 | 2;
  readonly y: number;
}

export interface Page {
  /** From 1. */
  readonly number: number;
  readonly side: PageSide;
  readonly boxes: readonly Box[];
  readonly targets: readonly Target[];
  readonly bookmarks: readonly Bookmark[];
}

export function moved<Kind extends Box>(box: Kind, right: number, down: number): Kind {
  if (right === 0 && down === 0) return box;
  return box.kind === 'line'
    ? { ...box, x: box.x + right, y: box.y + down, toX: box.toX + right, toY: box.toY + down }
    : { ...box, x: box.x + right, y: box.y + down };
}
