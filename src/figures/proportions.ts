/** Centimetres. */
export const STATURE = 175;

/** Fractions of stature. */
export const FRACTIONS = {
  upperArm: 0.186,
  forearm: 0.146,
  hand: 0.108,
  thigh: 0.245,
  shank: 0.246,
  foot: 0.152,
  ankleHeight: 0.039,
  trunk: 0.288,
  neck: 0.052,
  head: 0.13,
  shoulderBreadth: 0.259,
  hipBreadth: 0.191,
} as const;

const of = (part: keyof typeof FRACTIONS): number => FRACTIONS[part] * STATURE;

export const UPPER_ARM = of('upperArm');
export const FOREARM = of('forearm');
export const HAND = of('hand');
export const THIGH = of('thigh');
export const SHANK = of('shank');
const FOOT = of('foot');
export const ANKLE = of('ankleHeight');
export const TRUNK = of('trunk');

/** Joint centres lie inside the breadths that are measured over the skin: ours, by eye. */
export const HALF_HIPS = of('hipBreadth') * 0.26;
export const HALF_SHOULDERS = of('shoulderBreadth') * 0.42;

/** Heights above the hips at which the spine is drawn to bend, and where neck and head begin. */
export const WAIST = TRUNK * 0.24;
export const MID_BACK = TRUNK * 0.54;
export const NECK_BASE = TRUNK + 2.5;
export const HEAD_JOINT = NECK_BASE + of('neck') * 0.9;

/** The heel behind the ankle, the ball and the tip of the toes ahead of it. */
export const HEEL = -0.24 * FOOT;
export const BALL = 0.46 * FOOT;
export const TOE_TIP = FOOT + HEEL;

const MASSED = [
  'head',
  'thorax',
  'abdomen',
  'pelvis',
  'upperArm',
  'forearm',
  'hand',
  'thigh',
  'shank',
  'foot',
] as const;
export type Massed = (typeof MASSED)[number];

/** Share of the body's mass, each limb's for one side. */
export const MASS_SHARES: Readonly<Record<Massed, number>> = {
  head: 0.081,
  thorax: 0.216,
  abdomen: 0.139,
  pelvis: 0.142,
  upperArm: 0.028,
  forearm: 0.016,
  hand: 0.006,
  thigh: 0.1,
  shank: 0.0465,
  foot: 0.0145,
};

/** How far along a limb its centre of mass lies, from the end nearer the trunk. */
export const CENTRES = { upperArm: 0.436, forearm: 0.43, hand: 0.506, thigh: 0.433, shank: 0.433 } as const;

/** Kilograms: the figure's own, to weigh it against the kit it holds. */
export const BODY_MASS = 72;
