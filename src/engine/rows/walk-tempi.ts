/** The tempi a row may walk through: those written, or where the clock decides the first alone. */
import type { TempoStep } from '../../model/programme.js';
import type { BlockContext } from '../block-context.js';
import { CLOCK_ONE_TEMPO } from '../rules/clock-one-tempo.js';
import type { WalkFitted } from './fit-rows.js';

export const walkTempi = (
  { rules }: BlockContext,
  { row, dose }: Pick<WalkFitted, 'row' | 'dose'>,
): readonly TempoStep[] => row.tempi.slice(0, dose.kind === 'sets' ? row.tempi.length : rules.valueOf(CLOCK_ONE_TEMPO));
