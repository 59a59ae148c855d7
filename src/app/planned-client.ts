/** A client whose plan stands, with the words it is told in. */
import type { Booklet } from '../model/booklet.js';
import type { Client } from '../model/client.js';
import type { Plan } from '../model/plan.js';

export interface PlannedClient {
  readonly client: Client;
  readonly plan: Plan;
  readonly booklet: Booklet;
}
