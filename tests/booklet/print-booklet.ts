/** Prints the hand-made booklet and its account as JSON: run in other zones and locales to see that nothing moves. */
import { composeBooklet } from '../../src/booklet/compose-booklet.js';
import { sayPlan } from '../../src/words/say-plan.js';
import { sayWhy } from '../../src/words/say-why.js';
import { client, library } from '../fixtures/library.js';
import { plan } from '../fixtures/plan.js';

const said = sayPlan(plan);
process.stdout.write(JSON.stringify([composeBooklet({ library, client, plan: said }), said, sayWhy(said)]));
