/** The next load, tempo and version from where the walk stands, with the reps to failure predicted at each. */
import { type Candidate, externalAt, predictedAt, type Situation } from './situation.js';
import type { Ahead } from './walk-rule.js';

export function aheadOf(at: Situation): Ahead {
  return { load: nextLoad(at), tempo: nextTempo(at), version: nextVersion(at) };
}

function nextLoad(at: Situation): Candidate | null {
  const { ground, place } = at;
  const load = place.load + 1;
  if (load >= (ground.footings[place.version]?.external.length ?? 0)) return null;
  return candidateAt(at, place.version, load);
}

function nextTempo(at: Situation): Candidate | null {
  const { ground, place } = at;
  const tempo = place.tempo + 1;
  if (tempo >= ground.input.tempi.length) return null;
  return { ...place, tempo, predicted: predictedAt(at, place.version, place.load, tempo) };
}

/**
 * The harder version at the heaviest load that is lighter than the one held and predicts the bottom of the range with
 * the floor left; else at its lightest. Where nothing is counted the load may not change at all.
 */
function nextVersion(at: Situation): Candidate | null {
  const { ground, place } = at;
  const version = place.version + 1;
  const footing = ground.footings[version];
  if (footing === undefined || footing.external.length === 0) return null;
  const held = externalAt(ground, place);
  if (!footing.counted) return candidateAt(at, version, Math.max(0, footing.external.indexOf(held)));
  const enough = 10 * ground.input.bottom + at.occurrence.floor;
  for (let load = footing.external.length - 1; load > 0; load -= 1) {
    const external = footing.external[load] ?? 0;
    if (ground.habits.newIsLighter ? external >= held : external > held) continue;
    const candidate = candidateAt(at, version, load);
    if (candidate.predicted >= enough) return candidate;
  }
  return candidateAt(at, version, 0);
}

/** Predictions of a step are at normal tempo, whatever tempo it will be done at. */
function candidateAt(at: Situation, version: number, load: number): Candidate {
  const tempo = at.ground.habits.tempoReset ? 0 : at.place.tempo;
  return { version, load, tempo, predicted: predictedAt(at, version, load, 0) };
}
