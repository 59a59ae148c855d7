/** Points and turns in space, in centimetres: x ahead, y up, z to the figure's own right. */
export type Vector = readonly [number, number, number];

export const ORIGIN: Vector = [0, 0, 0];
export const UP: Vector = [0, 1, 0];

export const add = (a: Vector, b: Vector): Vector => [a[0] + b[0], a[1] + b[1], a[2] + b[2]];
export const minus = (a: Vector, b: Vector): Vector => [a[0] - b[0], a[1] - b[1], a[2] - b[2]];
export const times = (a: Vector, by: number): Vector => [a[0] * by, a[1] * by, a[2] * by];
export const dot = (a: Vector, b: Vector): number => a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
const cross = (a: Vector, b: Vector): Vector => [
  a[1] * b[2] - a[2] * b[1],
  a[2] * b[0] - a[0] * b[2],
  a[0] * b[1] - a[1] * b[0],
];
export const lengthOf = (a: Vector): number => Math.hypot(a[0], a[1], a[2]);
export const between = (a: Vector, b: Vector, share: number): Vector => add(times(a, 1 - share), times(b, share));

export function unit(a: Vector): Vector {
  const length = lengthOf(a);
  return length === 0 ? UP : times(a, 1 / length);
}

/** A turn: where the three axes go, one after the other. */
export type Turn = readonly [Vector, Vector, Vector];
export const NO_TURN: Turn = [
  [1, 0, 0],
  [0, 1, 0],
  [0, 0, 1],
];

export const turned = (by: Turn, point: Vector): Vector =>
  add(add(times(by[0], point[0]), times(by[1], point[1])), times(by[2], point[2]));

/** First `inner`, then `outer`. */
export const both = (outer: Turn, inner: Turn): Turn => [
  turned(outer, inner[0]),
  turned(outer, inner[1]),
  turned(outer, inner[2]),
];

export type Axis = 'x' | 'y' | 'z';

/** About one of the axes, by the right-hand rule, in radians. */
export function about(axis: Axis, angle: number): Turn {
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  if (axis === 'x') {
    return [
      [1, 0, 0],
      [0, c, s],
      [0, -s, c],
    ];
  }
  if (axis === 'y') {
    return [
      [c, 0, -s],
      [0, 1, 0],
      [s, 0, c],
    ];
  }
  return [
    [c, s, 0],
    [-s, c, 0],
    [0, 0, 1],
  ];
}

/** About any line through the origin: Rodrigues' formula. */
export function aboutLine(line: Vector): Turn {
  const angle = lengthOf(line);
  // The line of less than this is lost in rounding.
  if (angle < 1e-12) return NO_TURN;
  const k = times(line, 1 / angle);
  const [c, s] = [Math.cos(angle), Math.sin(angle)];
  const spin = (v: Vector): Vector => add(add(times(v, c), times(cross(k, v), s)), times(k, dot(k, v) * (1 - c)));
  return [spin(NO_TURN[0]), spin(NO_TURN[1]), spin(NO_TURN[2])];
}

export const radians = (degrees: number): number => (degrees * Math.PI) / 180;
export const degrees = (angle: number): number => (angle * 180) / Math.PI;
