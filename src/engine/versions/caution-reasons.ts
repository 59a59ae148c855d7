/** What a row says of the cautions it meets: to the coach whose they are, to the client what to do. */
import { isoOfDay } from '../../model/day.js';
import type { ExerciseId } from '../../model/identity.js';
import type { Reason, ReasonInput } from '../../model/reason.js';
import { reasonOf } from '../reason-of.js';
import { CAUTION_MET } from '../rules/caution-met.js';
import { WAY_UNLOCKS } from '../rules/way-unlocks.js';
import type { Judged } from './judge-version.js';
import type { Meeting } from './meet-caution.js';

const input = (name: string, value: string): ReasonInput => ({ name, value, unit: '' });

/**
 * For a row whose exercise gave way: every caution that refused it. For one that keeps within a caution: every caution
 * that the versions it goes through meet. Of two meetings with one caution, the first.
 *
 * @param target what the programme names, as judged
 * @param cares the versions planned that meet a caution
 */
export function cautionReasons(target: Judged, chosen: Judged, cares: readonly Judged[]): readonly Reason[] {
  const way = chosen.way;
  const changed = way !== null || chosen.exercise !== target.exercise ? target.refusedBy : [];
  const kept = cares.flatMap(({ care }) => care);
  const told = [
    ...changed.map((meeting) => ({ meeting, kept: false })),
    ...kept.map((meeting) => ({ meeting, kept: true })),
  ];
  const cautions = told.filter(
    ({ meeting }, index) => told.findIndex((other) => other.meeting.caution === meeting.caution) === index,
  );
  return [
    ...(way === null ? [] : wayReasons(chosen.exercise.id, way.say, target.refusedBy)),
    ...cautions.flatMap(({ meeting, kept: stays }) => [
      reasonOf(CAUTION_MET, 'client', inputsOf(meeting, stays), 'measured'),
      reasonOf(CAUTION_MET, 'coach', inputsOf(meeting, stays), 'measured'),
    ]),
  ];
}

function inputsOf({ caution, ask }: Meeting, kept: boolean): readonly ReasonInput[] {
  const { what, degree, side, by, from, say } = caution;
  return [
    input('caution', what),
    input('degree', degree),
    input('side', side),
    ...caution.phases.map((phase) => input('phase', phase)),
    input('asks', ask.degree),
    input('by', by),
    input('since', isoOfDay(from)),
    input('kept', kept ? 'kept' : 'changed'),
    ...(say === undefined || say === '' ? [] : [input('say', say)]),
  ];
}

function wayReasons(exercise: ExerciseId, way: string, met: readonly Meeting[]): readonly Reason[] {
  const what = [...new Set(met.map(({ caution }) => caution.what))].map((name) => input('caution', name));
  const inputs = [input('exercise', exercise), input('way', way), ...what];
  return [reasonOf(WAY_UNLOCKS, 'client', inputs, 'measured'), reasonOf(WAY_UNLOCKS, 'coach', inputs, 'measured')];
}
