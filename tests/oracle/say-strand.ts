/** A strand as a coach would jot it down, with the JSON under it to copy from. For messages of failing tests alone. */
import { external } from './capacity.js';
import type { OccurrenceJson, StrandJson, VersionJson } from './strand-json.js';

const kg = (grams: number): string => String(grams / 1000);
const tenths = (value: number): string => String(value / 10);

function sayVersion(version: VersionJson): string {
  const loads = version.loads.map((load) => (load.grams === external(load) ? kg(load.grams) : load.label)).join(', ');
  const share = version.share === null ? 'share unknown' : version.share === 0 ? '' : `share ${version.share / 1000}`;
  const up = version.toHarder === null ? '' : `harder × ${version.toHarder / 1000}`;
  const down = version.toEasier === null ? '' : `easier × ${version.toEasier / 1000}`;
  return [version.exercise, share, loads, up, down].filter((part) => part !== '').join(', ');
}

function sayOccurrence(one: OccurrenceJson): string {
  const held = one.held === undefined ? '' : ` held to ${one.held.maxReps ?? 'no step'}`;
  return `w${one.week}${one.easy ? ' e' : ''} asked ${tenths(one.asked)} floor ${tenths(one.floor)} k ${one.sets}${held}`;
}

export function sayStrand(strand: StrandJson): string {
  const { start, capacity, bodyMass } = strand;
  const test =
    capacity === null
      ? 'nothing known'
      : `R₀ ${capacity.resisted} g for ${tenths(capacity.reps)}${capacity.weak ? ' (weak)' : ''}`;
  const easyWeeks = strand.weeks.filter((week) => week.easy).map((week) => week.week);
  return [
    `${strand.way}, ${strand.equation}; ${strand.bottom}–${strand.top}; ${test}; g ${strand.gain / 100} %;`,
    `  body ${bodyMass === null ? 'unknown' : kg(bodyMass)}; trials ${strand.trials}; ${strand.tempi.length} tempi;`,
    `  greatest ${strand.greatest ?? 'none'}; rules ${JSON.stringify(strand.rules)}`,
    ...strand.versions.map((version, i) => `  ${i === start?.version ? '▸' : ' '} ${sayVersion(version)}`),
    `  starts at ${start === null ? 'nothing' : `${kg(start.load)}, tempo ${start.tempo}, earned ${start.earned}`}`,
    `  ${strand.weeks.length} weeks, easy ${easyWeeks.join(', ')}`,
    ...strand.occurrences.map((one) => `  ${sayOccurrence(one)}`),
    JSON.stringify(strand),
  ].join('\n');
}
