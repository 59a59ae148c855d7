/** A load in the text form, with all that a plan holds of it: what it is called, what it weighs, how it is held, and its items. */
import { kitItemId } from '../model/identity.js';
import type { LoadMode } from '../model/kit.js';
import type { PlanLoad } from '../model/plan.js';
import { gramsOf } from '../model/quantity.js';
import { readWords, writeWords } from './fold.js';
import type { Taking } from './taking.js';

const HELD: readonly (readonly [LoadMode, string])[] = [
  ['per-hand', 'per hand'],
  ['total', 'in all'],
  ['added', 'added'],
  ['assisted', 'taken off'],
  ['band', 'as a band'],
];

/** Letters that end a quoted name or a part of the line. */
const AROUND = '";';

const quote = (text: string): string => `"${writeWords(text, AROUND)}"`;
const FIGURE = /^(?:\d+ × )?(\d+(?:\.\d+)?) (kg|lb)$/;
const BARE_ID = /^[a-z][a-z0-9.-]*$/;
/** `bell-16`, `plate-2.5-lb-a`: an item called by its mass. */
const ID_WITH_MASS = /^(?!band-)[a-z]+-(\d+(?:\.\d+)?)(-lb)?(?:-[a-z]+)?$/;

/** What the name of a load says it weighs, in grams; a half where it says nothing, which no load weighs. */
function gramsSaid(label: string): number {
  const [, figure, unit] = FIGURE.exec(label) ?? [];
  return figure === undefined ? 0.5 : gramsOf(Number(figure), unit === 'lb' ? 'lb' : 'kg');
}

function gramsOfItem(id: string): number {
  const [, figure, pounds] = ID_WITH_MASS.exec(id) ?? [];
  return figure === undefined ? 0 : gramsOf(Number(figure), pounds === undefined ? 'kg' : 'lb');
}

export function writeLoad(load: PlanLoad): string {
  const held = HELD.find(([mode]) => mode === load.mode)?.[1] ?? '';
  const items = load.pieces.map(
    ({ id, grams }) => `${BARE_ID.test(id) ? id : quote(id)}${grams === gramsOfItem(id) ? '' : ` ${grams} g`}`,
  );
  const of = items.length === 0 ? '' : ` (${items.join(' + ')})`;
  if (load.band !== undefined) {
    const label = load.label === `${load.band} band` ? '' : ` called ${quote(load.label)}`;
    return `band ${load.step} ${quote(load.band)}${label}${load.mode === 'band' ? '' : ` ${held}`}${of}`;
  }
  const grams = load.grams === gramsSaid(load.label) ? '' : ` = ${load.grams} g`;
  const kg = load.kg === load.grams / 1000 ? '' : ` = ${load.kg} kg`;
  return `${FIGURE.test(load.label) ? load.label : quote(load.label)}${grams}${kg} ${held}${of}`;
}

/** The load that stands next; `null` where none does. */
export function readLoad(from: Taking): PlanLoad | null {
  const band = from.take(/band (\d{1,3}) /);
  return band === null ? readMass(from) : readBand(from, Number(band[0]));
}

function readBand(from: Taking, step: number): PlanLoad | null {
  const band = readQuoted(from);
  if (band === null) return null;
  const label = from.take(/ called /) === null ? `${band} band` : readQuoted(from);
  const mode = readMode(from) ?? 'band';
  const pieces = readPieces(from);
  return label === null || pieces === null ? null : { band, step, mode, pieces, label };
}

function readMass(from: Taking): PlanLoad | null {
  const label = from.take(/((?:\d+ × )?\d+(?:\.\d+)? (?:kg|lb))/)?.[0] ?? readQuoted(from);
  if (label === null) return null;
  const ownGrams = from.take(/ = (\d+) g/);
  const grams = ownGrams === null ? gramsSaid(label) : Number(ownGrams[0]);
  const ownKg = from.take(/ = (\d+(?:\.\d+)?(?:e[+-]?\d+)?) kg/);
  const kg = ownKg === null ? grams / 1000 : Number(ownKg[0]);
  const mode = readMode(from);
  const pieces = readPieces(from);
  return mode === null || pieces === null ? null : { kg, grams, mode, pieces, label };
}

const readMode = (from: Taking): LoadMode | null =>
  HELD.find(([, held]) => from.take(new RegExp(` ${held}`)) !== null)?.[0] ?? null;

function readQuoted(from: Taking): string | null {
  const words = from.take(/"((?:[^"\\]|\\.)*)"/)?.[0];
  return words === undefined ? null : readWords(words);
}

function readPieces(from: Taking): PlanLoad['pieces'] | null {
  if (from.take(/ \(/) === null) return [];
  const pieces: PlanLoad['pieces'][number][] = [];
  do {
    const id = from.take(/([a-z][a-z0-9.-]*)/)?.[0] ?? readQuoted(from);
    if (id === null) return null;
    const grams = from.take(/ (\d+) g/);
    pieces.push({ id: kitItemId(id), grams: grams === null ? gramsOfItem(id) : Number(grams[0]) });
  } while (from.take(/ \+ /) !== null);
  return from.take(/\)/) === null ? null : pieces;
}
