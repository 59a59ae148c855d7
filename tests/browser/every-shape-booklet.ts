/** The booklet of the plan of every shape, over four weeks, and what of the plan travels with it. */
import { composeBooklet } from '../../src/booklet/compose-booklet.js';
import type { Booklet } from '../../src/model/booklet.js';
import type { ClientPlan } from '../../src/model/client-plan.js';
import type { Drawings } from '../../src/model/picture.js';
import { clientPlanOf } from '../../src/web/client-plan.js';
import { drawnOf } from '../fixtures/drawn.js';
import { everyShapeLibrary } from '../fixtures/every-shape-library.js';
import { everyShapePlan } from '../fixtures/every-shape-plan.js';
import { client } from '../fixtures/library.js';

const plan = everyShapePlan(4);

export const everyShapeBooklet: Booklet = composeBooklet({ library: everyShapeLibrary, client, plan });
export const everyShapeSent: ClientPlan = clientPlanOf(plan);

const drawn = drawnOf(['Start', 'End']);
/** Of every exercise, somebody who stands: what a drawing shows is not looked at here, that there is one is. */
export const everyShapeDrawings: Drawings = new Map(everyShapeLibrary.exercises.map(({ id }) => [id, drawn]));
