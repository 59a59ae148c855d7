/** What screening reads of a block: it comes before anything of a plan is known. */
import type { Client } from '../../model/client.js';
import type { Day } from '../../model/day.js';
import type { Rulebook } from '../rulebook.js';

export interface Screened {
  readonly client: Client;
  readonly rules: Rulebook;
  readonly today: Day;
  /** First and last training day of the block. */
  readonly firstDay: Day;
  readonly lastDay: Day;
}
