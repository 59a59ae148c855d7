/** Where a row begins, as the walk and what explains it read it. How it is found stands with `begin-row`. */
import type { Day } from '../../model/day.js';
import type { CapacityInput, StrandInput, VersionInput } from '../../model/strand.js';
import type { Trust } from '../breaks/trust.js';
import type { TestedCapacity } from '../capacity/read-capacity.js';
import type { Judged } from '../versions/judge-version.js';
import type { RoleBell } from './role-bell.js';

/** What a test says of the row's first version. */
export interface Found {
  readonly how: 'tested' | 'parts' | 'relative' | 'feeler';
  readonly capacity: CapacityInput | null;
  readonly start: StrandInput['start'];
  /** The test it rests on: the row's own, its weakest part's or its relative's. */
  readonly tested: TestedCapacity | null;
  /** The exercise tested. */
  readonly source: Judged | null;
}

export interface Beginning extends Begun {
  /** How far the test still speaks after a break. */
  readonly trust: Trust;
  /** Loads lighter than it would have begun with, for what `trust` says; 0 where there is no lighter one. */
  readonly lighter: number;
}

export interface Begun extends Found {
  /** The chain as the walk reads it: the loads of the row's role, and a combination's share of the body. */
  readonly versions: readonly VersionInput[];
  /** Where it goes on from marks, the day of the last of them. */
  readonly since?: Day;
  /** `null` where the row asks for none, or no main bell is known. */
  readonly role: RoleBell | null;
}
