/** The short words of one cell of a table of poses: clauses between commas, each read by the first form it fits. */
import { BODY_SIDES, type BodySide, type OnSides, type PoseColumn } from '../model/pose.js';
import { allOf, asTyped, type Read, readPart, refuse, splitPart } from './read-value.js';

/** A clause's own words, and what they make of what was read so far. */
export interface Form<State> {
  readonly form: RegExp;
  readonly make: (state: State, words: Words) => State;
}

/** What a form's named groups caught. */
export interface Words {
  /** The side said; both where none is. */
  readonly sides: readonly BodySide[];
  /** A group's words, in lower case; empty where it caught nothing. */
  readonly of: (group: string) => string;
  /** A group as a number; 0 where it caught nothing. */
  readonly number: (group: string) => number;
}

/** No angle of a body is more, and no picture is wider. */
const MOST_DEGREES = 180;
const MOST_CENTIMETRES = 300;

/** Reads every clause of a cell; refuses the clause that fits no form, or whose figure is beyond any body. */
export function readClauses<State>(
  column: PoseColumn,
  from: State,
  forms: readonly Form<State>[],
): (text: string) => Read<State> {
  return (text) => {
    const clauses = splitPart({ text: asTyped(text), start: 0 }, /,/g);
    const reads = clauses.map((clause) => readPart(clause, (words) => readClause(column, forms, words)));
    const read = allOf(reads);
    return read.ok ? { ok: true, value: read.value.reduce((state, change) => change(state), from) } : read;
  };
}

function readClause<State>(
  column: PoseColumn,
  forms: readonly Form<State>[],
  text: string,
): Read<(state: State) => State> {
  for (const { form, make } of forms) {
    const match = new RegExp(`^(?:${form.source})$`, 'i').exec(text);
    if (!match) continue;
    const of = (group: string): string => (match.groups?.[group] ?? '').toLowerCase();
    const words: Words = { sides: sidesOf(of('side')), of, number: (group) => Number(of(group)) };
    const beyond = beyondAnyBody(of('n'), MOST_DEGREES, text) ?? beyondAnyBody(of('cm'), MOST_CENTIMETRES, text);
    return beyond ?? { ok: true, value: (state) => make(state, words) };
  }
  return refuse({ code: 'pose-unreadable', data: { text, column } }, text);
}

function beyondAnyBody(figure: string, most: number, text: string): Read<never> | undefined {
  if (figure === '' || Number(figure) <= most) return undefined;
  const what = most === MOST_DEGREES ? 'An angle' : 'A length in centimetres';
  return refuse({ code: 'out-of-range', data: { what, figure, least: '0', most: String(most) } }, text);
}

const sidesOf = (word: string): readonly BodySide[] => BODY_SIDES.filter((side) => word === '' || word === side);

/** The same on each side said, the other as it was. */
export const putOn = <Value>(on: OnSides<Value>, sides: readonly BodySide[], change: (was: Value) => Value) => ({
  left: sides.includes('left') ? change(on.left) : on.left,
  right: sides.includes('right') ? change(on.right) : on.right,
});

/** `one|another|a third`, the longest first so that none hides behind its own beginning. */
export const anyOf = (words: readonly string[]): string => [...words].sort((a, b) => b.length - a.length).join('|');

/** The one of `known` that a word names, in one number or the other. */
export function namedIn<Name extends string>(known: readonly Name[], word: string): Name | undefined {
  return known.find((name) => name === word || `${name}s` === word || (name === 'foot' && word === 'feet'));
}
