/** A date within a problem's sentence. */
import type { IsoDate } from '../../model/day.js';
import { sayFullDate } from '../say-date.js';
import { plainSpaces } from '../spacing.js';
import { speechOf } from '../speech.js';

const speech = speechOf('en-GB');

/** `4 January 2027`. */
export const sayDay = (date: IsoDate): string => plainSpaces(sayFullDate(date, speech));
