/** Every demo exercise, drawn once: what its drawing shows, how long it moves, what it weighs, and that it is valid. */
import { readFileSync } from 'node:fs';
import { mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { gzipSync } from 'node:zlib';
import { DOMParser } from '@xmldom/xmldom';
import { h } from 'preact';
import { render } from 'preact-render-to-string';
import { beforeAll, describe, expect, test } from 'vitest';
import { FigureRow } from '../../layouts/figure.js';
import { movementOf } from '../../layouts/movement.js';
import { webSources } from '../../src/app/web-sources.js';
import { type Camera, cameraFor, seen } from '../../src/figures/camera.js';
import { heldPieces } from '../../src/figures/hold-kit.js';
import { ankle, grip, headCentre, hipsMiddle } from '../../src/figures/landmarks.js';
import { type PosedBody, poseBodies } from '../../src/figures/pose-body.js';
import { poseSheet } from '../../src/figures/pose-sheet.js';
import { placeOf } from '../../src/figures/skeleton.js';
import type { Exercise } from '../../src/model/exercise.js';
import type { Drawing, Mark, Spot } from '../../src/model/picture.js';
import type { PoseSheet } from '../../src/model/pose-sheet.js';
import { renderPoses } from '../../src/web/render-poses.js';
import { nuFaults } from '../nu-checker.js';
import { readDemo } from '../studio/demo-library.js';
import { DEMO } from '../studio/demo-words.js';

interface Drawn {
  readonly exercise: Exercise;
  readonly sheet: PoseSheet;
}
let drawn: readonly Drawn[] = [];
beforeAll(async () => {
  const { library } = await readDemo();
  drawn = library.exercises.flatMap((exercise) => {
    const sheet = poseSheet(exercise);
    return sheet === null ? [] : [{ exercise, sheet }];
  });
  expect(drawn.length).toBeGreaterThan(0);
  expect(drawn.map(({ exercise }) => exercise.id)).toEqual(library.exercises.map(({ id }) => id));
}, 120_000);

test('where nothing is told of the demo, its sheets mark nothing', () => {
  const marked = drawn.flatMap(({ exercise, sheet }) =>
    sheet.positions.flatMap(({ name, joints, trunk, stands }) => {
      const beyond = joints.filter((one) => one.beyond.left || one.beyond.right).map(({ angle }) => `${angle}`);
      const spine = trunk.filter((one) => one.beyond).map(({ angle }) => `${angle}`);
      return [...beyond, ...spine, ...(stands === 'no' ? ['stands'] : [])].map(
        (what) => `${exercise.id} ${name} ${what}`,
      );
    }),
  );
  expect(marked).toEqual([]);
});

describe('a row of positions', () => {
  test('has under each the one before it, where both are seen from one side', () => {
    for (const { exercise, sheet } of drawn) {
      for (const [index, { ghost }] of sheet.drawing.row.places.entries()) {
        const alike = index > 0 && exercise.poses[index - 1]?.view === exercise.poses[index]?.view;
        expect(ghost, `${exercise.id} ${index}`).toBe(alike ? index - 1 : undefined);
      }
    }
  });

  test('has one arrow at most, the way of something that moved far', () => {
    let arrows = 0;
    for (const { exercise, sheet } of drawn) {
      const bodies = poseBodies(exercise.poses);
      for (const [index, { arrow }] of sheet.drawing.row.places.entries()) {
        if (arrow.length === 0) continue;
        arrows += 1;
        // A line and its head.
        expect(arrow).toHaveLength(2);
        const [before, now] = [bodies[index - 1], bodies[index]];
        if (!before || !now) throw new RangeError('the first position has no way to it');
        const ways = waysOf(before, now);
        const most = Math.max(...ways.map((way) => Math.hypot(...way)));
        const shown = wayOf(arrow);
        const like = ways.filter((way) => Math.hypot(...way) > most / 3 && cosine(way, shown) > 0.9);
        expect(like.length, `${exercise.id} ${now.pose.name}`).toBeGreaterThan(0);
      }
    }
    expect(arrows).toBeGreaterThan(drawn.length);
  });
});

const cosine = ([x, y]: Spot, [ox, oy]: Spot): number => (x * ox + y * oy) / (Math.hypot(x, y) * Math.hypot(ox, oy));

/** From where the arrow's line begins to where it ends. */
function wayOf([line]: readonly Mark[]): Spot {
  const spots = line?.outline.flatMap((one) => (one.kind === 'close' ? [] : [one.to])) ?? [];
  const [from = [0, 0], to = [0, 0]] = [spots[0], spots.at(-1)];
  return [to[0] - from[0], to[1] - from[1]];
}

/** How far kit, head, hands, hips and ankles are from where they were. */
function waysOf(before: PosedBody, now: PosedBody): readonly Spot[] {
  const camera = cameraFor(now.pose.view);
  const [was, is] = [spotsOf(before, now, camera), spotsOf(now, now, camera)];
  return is.flatMap(([x, y], index): readonly Spot[] => {
    const old = was[index];
    return old ? [[x - old[0], y - old[1]]] : [];
  });
}

/** The kit of the later position, in the hands of either. */
const spotsOf = ({ body }: PosedBody, { pose }: PosedBody, camera: Camera): readonly Spot[] => [
  ...[hipsMiddle, headCentre, grip('right'), grip('left'), ankle('right'), ankle('left')].map((spot) =>
    seen(camera, placeOf(body, spot)),
  ),
  ...heldPieces(pose, body)
    .filter(({ hands }) => hands.length > 0)
    .map((piece) => seen(camera, piece.grip)),
];

// The tempo as it stands on the exercise's page: down, below, up, above, in seconds.
describe('one repetition lasts as long as its page says', () => {
  const tempoOf = (id: string): readonly number[] | undefined => {
    const page = readFileSync(join(DEMO, 'exercises', `${id}.md`), 'utf8');
    const [, said] = /^tempo: (\d-\d-\d-\d)$/m.exec(page) ?? [];
    return said?.split('-').map(Number);
  };
  const sum = (numbers: readonly number[]): number => numbers.reduce((whole, one) => whole + one, 0);
  /** Seconds out, and back. */
  const waysIn = ({ motion: { passed, seconds } }: Drawing): readonly [number, number] => {
    const [out = 0, back = 0] = passed.at(-1) ?? [];
    const [, home = 0] = passed[0] ?? [];
    return [out * seconds, (home - back) * seconds];
  };

  test('never shorter, and longer by no more than a moment’s rest and the least a way takes', () => {
    let timed = 0;
    for (const { exercise, sheet } of drawn) {
      const tempo = tempoOf(exercise.id);
      if (!tempo) continue;
      timed += 1;
      const { seconds } = sheet.drawing.motion;
      const legs = exercise.poses.length - 1;
      const [lower = 0, , lift = 0] = tempo;
      const slower = sum([lower, lift].map((way) => Math.max(0, 0.7 * legs - way)));
      expect(seconds, exercise.id).toBeGreaterThanOrEqual(sum(tempo) - 1e-9);
      expect(seconds, exercise.id).toBeLessThanOrEqual(sum(tempo) + slower + 0.2 + 0.5 + 1e-9);
    }
    expect(timed).toBeGreaterThan(40);
  });

  test.each([
    ['goblet-squat', 'down first'],
    ['push-up', 'down first'],
    ['split-squat', 'down first'],
    ['bar-deadlift', 'up first'],
    ['overhead-press', 'up first'],
    ['glute-bridge', 'up first'],
  ] as const)('%s goes %s', (id, first) => {
    const tempo = tempoOf(id);
    const sheet = drawn.find(({ exercise }) => exercise.id === id)?.sheet;
    if (!tempo || !sheet) throw new RangeError(`${id} has no tempo in figures`);
    const [lower = 0, , lift = 0] = tempo;
    const [out, back] = waysIn(sheet.drawing);
    expect(out).toBeCloseTo(first === 'down first' ? lower : lift, 6);
    expect(back).toBeCloseTo(first === 'down first' ? lift : lower, 6);
  });
});

test('each alone weighs at most 6 KB, compressed as a host sends it, with what moves it', () => {
  const sizes = drawn.map(({ exercise, sheet: { drawing } }) => {
    const markup = render(h(FigureRow, { drawing, id: `drawn-${exercise.id}`, alt: '' }));
    return [exercise.id, gzipSync(markup + JSON.stringify(movementOf(drawing)), { level: 9 }).length] as const;
  });
  expect(sizes.filter(([, size]) => size > 6 * 1024)).toEqual([]);
  // What is weighed is a drawing.
  expect(Math.min(...sizes.map(([, size]) => size))).toBeGreaterThan(500);
});

test('the sheets of all: valid HTML by the Nu Html Checker, and each drawing well-formed XML', async () => {
  const sheets = drawn.map(({ sheet }) => sheet);
  const folder = await mkdtemp(join(tmpdir(), 'drawings-'));
  try {
    const pages = await renderPoses(sheets, true, webSources());
    expect(pages).toHaveLength(sheets.length + 1);
    for (const { path, text } of pages) {
      await writeFile(join(folder, path), text);
      const drawings = text.match(/<svg[\s\S]*?<\/svg>/g) ?? [];
      expect(drawings.length).toBeGreaterThan(2);
      for (const drawing of drawings) {
        const faults: string[] = [];
        new DOMParser({ onError: (_, message) => faults.push(message) }).parseFromString(drawing, 'image/svg+xml');
        expect(faults, path).toEqual([]);
      }
    }
    expect(nuFaults(folder)).toEqual([]);
  } finally {
    await rm(folder, { recursive: true, force: true });
  }
}, 300_000);
