/**
 * Plain values told by what is new in them: which fields an object has is said once, and each element of a list says only in
 * what it differs from the one before it. Plans are of this kind: sets like the set before, weeks like the week before. What
 * is read is what was written, letter for letter.
 *
 * A value that is neither list nor object stands as itself. Else it is a list, told by how it begins:
 * `[n, …]`, n from 1: an object with the fields of shape n; `[0, …]`: a list; `[-1, place, value, …]`: as what it is told
 * by, but for those places; `[-2, length, place, value, …]`: the same of a list of another length; `[]`: as what it is told by.
 */
import type { InSteps } from './in-steps.js';

export interface ByDifference {
  /** The names of the fields of each kind of object, in their order. */
  readonly shapes: readonly (readonly string[])[];
  readonly value: unknown;
}

const LIST = 0;
const BUT_FOR = -1;
const OF_LENGTH = -2;

type Fields = Readonly<Record<string, unknown>>;

const isList = (value: unknown): value is readonly unknown[] => Array.isArray(value);
const isFields = (value: unknown): value is Fields => typeof value === 'object' && value !== null && !isList(value);

const fieldsOf = (one: Fields): readonly string[] => Object.keys(one).filter((name) => one[name] !== undefined);

/** Gives each value a number, and those that are alike the same: two are compared without being read through again. */
function countAlike(): (value: unknown) => number {
  const numbers = new Map<string, number>();
  const known = new WeakMap<object, number>();
  const byText = (text: string): number => {
    const number = numbers.get(text) ?? numbers.size;
    numbers.set(text, number);
    return number;
  };
  const numberOf = (one: unknown): number => {
    if (!isList(one) && !isFields(one)) return byText(JSON.stringify(one) ?? 'null');
    const seen = known.get(one);
    if (seen !== undefined) return seen;
    const text = isList(one)
      ? `[${one.map(numberOf).join()}]`
      : `{${fieldsOf(one).map((name) => `${JSON.stringify(name)}:${numberOf(one[name])}`)}}`;
    const number = byText(text);
    known.set(one, number);
    return number;
  };
  return numberOf;
}

const lengths = new WeakMap<object, number>();
/** Letters of what is told, as JSON has it. */
function lengthOf(told: unknown): number {
  if (!isList(told)) return (JSON.stringify(told) ?? 'null').length;
  const known = lengths.get(told);
  if (known !== undefined) return known;
  const length = told.reduce<number>((sum, each) => sum + lengthOf(each) + 1, 1 + Number(told.length === 0));
  lengths.set(told, length);
  return length;
}

/** `value` is as JSON has it: no cycles, and fields that are `undefined` are not there. */
export function tellByDifference(value: unknown): ByDifference {
  const shapes = new Map<string, number>();
  const names: string[][] = [];
  const numberOf = countAlike();
  const wholes = new Map<number, unknown>();
  const againsts = new Map<string, unknown>();

  const shapeOf = (fields: readonly string[]): number => {
    const key = JSON.stringify(fields);
    const known = shapes.get(key);
    if (known !== undefined) return known;
    names.push([...fields]);
    shapes.set(key, names.length);
    return names.length;
  };
  const differ = (a: unknown, b: unknown): boolean => numberOf(a) !== numberOf(b);

  const whole = (one: unknown): unknown => {
    if (!isList(one) && !isFields(one)) return one;
    const known = wholes.get(numberOf(one));
    if (known !== undefined) return known;
    const fields = isList(one) ? [] : fieldsOf(one);
    const told = isList(one)
      ? [LIST, ...one.map((each, i) => (i === 0 ? whole(each) : against(each, one[i - 1])))]
      : [shapeOf(fields), ...fields.map((name) => whole(one[name]))];
    wholes.set(numberOf(one), told);
    return told;
  };
  const against = (one: unknown, base: unknown): unknown => {
    if (!isList(one) && !isFields(one)) return one;
    if (!differ(one, base)) return [];
    const pair = `${numberOf(one)} ${numberOf(base)}`;
    const known = againsts.get(pair);
    if (known !== undefined) return known;
    const full = whole(one);
    const but = isList(one) && isList(base) ? ofList(one, base) : ofFields(one, base);
    const told = but !== undefined && lengthOf(but) < lengthOf(full) ? but : full;
    againsts.set(pair, told);
    return told;
  };
  const ofList = (one: readonly unknown[], base: readonly unknown[]): unknown[] => [
    ...(one.length === base.length ? [BUT_FOR] : [OF_LENGTH, one.length]),
    ...one.flatMap((each, i) => {
      if (i >= base.length) return [i, i === 0 ? whole(each) : against(each, one[i - 1])];
      return differ(each, base[i]) ? [i, against(each, base[i])] : [];
    }),
  ];
  const ofFields = (one: unknown, base: unknown): unknown[] | undefined => {
    if (!isFields(one) || !isFields(base)) return undefined;
    const fields = fieldsOf(one);
    if (differ(fields, fieldsOf(base))) return undefined;
    return [
      BUT_FOR,
      ...fields.flatMap((name, i) => (differ(one[name], base[name]) ? [i, against(one[name], base[name])] : [])),
    ];
  };

  const told = whole(value);
  return { shapes: names, value: told };
}

