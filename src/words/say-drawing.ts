/** A table of poses → what its drawing shows, in words: for who cannot see it, and for a screen that does not show it. */
import type { Drawn } from '../model/picture.js';
import type { Contact, Pose, PoseKit } from '../model/pose.js';
import type { DrawingWords, Stance } from './drawing-words.js';
import { armsOf, bears, feetOf, handPlaces, kneesOf, legsOf, onFeet } from './say-limbs.js';

function stanceOf(pose: Pose): Stance {
  const { lying } = pose.trunk;
  const hands = bears(pose, 'hand', 'left') || bears(pose, 'hand', 'right');
  const onFloor = (part: Contact['part']): boolean =>
    pose.contacts.some((one) => one.part === part && one.on !== 'wall');
  if (lying?.endsWith('side down')) {
    return onFloor('left side') || onFloor('right side') ? 'on the side' : 'on one arm';
  }
  if (bears(pose, 'belly') || bears(pose, 'hips')) return 'on the belly';
  if (onFloor('back')) return 'on the back';
  if (onFloor('shoulders')) return 'bridging';
  if (onFloor('seat')) return 'sitting';
  if (onFloor('forearm'))
    return bears(pose, 'forearm', 'left') && bears(pose, 'forearm', 'right') ? 'on the forearms' : 'on one arm';
  const [left, right] = [bears(pose, 'knee', 'left'), bears(pose, 'knee', 'right')];
  if (hands && onFloor('hand') && lying !== undefined)
    return left || right ? 'on hands and knees' : 'on hands and feet';
  if (left && right) return 'kneeling';
  if (left || right) return 'half kneeling';
  if (onFeet(pose, 'left') !== onFeet(pose, 'right')) return 'standing on one leg';
  if (bears(pose, 'toes', 'left') && bears(pose, 'toes', 'right')) return 'on the toes';
  const stride = Math.abs((pose.feet.left.ahead ?? 0) - (pose.feet.right.ahead ?? 0));
  return stride > 25 ? 'in a stride' : 'standing';
}

const LITTLE = 12;
const MUCH = 40;

/** Which of two words a signed angle asks for; none where it is too small to see. */
const either = (angle: number | undefined, more: string, less: string): readonly string[] =>
  angle === undefined || Math.abs(angle) < LITTLE ? [] : [angle > 0 ? more : less];

function leanOf({ lean, tip = 0 }: Pose['trunk'], words: DrawingWords): readonly string[] {
  if (Math.abs(tip) >= LITTLE) return [words.leaning(tip > 0 ? 'right' : 'left', Math.abs(tip) > MUCH)];
  if (lean === undefined) return [];
  if (Math.abs(lean) < LITTLE) return [words.upright];
  return [words.leaning(lean > 0 ? 'forward' : 'back', Math.abs(lean) > MUCH)];
}

const trunkOf = ({ trunk }: Pose, words: DrawingWords): readonly string[] => [
  ...leanOf(trunk, words),
  ...either(trunk.bend, words.rounded, words.arched),
  ...either(trunk.sideBend, words.bentAside('right'), words.bentAside('left')),
  ...either(trunk.turn, words.turned('left'), words.turned('right')),
];

function kitOf(item: PoseKit, words: DrawingWords): readonly string[] {
  if (item.kind === 'mat') return [];
  const name = words.kit[item.kind];
  return 'held' in item ? [`${name} ${words.held[item.held]}`] : [name];
}

/** What both hands have is said together with where they are. */
function kitAndHands(pose: Pose, words: DrawingWords): readonly string[] {
  const { left, right } = pose.hands;
  const alike = left !== undefined && left === right;
  const inHands = (item: PoseKit): boolean => 'held' in item && (item.held === 'both' || item.held === 'each');
  const held = alike ? pose.kit.filter(inHands) : [];
  const rest = pose.kit.filter((item) => !held.includes(item)).flatMap((item) => kitOf(item, words));
  const places = handPlaces(pose, words);
  if (held.length === 0) return [...rest, ...places.map(({ alone }) => alone)];
  return [
    `${held.flatMap((item) => kitOf(item, words)).join(', ')} ${places.map(({ place }) => place).join()}`,
    ...rest,
  ];
}

function sayPosition(pose: Pose, words: DrawingWords): string {
  const stance = stanceOf(pose);
  const parts = [
    words.stance[stance],
    ...trunkOf(pose, words),
    ...feetOf(pose, words),
    ...kneesOf(pose, words),
    ...legsOf(pose, stance, words),
    ...armsOf(pose, stance, words),
    ...kitAndHands(pose, words),
  ];
  return `${pose.name}: ${parts.join(', ')}`;
}

/** `Seen from the side. Start: standing, trunk upright, a bell in both hands at the chest. Bottom: …` */
export function sayDrawing(poses: readonly Pose[], words: DrawingWords): string {
  let view: Pose['view'] | undefined;
  const sentences = poses.map((pose) => {
    const text = sayPosition(pose, words);
    const named = `${text.charAt(0).toUpperCase()}${text.slice(1)}.`;
    const seen = pose.view === view ? '' : `${words.view[pose.view]}. `;
    view = pose.view;
    return `${seen}${named}`;
  });
  return sentences.join(' ');
}

/** The coach's own words, or else the table's. */
export const sayDrawn = ({ said, poses }: Pick<Drawn, 'said' | 'poses'>, words: DrawingWords): string =>
  said ?? sayDrawing(poses, words);
