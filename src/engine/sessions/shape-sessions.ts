/** The rows of each session in the order they are done, and which circuits stay circuits: decided once, before any walk. */
import type { Finding } from '../../model/plan.js';
import type { Audience, Reason, ReasonInput, Rule } from '../../model/reason.js';
import type { BlockContext } from '../block-context.js';
import { reasonOf } from '../reason-of.js';
import type { FittedRow } from '../rows/fit-rows.js';
import { CIRCUIT_APART } from '../rules/circuit-apart.js';
import { CIRCUIT_BELLS } from '../rules/circuit-bells.js';
import { FAST_FIRST } from '../rules/fast-first.js';
import { FLOOR_LAST } from '../rules/floor-last.js';
import { holdCircuit } from './hold-circuit.js';
import { orderCircuit } from './order-circuit.js';
import { isFast, needsFloor, orderBlocks } from './order-rows.js';

export interface Shape {
  /** Session by session, each in the order done. */
  readonly rows: readonly FittedRow[];
  /** Why a row stands where it does, or is done straight; empty where all is as written. */
  readonly reasonsOf: (fitted: FittedRow) => readonly Reason[];
  readonly findings: readonly Finding[];
}

/**
 * A circuit stays one where its rows need no more kit in hand than `circuit-bells`, held to what they begin with if
 * need be, and an order keeps `circuit-apart`; else its rows are done set by set. `inCircuit` of every row says which.
 */
export function shapeSessions(context: BlockContext, fitted: readonly FittedRow[]): Shape {
  const reasons = new Map<FittedRow, Reason[]>();
  const findings: Finding[] = [];
  const explain = (row: FittedRow, rule: Rule, audiences: readonly Audience[], inputs: readonly ReasonInput[] = []) => {
    const own = audiences.map((audience) => reasonOf(rule, audience, inputs, 'measured'));
    reasons.set(row, [...(reasons.get(row) ?? []), ...own]);
  };
  const rows = groupRows(fitted, ({ session }) => session.id).flatMap((session) => {
    const written = groupRows(session, ({ blockIndex }) => blockIndex).map((block) => {
      const shaped = block[0]?.block.kind === 'circuit' ? shapeCircuit(context, block) : { rows: block };
      for (const row of shaped.held ?? []) explain(row, CIRCUIT_BELLS, BOTH, [word('held', 'yes')]);
      const { broken } = shaped;
      const [first] = shaped.rows;
      if (broken !== undefined && first !== undefined) {
        const inputs = [
          word('circuit', first.block.name),
          { name: 'most', value: context.rules.valueOf(broken), unit: '' },
        ];
        explain(first, broken, BOTH, inputs);
        findings.push(toldOfCircuit(context, first, broken, inputs));
      }
      return shaped.rows;
    });
    return orderBlocks(written, context.rules).flatMap((done) => {
      const before = writtenOrder(done, session);
      for (const row of done) {
        const rule = movedBy(row, before, done);
        if (rule !== null) explain(row, rule, BOTH, [word('block', row.block.name)]);
      }
      return done;
    });
  });
  return { rows, reasonsOf: (row) => reasons.get(row) ?? [], findings };
}

const BOTH: readonly Audience[] = ['client', 'coach'];
const word = (name: string, value: string): ReasonInput => ({ name, value, unit: '' });

interface ShapedCircuit {
  readonly rows: readonly FittedRow[];
  readonly held?: readonly FittedRow[];
  /** The limit that no order and no loads keep: done straight. */
  readonly broken?: Rule;
}

function shapeCircuit(context: BlockContext, written: readonly FittedRow[]): ShapedCircuit {
  const straight = written.map((row): FittedRow => ({ ...row, inCircuit: false }));
  const held = holdCircuit(context, written);
  if (held === null) return { rows: straight, broken: CIRCUIT_BELLS };
  const ordered = orderCircuit(held.rows, context.rules);
  if (ordered === null) return { rows: straight, broken: CIRCUIT_APART };
  return { rows: ordered, held: held.held };
}

function toldOfCircuit(context: BlockContext, row: FittedRow, rule: Rule, inputs: readonly ReasonInput[]): Finding {
  return {
    rule: rule.id,
    audience: 'coach',
    session: row.session.id,
    row: row.row.id,
    weeks: context.programme.curve.map((_, index) => index + 1),
    reason: reasonOf(rule, 'coach', inputs, 'measured'),
  };
}

/** The rows of a block as the programme has them; a row may have been held or made straight since. */
function writtenOrder(done: readonly FittedRow[], session: readonly FittedRow[]): readonly FittedRow[] {
  return session.flatMap((row) => done.filter((own) => own.row.id === row.row.id));
}

/** The rule that moved a row past another of its block. */
function movedBy(row: FittedRow, written: readonly FittedRow[], done: readonly FittedRow[]): Rule | null {
  const passes = (other: FittedRow): boolean =>
    written.indexOf(other) < written.indexOf(row) !== done.indexOf(other) < done.indexOf(row);
  const passed = done.filter((other) => other !== row && passes(other));
  if (passed.length === 0) return null;
  if (row.inCircuit) return CIRCUIT_APART;
  if (isFast(row) && passed.some((other) => !isFast(other))) return FAST_FIRST;
  return needsFloor(row) && passed.some((other) => !needsFloor(other) && !isFast(other)) ? FLOOR_LAST : null;
}

/** Neighbours with one key, in order. */
function groupRows<Key>(rows: readonly FittedRow[], keyOf: (row: FittedRow) => Key): readonly (readonly FittedRow[])[] {
  const groups = new Map<Key, FittedRow[]>();
  for (const row of rows) groups.set(keyOf(row), [...(groups.get(keyOf(row)) ?? []), row]);
  return [...groups.values()];
}