/** A field of its own, even where every object has a name of the kind. */
function put(fields: Record<string, unknown>, name: string, value: unknown): void {
  if (name in fields)
    Object.defineProperty(fields, name, { value, writable: true, enumerable: true, configurable: true });
  else fields[name] = value;
}

type Read = (told: unknown, base: unknown) => unknown;

/** Lists and objects so far within that each of their parts is a step: of a plan's, each session. */
const IN_STEPS = 3;

/** Reads what `tellByDifference` made. What is told by differences is read in one step. */
export function* readByDifference({ shapes, value }: ByDifference): InSteps<unknown> {
  const read = readerOf(shapes);
  function* open(told: unknown, base: unknown, levels: number): InSteps<unknown> {
    const head = isList(told) ? told[0] : undefined;
    if (levels === 0 || !isList(told) || typeof head !== 'number' || head < LIST) return read(told, base);
    const parts: unknown[] = [];
    for (const each of told.slice(1)) {
      yield;
      parts.push(yield* open(each, head === LIST ? parts.at(-1) : undefined, levels - 1));
    }
    return head === LIST ? parts : named(shapes[head - 1] ?? [], parts);
  }
  return yield* open(value, undefined, IN_STEPS);
}

function named(names: readonly string[], parts: readonly unknown[]): unknown {
  const fields: Record<string, unknown> = {};
  names.forEach((name, i) => {
    put(fields, name, parts[i]);
  });
  return fields;
}

/** In plain loops: a phone reads thousands of values before it can show a set. */
function readerOf(shapes: ByDifference['shapes']): Read {
  const read: Read = (told, base) => {
    if (!isList(told)) return told;
    const head = told[0];
    if (head === undefined) return base;
    if (head === LIST) {
      const list: unknown[] = [];
      for (let i = 1; i < told.length; i += 1) list.push(read(told[i], list[i - 2]));
      return list;
    }
    if (head === OF_LENGTH) return changed(told, 2, isList(base) ? base.slice(0, Number(told[1])) : []);
    if (head === BUT_FOR) return isList(base) ? changed(told, 1, base.slice()) : changedFields(told, base);
    const fields: Record<string, unknown> = {};
    let at = 0;
    for (const name of shapes[Number(head) - 1] ?? []) {
      at += 1;
      put(fields, name, read(told[at], undefined));
    }
    return fields;
  };
  /** From `told[from]` on stand places and what is there. */
  const changed = (told: readonly unknown[], from: number, list: unknown[]): unknown[] => {
    const before = list.length;
    for (let i = from; i < told.length; i += 2) {
      const at = Number(told[i]);
      list[at] = read(told[i + 1], at < before ? list[at] : list[at - 1]);
    }
    return list;
  };
  const changedFields = (told: readonly unknown[], base: unknown): unknown => {
    const fields: Record<string, unknown> = isFields(base) ? { ...base } : {};
    const names = Object.keys(fields);
    for (let i = 1; i < told.length; i += 2) {
      const name = names[Number(told[i])] ?? '';
      put(fields, name, read(told[i + 1], fields[name]));
    }
    return fields;
  };
  return read;
}
