/** Where breath is the measure and the row does not say how hard, whole sentences can still be said: moderate work. */
import { sourcedRow } from './walk-row.js';

export const TALK_SENTENCES = sourcedRow(
  'talk-sentences',
  1,
  'levels',
  'adapted',
  "Webster & Aznar-Laín 2008, ACSM's Health & Fitness Journal 12(3):13-17",
  'review of the talk test as a measure of moderate and vigorous effort',
);
