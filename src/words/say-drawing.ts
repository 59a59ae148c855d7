/** A table of poses → what its drawing shows, in words: for who cannot see it, and for a screen that does not show it. */
import type { Drawn } from '../model/picture.js';
import type { Contact, Pose, PoseKit } from '../model/pose.js';
import type { DrawingWords, Stance } from './drawing-words.js';

const bears = (pose: Pose, part: Contact['part'], side?: Contact['side']): boolean =>
  pose.contacts.some((one) => one.part === part && (side === undefined || one.side === side));

const onFeet = (pose: Pose, side: 'left' | 'right'): boolean =>
  bears(pose, 'foot', side) || bears(pose, 'toes', side) || bears(pose, 'heel', side);

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
  if (bears(pose, 'seat')) return 'sitting';
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
const DEEP = 95;

function trunkOf({ trunk: { lean } }: Pose, words: DrawingWords): readonly string[] {
  if (lean === undefined) return [];
  if (Math.abs(lean) < LITTLE) return [words.upright];
  return [words.leaning(lean > 0 ? 'forward' : 'back', Math.abs(lean) > MUCH)];
}

function kneesOf({ knees: { left, right } }: Pose, words: DrawingWords): readonly string[] {
  const most = Math.max(left ?? -1, right ?? -1);
  if (most < 0) return [];
  if (most < LITTLE) return [words.knees.straight];
  return [most < MUCH ? words.knees['a little'] : most < DEEP ? words.knees.bent : words.knees.deep];
}

function handsOf({ hands: { left, right } }: Pose, words: DrawingWords): readonly string[] {
  if (left !== undefined && left === right) return [`${words.hands[left]}`];
  return (['left', 'right'] as const).flatMap((side) => {
    const place = side === 'left' ? left : right;
    return place === undefined ? [] : [words.oneHand(side, words.hands[place])];
  });
}

function kitOf(item: PoseKit, words: DrawingWords): readonly string[] {
  if (item.kind === 'mat') return [];
  const name = words.kit[item.kind];
  return 'held' in item ? [`${name} ${words.held[item.held]}`] : [name];
}

function sayPosition(pose: Pose, words: DrawingWords): string {
  const hands = handsOf(pose, words);
  const held = pose.kit.filter((item) => 'held' in item && (item.held === 'both' || item.held === 'each'));
  const kit = pose.kit.flatMap((item) => kitOf(item, words));
  const inHands = held.length > 0 && pose.hands.left !== undefined && pose.hands.left === pose.hands.right;
  const said = inHands ? [`${kit.join(', ')} ${hands.join()}`] : [...kit, ...armsAlone(pose, hands, words)];
  const parts = [words.stance[stanceOf(pose)], ...trunkOf(pose, words), ...kneesOf(pose, words), ...said];
  return `${pose.name}: ${parts.join(', ')}`;
}

/** Two arms in one place with nothing in them need their own word. */
const armsAlone = (pose: Pose, hands: readonly string[], words: DrawingWords): readonly string[] =>
  pose.hands.left !== undefined && pose.hands.left === pose.hands.right ? [words.bothHands(hands.join())] : hands;

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
