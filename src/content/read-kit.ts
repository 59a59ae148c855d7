/**
 * The grammar of kit: what a client owns, and what an exercise is loaded with. The writer is in `write-kit.ts`.
 * An item's id is its kind and figure, with a letter where there are several alike: `bell-16`, `plate-2.5-a`; pounds say so: `bell-35-lb`.
 */
import { compareIds, kitItemId } from '../model/identity.js';
import type { KitItem, LoadKind, LoadNeed, ThingKind } from '../model/kit.js';
import type { Mass } from '../model/quantity.js';
import { type MassContext, readMass, within } from './read-amounts.js';
import {
  allOf,
  asTyped,
  good,
  mapRead,
  type Part,
  type Read,
  type Reader,
  readPart,
  refuse,
  splitPart,
  trimPart,
} from './read-value.js';
import { readEntries, readOneOf } from './read-words.js';

/** Keys under `kit:` whose items have a mass, with how many alike one home may have. */
export const LOAD_KEYS = {
  bells: { kind: 'bell', most: 4 },
  dumbbells: { kind: 'dumbbell', most: 4 },
  handles: { kind: 'handle', most: 4 },
  bars: { kind: 'bar', most: 2 },
  plates: { kind: 'plate', most: 16 },
} as const satisfies Readonly<Record<string, { kind: LoadKind; most: number }>>;
export type LoadKey = keyof typeof LOAD_KEYS;
export const LOAD_KEY_NAMES: readonly LoadKey[] = ['bells', 'dumbbells', 'handles', 'bars', 'plates'];

export const THINGS = ['bench', 'step', 'chair', 'wall', 'mat', 'box'] as const satisfies readonly ThingKind[];
const MOST_BANDS = 4;

export interface Owned {
  readonly mass: Mass;
  readonly count: number;
}

const NONE = /^(none|nothing|-)$/;

/** `8, 12 ×2, 16`; `1.25 kg ×4; 2,5 kg ×2`; `two 12s` is not read. */
export function readOwned(key: LoadKey, context: MassContext): Reader<readonly Owned[]> {
  return (text) => {
    const whole = trimPart({ text: asTyped(text), start: 0 });
    if (NONE.test(whole.text)) return good([]);
    return readEntries(splitKit(whole), (entry) => readOne(entry, key, context));
  };
}

/** A comma between two figures without a space is a decimal comma; elsewhere it parts two entries. */
function splitKit(whole: Part): readonly Part[] {
  return splitPart(whole, /;|,(?=[\s,;]|$)/g);
}

function readOne(text: string, key: LoadKey, context: MassContext): Read<Owned> {
  // 12,16 could be two bells or one; a fraction of a load ends in 5, or in noughts.
  if (/\d,\d/.test(text) && !/^\d+,(5|25|50|75|0|00|125|250|375|500|625|750|875)(?!\d|,)/.test(text)) {
    return refuse({ code: 'comma-unclear', data: { text } }, text);
  }
  const { kind, most } = LOAD_KEYS[key];
  const massFirst = /^(.*?\S)\s*×\s*(\d{1,3})$/.exec(text);
  const countFirst = /^(\d{1,3})\s*×\s*(\d.*[a-z])$/i.exec(text);
  const massText = countFirst?.[2] ?? massFirst?.[1] ?? text;
  const count = Number(countFirst?.[1] ?? massFirst?.[2] ?? 1);
  const start = countFirst ? text.length - massText.length : 0;
  const mass = readPart({ text: massText, start }, (word) => {
    const read = readMass(context, `A ${kind}`)(word);
    const unreadable = !read.ok && read.faults.some(({ finding }) => finding.code === 'not-a-mass');
    return unreadable ? refuse({ code: 'kit-unreadable', data: { text, key } }, word) : read;
  });
  if (!mass.ok) return mass;
  const counted = within(`How many ${key} alike`, count, String(count), { least: 1, most }, text);
  return counted.ok ? good({ mass: mass.value, count }) : counted;
}

export interface OwnedBand {
  readonly label: string;
  readonly count: number;
}

