/**
 * The style by which the sentence filters, without any script: a line is left out where what it needs was not said to be
 * there, or where what it asks was said to be left out. As long as no kit is named, none is asked for.
 */
import { answersTo, askWord, choicesIn, fitOf, LOADS, type LoadWord } from '../../../layouts/library/fit.js';
import type { Exercise } from '../../model/exercise.js';

const chosen = (ids: readonly string[]): string => ids.map((id) => `#${id}:checked`).join(',');
const isLoad = (word: string): word is LoadWord => LOADS.some((one) => one === word);

/**
 * What leaves lines out is the form alone, and never all of the page: a browser looks again at whatever stands below it with
 * every change inside what `:has` is asked of, and a search changes the page with every key.
 */
const LINES = '~ section li';

/** Rules for the lines of these exercises, one for each way of being loaded, each thing and each demand there is. */
export function sentenceRules(exercises: readonly Exercise[]): string {
  const { things, often, qualities, parts } = choicesIn(exercises);
  const loads = new Set(exercises.flatMap((of) => fitOf(of)['data-load'] ?? []));
  const without = (ids: readonly string[], lines: string): string =>
    `.sentence:has(.have :checked):not(:has(${chosen(ids)})) ${LINES}${lines}{display:none}`;
  return [
    ...[...loads].sort().map((load) => {
      const answering = [...new Set(load.split(' ').filter(isLoad).flatMap(answersTo))];
      return without(
        answering.map((word) => `have-${word}`),
        `[data-load="${load}"]`,
      );
    }),
    ...things.map((thing) => without([`have-${thing}`], `[data-with~="${thing}"]`)),
    ...[...often, ...qualities, ...parts].map(
      (of) => `.sentence:has(#out-${askWord(of)}:checked) ${LINES}[data-asks~="${askWord(of)}"]{display:none}`,
    ),
  ].join('\n');
}
