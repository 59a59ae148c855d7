/** The third script, for clients whose phone may plan again: the planner's own functions, offered to the second. */
import './fill-gaps.js';
import { offerPart } from './parts.js';
import { replanBetween } from './replan-between.js';

offerPart('plan again', replanBetween);