/** Bands by name, from the easiest to the hardest: `light, medium ×2, strong`. */
export const readBands: Reader<readonly OwnedBand[]> = (text) => {
  const whole = trimPart({ text: asTyped(text), start: 0 });
  if (NONE.test(whole.text)) return good([]);
  return readEntries(splitPart(whole, /[,;]/g), (entry) => {
    const match = /^(\p{L}[\p{L}\p{M}\p{N} '-]{0,39}?)(?:\s*×\s*(\d{1,3}))?$/u.exec(entry);
    if (!match?.[1]) return refuse({ code: 'kit-unreadable', data: { text: entry, key: 'bands' } }, entry);
    const count = Number(match[2] ?? 1);
    const counted = within('How many bands alike', count, String(count), { least: 1, most: MOST_BANDS }, entry);
    return counted.ok ? good({ label: match[1].trim(), count }) : counted;
  });
};

export const readThing: Reader<ThingKind> = (text) => {
  const word = text
    .trim()
    .toLowerCase()
    .replace(/^(a|an|the)\s+/, '');
  return readOneOf(THINGS)(
    word.replace(/(es|s)$/, (end) => (THINGS.some((thing) => thing === word.slice(0, -end.length)) ? '' : end)),
  );
};

export interface OwnedKit {
  readonly loads: Readonly<Partial<Record<LoadKey, readonly Owned[]>>>;
  readonly bands: readonly OwnedBand[];
  readonly things: readonly ThingKind[];
}

/** Every item with its id, in order: kind as in `LOAD_KEY_NAMES`, lightest first, kilograms before pounds; bands; things. */
export function listKit(owned: OwnedKit): readonly KitItem[] {
  const items: KitItem[] = [];
  for (const key of LOAD_KEY_NAMES) {
    const { kind } = LOAD_KEYS[key];
    for (const { mass, count } of gatherAlike(owned.loads[key] ?? [])) {
      const stem = `${kind}-${mass.figure}${mass.unit === 'lb' ? '-lb' : ''}`;
      for (const id of idsAlike(stem, count)) items.push({ id: kitItemId(id), kind, mass });
    }
  }
  owned.bands.forEach(({ label, count }, index) => {
    for (const id of idsAlike(`band-${index + 1}`, count)) {
      items.push({ id: kitItemId(id), kind: 'band', step: index + 1, label });
    }
  });
  for (const thing of THINGS) if (owned.things.includes(thing)) items.push({ id: kitItemId(thing), kind: thing });
  return items;
}

/** Loads of one mass written twice are so many more of it. */
function gatherAlike(owned: readonly Owned[]): readonly Owned[] {
  const byMass = new Map<string, Owned>();
  for (const one of owned) {
    const name = `${one.mass.figure} ${one.mass.unit}`;
    byMass.set(name, { mass: one.mass, count: one.count + (byMass.get(name)?.count ?? 0) });
  }
  return [...byMass.values()].sort(
    (a, b) =>
      a.mass.grams - b.mass.grams || compareIds(a.mass.unit, b.mass.unit) || compareIds(a.mass.figure, b.mass.figure),
  );
}

function idsAlike(stem: string, count: number): readonly string[] {
  if (count === 1) return [stem];
  return Array.from({ length: count }, (_, index) => `${stem}-${index < 26 ? letter(index) : `z${index - 25}`}`);
}

const letter = (index: number): string => String.fromCharCode('a'.charCodeAt(0) + index);

export interface LoadOfExercise {
  readonly load: readonly LoadNeed[];
  readonly unloaded: boolean;
}

/** `bell or dumbbell`, `two bells or two dumbbells`, `two bells (may differ)`, `bell or nothing`, `bar`, `band`, `none`. */
export const readLoadNeed: Reader<LoadOfExercise> = (text) => {
  const whole = trimPart({ text: asTyped(text).toLowerCase(), start: 0 });
  if (NONE.test(whole.text)) return good({ load: [], unloaded: true });
  const parts = splitPart(whole, /\s+or\s+|,/g);
  const needs = allOf(parts.map((part) => readPart(part, readOneNeed)));
  return mapRead(needs, (found) => ({
    load: found.flatMap((need) => (need === 'nothing' ? [] : [need])),
    unloaded: found.includes('nothing'),
  }));
};

function readOneNeed(text: string): Read<LoadNeed | 'nothing'> {
  if (/^(nothing|none|no load)$/.test(text)) return good('nothing');
  const single = /^(?:an?\s+|one\s+)?(bell|dumbbell|bar|band)$/.exec(text)?.[1];
  if (single === 'bar' || single === 'band') return good({ kind: single });
  if (single === 'bell' || single === 'dumbbell') return good({ kind: single, count: 1, unequal: false });
  const pair = /^(?:two|2|a pair of|pair of)\s+(bell|dumbbell)s(\s*\(may differ\))?$/.exec(text);
  const kind = pair?.[1];
  if (kind !== 'bell' && kind !== 'dumbbell') return refuse({ code: 'load-unreadable', data: { text } }, text);
  return good({ kind, count: 2, unequal: pair?.[2] !== undefined });
}
