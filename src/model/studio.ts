/** The studio itself, and everything read from one content folder. */
import type { Client } from './client.js';
import type { Exercise } from './exercise.js';
import type { Place } from './place.js';
import type { Programme } from './programme.js';
import type { Line } from './prose.js';
import type { MassUnit } from './quantity.js';

export interface Studio {
  readonly name: string;
  readonly place: string;
  readonly coach: string;
  /** BCP 47. */
  readonly language: string;
  readonly unit: MassUnit;
  readonly paper: 'a4' | 'letter';
  readonly emergencyNumber: string;
  /** Where the library is hosted; absent while it is not. */
  readonly address?: string;
  /** What the studio says of itself, for the library's first page. */
  readonly description?: readonly Line[];
  readonly source: Place;
}

/** A value the coach has set for one of the engine's named rules. */
export interface RuleOverride {
  readonly rule: string;
  readonly value: number;
  readonly reason: string;
  readonly place: Place;
}

/** In order of id, each list; nothing in it is changed after reading. */
export interface Library {
  readonly studio: Studio;
  readonly exercises: readonly Exercise[];
  readonly programmes: readonly Programme[];
  readonly overrides: readonly RuleOverride[];
}

export interface Content {
  readonly library: Library;
  readonly clients: readonly Client[];
}
