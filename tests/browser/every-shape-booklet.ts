/** The booklet of the plan of every shape, over four weeks, and what of the plan travels with it. */
import { composeBooklet } from '../../src/booklet/compose-booklet.js';
import type { Booklet } from '../../src/model/booklet.js';
import type { ClientPlan } from '../../src/model/client-plan.js';
import { clientPlanOf } from '../../src/web/client-plan.js';
import { everyShapeLibrary } from '../fixtures/every-shape-library.js';
import { everyShapePlan } from '../fixtures/every-shape-plan.js';
import { client } from '../fixtures/library.js';

const plan = everyShapePlan(4);

export const everyShapeBooklet: Booklet = composeBooklet({ library: everyShapeLibrary, client, plan });
export const everyShapeSent: ClientPlan = clientPlanOf(plan);
