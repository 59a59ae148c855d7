/**
 * Ladders written briefly. Rungs: `16: 8 9 10 | 20: 8 9`, a stage for each load (`-` the body alone), a dose for each
 * rung: `8` reps, `30s`, `20m`, `10min`. Weeks: sets, `e` an easy week, `h` held, `+` another session of the week.
 */

import type { LadderResult } from '../../src/engine/ladder/ladder-step.js';
import { planLadder } from '../../src/engine/ladder/plan-ladder.js';
import { rulesOfTheLadder } from '../../src/engine/rules-of-the-ladder.js';
import type { Way } from '../../src/model/exercise.js';
import { exerciseId, kitItemId, rowId, sessionId } from '../../src/model/identity.js';
import type { LadderInput, LadderOccurrence, Rung, RungDose } from '../../src/model/ladder.js';

export interface WrittenLadder {
  readonly rungs: string;
  readonly weeks: string;
  readonly start?: number;
  readonly earned?: 0 | 1 | 2;
  readonly gates?: boolean;
  readonly rules?: LadderInput['rules'];
  readonly way?: Way;
}

export function ladderOf({ rungs, weeks, start, earned, gates, rules, way }: WrittenLadder): LadderInput {
  return {
    id: 'A/row',
    session: sessionId('A'),
    row: rowId('row'),
    way: way ?? 'swing',
    rungs: rungs.split('|').flatMap((stage, index) => stageOf(stage.trim(), index)),
    start: start ?? 0,
    earned: earned ?? 0,
    gates: gates ?? true,
    occurrences: weeks.split(' ').flatMap((week, index) => week.split('+').map((text) => occurrenceOf(text, index))),
    rules: rules ?? { earned: 2, weeks: 2, easyDown: 1 },
  };
}

function stageOf(text: string, stage: number): readonly Rung[] {
  const [load = '-', doses = ''] = text.split(':').map((part) => part.trim());
  const grams = Number(load) * 1000;
  return doses.split(' ').map((dose) => ({
    exercise: exerciseId('move'),
    load:
      load === '-'
        ? null
        : { grams, mode: 'total', pieces: [{ id: kitItemId(`bell-${load}`), grams }], label: `${load} kg` },
    nextUp: null,
    deadStop: false,
    dose: doseOf(dose),
    stage,
  }));
}

function doseOf(text: string): RungDose {
  const figure = Number.parseInt(text, 10);
  if (text.endsWith('min')) return { kind: 'every', reps: 8, everySeconds: 60, minutes: figure };
  if (text.endsWith('s')) return { kind: 'seconds', seconds: figure };
  if (text.endsWith('m')) return { kind: 'metres', metres: figure };
  return { kind: 'reps', reps: figure };
}

function occurrenceOf(text: string, index: number): LadderOccurrence {
  const occurrence = { week: index + 1, easy: text.includes('e'), sets: Number(text.replaceAll(/[eh]/g, '')) };
  return text.includes('h') ? { ...occurrence, held: { why: 'pain' } } : occurrence;
}

function rungText(rung: Rung | undefined): string {
  if (rung === undefined) return '?';
  const { dose, load } = rung;
  const figure =
    dose.kind === 'every'
      ? `${dose.minutes}min`
      : dose.kind === 'seconds'
        ? `${dose.seconds}s`
        : dose.kind === 'metres'
          ? `${dose.metres}m`
          : dose.kind === 'reps'
            ? `${dose.reps}`
            : dose.kind;
  return load === null ? figure : `${figure}@${'grams' in load ? load.grams / 1000 : load.band}`;
}

/** `8@16 · 8@16 · gate 8@20 (10@16: 1, 2) else 10@16 · e 8@20`. */
function ladderText(input: LadderInput, { steps }: LadderResult): string {
  const at = (rung: number): string => rungText(input.rungs[rung]);
  return steps
    .map(({ easy, rung, gate, otherwise }) => {
      const needs = gate === undefined ? '' : ` (${at(gate.needs.rung)}: ${gate.needs.weeks.join(', ') || 'before'})`;
      const other = otherwise === undefined ? '' : ` else ${at(otherwise.rung)}`;
      return `${easy ? 'e ' : ''}${gate === undefined ? '' : 'gate '}${at(rung)}${needs}${other}`;
    })
    .join(' · ');
}

/** What was refused, and by which rule, at every step; and what is found. */
export function refusalsText(input: LadderInput, { steps, findings }: LadderResult): string {
  const at = (rung: number): string => rungText(input.rungs[rung]);
  const asked = steps.map(({ considered }) =>
    considered.map(({ rung, refusedBy }) => `${at(rung)} ${refusedBy ?? 'open'}`).join(', '),
  );
  return [...asked, ...findings.map(({ rule, weeks }) => `${rule} ${weeks.join(', ')}`)].join(' · ');
}

export const climbOf = (written: WrittenLadder, rules = rulesOfTheLadder): string => {
  const input = ladderOf(written);
  return ladderText(input, planLadder(input, rules));
};
