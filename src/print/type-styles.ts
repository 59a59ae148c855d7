/** The faces and sizes of the booklet on paper. Five faces, six sizes; nothing is ever set smaller to make it fit. */
import type { Sheet } from './sheet.js';

/** `text` is the serif of the running text, `display` the sans of headings and of all figures. */
export type Face = 'text' | 'text-italic' | 'text-strong' | 'display' | 'display-strong';

export type StyleName =
  | 'text'
  | 'text-italic'
  | 'text-strong'
  | 'note'
  | 'note-italic'
  | 'note-strong'
  | 'label'
  | 'label-strong'
  | 'figure'
  | 'figure-plain'
  | 'exercise'
  | 'title';

export interface TypeStyle {
  readonly face: Face;
  /** In points. */
  readonly size: number;
  /** How many lines of the grid one line of this style takes. */
  readonly lines: 1 | 2;
}

export const TYPE_STYLES: Readonly<Record<StyleName, TypeStyle>> = {
  text: { face: 'text', size: 10.5, lines: 1 },
  'text-italic': { face: 'text-italic', size: 10.5, lines: 1 },
  'text-strong': { face: 'text-strong', size: 10.5, lines: 1 },
  note: { face: 'text', size: 9.5, lines: 1 },
  'note-italic': { face: 'text-italic', size: 9.5, lines: 1 },
  'note-strong': { face: 'text-strong', size: 9.5, lines: 1 },
  label: { face: 'display', size: 9.5, lines: 1 },
  'label-strong': { face: 'display-strong', size: 9.5, lines: 1 },
  figure: { face: 'display-strong', size: 12, lines: 1 },
  'figure-plain': { face: 'display', size: 12, lines: 1 },
  exercise: { face: 'display-strong', size: 13, lines: 1 },
  title: { face: 'display-strong', size: 21, lines: 2 },
};

/**
 * For large print, on a grid of 26 points: text of 18, labels of 16, an exercise of 24, a title of 36, a load of 22.
 * As laid out, where a line of the grid is 14 high.
 */
const LARGE_PRINT_STYLES: Readonly<Record<StyleName, TypeStyle>> = (() => {
  const sized = (name: StyleName, points: number): TypeStyle => ({
    ...TYPE_STYLES[name],
    size: (points * 14) / 26,
  });
  return {
    text: sized('text', 18),
    'text-italic': sized('text-italic', 18),
    'text-strong': sized('text-strong', 18),
    note: sized('note', 16),
    'note-italic': sized('note-italic', 16),
    'note-strong': sized('note-strong', 16),
    label: sized('label', 16),
    'label-strong': sized('label-strong', 16),
    figure: sized('figure', 22),
    'figure-plain': sized('figure-plain', 22),
    exercise: sized('exercise', 24),
    title: sized('title', 36),
  };
})();

export const stylesOf = ({ type }: Sheet): Readonly<Record<StyleName, TypeStyle>> =>
  type === 'large' ? LARGE_PRINT_STYLES : TYPE_STYLES;

const FIGURES = ['kern', 'lnum', 'tnum'] as const;

/**
 * Lining figures of one width in every face: those of the display faces are old-style by themselves, and those of the
 * text faces uneven. Measuring and drawing both read this, so that what was measured is what is drawn. `kern` is there
 * because a list of features replaces nothing: it is already on, and naming it makes the drawing shape each line whole
 * instead of word by word.
 */
export const FEATURES: Readonly<Record<Face, readonly string[]>> = {
  text: FIGURES,
  'text-italic': FIGURES,
  'text-strong': FIGURES,
  display: FIGURES,
  'display-strong': FIGURES,
};
