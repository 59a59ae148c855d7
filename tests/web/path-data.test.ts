/** Path data of outlines: as short as can be, and the same outlines when read back. */
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { nearTheirLike } from '../../layouts/like-drawings.js';
import { eachOutline, pathData } from '../../layouts/path-data.js';
import { begunShort } from '../../src/figures/outlines.js';
import type { Command, Drawing, Outline, Spot } from '../../src/model/picture.js';

const polygon = (spots: readonly Spot[], closed: boolean): Outline => [
  ...spots.map((to, index): Command => ({ kind: index === 0 ? 'move' : 'line', to })),
  ...(closed ? [{ kind: 'close' } as const] : []),
];

/** Corners in half centimetres, y downwards, as whoever draws the path comes by them; what closes it comes to the first again. */
function cornersOf(data: string): readonly Spot[] {
  const corners: [number, number][] = [];
  for (const [, letter, x, y] of data.matchAll(/([Ml])(-?\d+) ?(-?\d+)/g)) {
    const [fromX, fromY] = letter === 'M' ? [0, 0] : (corners.at(-1) ?? [0, 0]);
    corners.push([fromX + Number(x), fromY + Number(y)]);
  }
  return corners;
}

/** In whichever corner it begins. */
const fromLeast = (corners: readonly Spot[]): string => {
  const turned = corners.map((_, index) => JSON.stringify([...corners.slice(index), ...corners.slice(0, index)]));
  return turned.sort()[0] ?? '';
};

const spot = fc.tuple(fc.integer({ min: -300, max: 300 }), fc.integer({ min: -300, max: 300 }));
const someOutline = fc.record({
  corners: fc.uniqueArray(spot, { minLength: 3, maxLength: 6, selector: String }),
  closed: fc.boolean(),
});

test('what is read back of it has the same corners in the same order, each outline by itself', () => {
  fc.assert(
    fc.property(fc.array(someOutline, { maxLength: 5 }), (outlines) => {
      const made = outlines.map(({ corners, closed }) =>
        polygon(
          corners.map(([x, y]): Spot => [x / 2, -y / 2]),
          closed,
        ),
      );
      const back = eachOutline(pathData(made));
      expect(back.map((one) => one.endsWith('z'))).toEqual(outlines.map(({ closed }) => closed));
      const asWritten = (corners: readonly Spot[], closed: boolean) =>
        closed ? fromLeast(corners) : JSON.stringify(corners);
      expect(back.map((one, i) => asWritten(cornersOf(one), outlines[i]?.closed ?? false))).toEqual(
        outlines.map(({ corners, closed }) => asWritten(corners, closed)),
      );
    }),
  );
});

describe('its text', () => {
  const square = (x: number): Outline =>
    polygon(
      [
        [x, 0],
        [x + 100, 0],
        [x + 100, -10],
        [x, -10],
      ],
      true,
    );

  test('of an outline round circles leaves the longest line to be drawn by closing', () => {
    const corners = square(0).flatMap((command) => (command.kind === 'close' ? [] : [command]));
    expect(pathData([begunShort(corners)])).toBe('M0 20l0-20l200 0l0 20z');
  });

  test('tells an outline after a closed one from where that one began, whatever the place', () => {
    expect(pathData([square(0), square(3)])).toBe('M0 0l200 0l0 20l-200 0zm6 0l200 0l0 20l-200 0z');
    const placed = (x: number): string => pathData([square(x), square(x + 3)]).replace(/^M\d+ /, '');
    expect(placed(50)).toBe(placed(0));
  });
});

test('drawings that share what their lines do stand beside each other, each once, the first first', () => {
  const drawing = (outline: Outline): { readonly drawing: Drawing } => {
    const box = { left: 0, right: 1, low: 0, high: 1 };
    const figure = [{ paint: 'solid', weight: 'near', part: 'room', outline } as const];
    return {
      drawing: {
        positions: [],
        row: { places: [{ by: 0, room: [], figure, arrow: [] }], box },
        motion: { picture: { marks: [], box }, passed: [], moves: [], seconds: 1 },
      },
    };
  };
  const wide = (x: number) =>
    drawing(
      polygon(
        [
          [x, 0],
          [x + 9, 1],
          [x + 12, 7],
          [x + 2, 5],
        ],
        true,
      ),
    );
  const tall = (x: number) =>
    drawing(
      polygon(
        [
          [x, 0],
          [x + 1, 40],
          [x - 3, 43],
          [x - 6, 20],
        ],
        true,
      ),
    );
  const [a, b, c, d] = [wide(0), tall(0), wide(30), tall(30)];
  expect(nearTheirLike([a, b, c, d])).toEqual([a, c, b, d]);
  expect(nearTheirLike([])).toEqual([]);
});
