/**
 * The table of poses → named positions. A blank cell says what the row above says; a dash says nothing, and leaves it to
 * the drawing. Whether a body could stand so is the figure room's to say.
 */
import type { Place } from '../model/place.js';
import { type OnSides, POSE_COLUMNS, type Pose, type PoseColumn } from '../model/pose.js';
import { plainText } from '../model/prose.js';
import type { Block } from '../prose/blocks.js';
import type { OpenFile } from './open-file.js';
import { POSE_READERS } from './pose-columns.js';
import { asTyped, type Reader } from './read-value.js';
import { type NamedRow, readCell, rowsOf } from './table-rows.js';

const neither = <Value>(value: Value): OnSides<Value> => ({ left: value, right: value });

const START: Omit<Pose, 'place' | 'name'> = {
  view: 'side',
  contacts: [],
  moving: false,
  feet: neither({}),
  trunk: {},
  head: {},
  hips: neither({}),
  knees: neither(undefined),
  ankles: neither(undefined),
  shoulders: neither({}),
  elbows: neither(undefined),
  hands: neither(undefined),
  kit: [],
  cells: {},
};

/** In the order written. Fewer than two positions, or one name twice, is complained of. */
export function readPoses(file: OpenFile, table: Extract<Block, { kind: 'table' }> | undefined): readonly Pose[] {
  if (!table) return [];
  const rows = rowsOf(file, table, { known: POSE_COLUMNS, needed: ['Position'] });
  const poses: Pose[] = [];
  let above = START;
  for (const row of rows) {
    const cell = row.cell('Position');
    const pose = readPose(file, row, above, cell ? plainText(cell.line).trim() : '');
    if (pose.name !== '' && poses.some(({ name }) => sameWords(name, pose.name))) {
      file.report.add({ code: 'pose-twice', data: { position: pose.name } }, row.placeOf('Position'));
    }
    poses.push(pose);
    above = pose;
  }
  if (rows.length === 1) file.report.add({ code: 'pose-alone', data: {} }, table.place);
  return poses;
}

const sameWords = (a: string, b: string): boolean => a.toLowerCase() === b.toLowerCase();

function readPose(file: OpenFile, row: NamedRow<PoseColumn>, above: Omit<Pose, 'place' | 'name'>, name: string): Pose {
  const cells: Partial<Record<PoseColumn, Place>> = { ...above.cells };
  const read = <Value>(column: PoseColumn, was: Value, blank: Value, reader: Reader<Value>): Value => {
    const cell = row.cell(column);
    if (!cell) return was;
    cells[column] = cell.place;
    return asTyped(cell.raw) === '-' ? blank : (readCell(file, cell, reader) ?? was);
  };
  const was = { contacts: above.contacts, moving: above.moving };
  const on = read('On', was, { contacts: [], moving: false }, POSE_READERS.On);
  return {
    name,
    view: read('View', above.view, START.view, POSE_READERS.View),
    ...on,
    feet: read('Feet', above.feet, START.feet, POSE_READERS.Feet),
    trunk: read('Trunk', above.trunk, START.trunk, POSE_READERS.Trunk),
    head: read('Head', above.head, START.head, POSE_READERS.Head),
    hips: read('Hips', above.hips, START.hips, POSE_READERS.Hips),
    knees: read('Knees', above.knees, START.knees, POSE_READERS.Knees),
    ankles: read('Ankles', above.ankles, START.ankles, POSE_READERS.Ankles),
    shoulders: read('Shoulders', above.shoulders, START.shoulders, POSE_READERS.Shoulders),
    elbows: read('Elbows', above.elbows, START.elbows, POSE_READERS.Elbows),
    hands: read('Hands', above.hands, START.hands, POSE_READERS.Hands),
    kit: read('Kit', above.kit, START.kit, POSE_READERS.Kit),
    place: row.place,
    cells,
  };
}
