/**
 * The names things go by. Branded strings, so that an exercise's id cannot stand where a row's is wanted.
 * Whether a text may be an id is decided by `content`; these constructors only mark it as one.
 */
declare const brand: unique symbol;
type Branded<Name extends string> = string & { readonly [brand]: Name };

export type ExerciseId = Branded<'ExerciseId'>;
export type ProgrammeId = Branded<'ProgrammeId'>;
export type ClientId = Branded<'ClientId'>;
/** One line of a programme's table; unique in its session. */
export type RowId = Branded<'RowId'>;
export type SessionId = Branded<'SessionId'>;
/** One thing a client owns: two equal bells are two items. */
export type KitItemId = Branded<'KitItemId'>;
/** 128 random bits in hexadecimal, made when a client's first edition is issued; in editions and logs. */
export type BookletId = Branded<'BookletId'>;
/** The public folder's name of a sealed booklet; in state only, changed on demand. */
export type FolderId = Branded<'FolderId'>;
export type RuleId = Branded<'RuleId'>;
/** block / occurrence in the queue / row / side / kind / ordinal within the kind; the same in every edition of a block. */
export type SetKey = Branded<'SetKey'>;

export const exerciseId = (text: string): ExerciseId => text as ExerciseId;
export const programmeId = (text: string): ProgrammeId => text as ProgrammeId;
export const clientId = (text: string): ClientId => text as ClientId;
export const rowId = (text: string): RowId => text as RowId;
export const sessionId = (text: string): SessionId => text as SessionId;
export const kitItemId = (text: string): KitItemId => text as KitItemId;
export const bookletId = (text: string): BookletId => text as BookletId;
export const folderId = (text: string): FolderId => text as FolderId;
export const ruleId = (text: string): RuleId => text as RuleId;

export interface SetKeyParts {
  readonly block: number;
  /** 1-based place of the session in the block's queue of sessions. */
  readonly occurrence: number;
  readonly row: RowId;
  readonly side: Side | 'both';
  readonly kind: SetKind;
  readonly ordinal: number;
}

export type Side = 'left' | 'right';
const KINDS = ['warm-up', 'work', 'feeler', 'trial', 'test', 'cool-down'] as const;
export type SetKind = (typeof KINDS)[number];

export const setKey = (parts: SetKeyParts): SetKey =>
  `${parts.block}/${parts.occurrence}/${parts.row}/${parts.side}/${parts.kind}/${parts.ordinal}` as SetKey;

const KEY =
  /^([1-9]\d*)\/([1-9]\d*)\/([^/]+)\/(left|right|both)\/(warm-up|work|feeler|trial|test|cool-down)\/([1-9]\d*)$/;

/** The parts of a set's key; `null` where the text is none. */
export function readSetKey(text: string): SetKeyParts | null {
  const [, block, occurrence, row, side, kind, ordinal] = KEY.exec(text) ?? [];
  if (row === undefined) return null;
  return {
    block: Number(block),
    occurrence: Number(occurrence),
    row: rowId(row),
    side: side === 'left' || side === 'right' ? side : 'both',
    kind: KINDS.find((each) => each === kind) ?? 'work',
    ordinal: Number(ordinal),
  };
}

/** The stated order of every list of ids: by code point, so that no locale changes it. */
export function compareIds(a: string, b: string): number {
  const shorter = Math.min(a.length, b.length);
  for (let i = 0; i < shorter; i += 1) {
    const difference = rankOf(a.charCodeAt(i)) - rankOf(b.charCodeAt(i));
    if (difference !== 0) return difference;
  }
  return a.length - b.length;
}

/** Halves of pairs stand for code points above all that are written in one unit. */
const rankOf = (unit: number): number => (unit >= 0xd800 && unit <= 0xdfff ? unit + 0x10000 : unit);
