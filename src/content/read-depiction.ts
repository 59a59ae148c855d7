/**
 * What stands under *Poses*: the table a drawing is made from, words said in place of what the table says, and a picture of
 * the coach's own. Whether its file is there, and is what its name says, is left to the checks across files.
 */
import type { OwnPicture } from '../model/exercise.js';
import { endingOf, kindNamed } from '../model/picture-kind.js';
import { plainText } from '../model/prose.js';
import type { Block, PictureBlock, Sentence } from '../prose/blocks.js';
import { resolveTarget } from './link-target.js';
import type { OpenFile } from './open-file.js';
import type { Section } from './sections.js';

export interface Depiction {
  readonly table?: Extract<Block, { kind: 'table' }>;
  readonly drawingSaid?: string;
  readonly ownPicture?: OwnPicture;
}

/** Reports `wrong-content`, `picture-twice`, `picture-elsewhere`, `picture-kind`, `picture-undescribed`. */
export function readDepiction(file: OpenFile, section: Section | undefined): Depiction {
  if (!section) return {};
  const strange = ({ place }: Pick<Block, 'place'>): void =>
    file.report.add({ code: 'wrong-content', data: { section: section.name, wanted: 'table' } }, place);
  const said: Sentence[] = [];
  let table: Depiction['table'];
  let picture: PictureBlock | undefined;
  for (const block of section.blocks) {
    if (block.kind === 'table' && !table) table = block;
    else if (block.kind === 'paragraph' && !table) said.push(block.words);
    else if (block.kind !== 'picture') strange(block);
    else if (picture) file.report.add({ code: 'picture-twice', data: {} }, block.place);
    else picture = block;
  }
  // Words about a drawing that is never made.
  if (!table) said.forEach(strange);
  const words = said.map(({ line }) => plainText(line)).join(' ');
  const ownPicture = picture && readPicture(file, picture);
  return {
    ...(table ? { table } : {}),
    ...(table && words !== '' ? { drawingSaid: words } : {}),
    ...(ownPicture ? { ownPicture } : {}),
  };
}

function readPicture(file: OpenFile, { target, said, place }: PictureBlock): OwnPicture | undefined {
  const undescribed = !isDescription(said, target);
  if (undescribed) file.report.add({ code: 'picture-undescribed', data: { text: said } }, place);
  const led = resolveTarget(file.path, target);
  const path = led.kind === 'file' ? led.path : '';
  const beside = /^exercises\/[^/]+$/.test(path);
  if (!beside) {
    const why = led.kind === 'address' ? 'address' : led.kind === 'outside' ? 'outside' : 'folder';
    file.report.add({ code: 'picture-elsewhere', data: { target, why } }, place);
    return undefined;
  }
  if (kindNamed(path) === undefined) {
    file.report.add({ code: 'picture-kind', data: { file: nameIn(path), ending: endingOf(path) } }, place);
    return undefined;
  }
  return { file: path, said, place };
}

export const nameIn = (path: string): string => path.slice(path.lastIndexOf('/') + 1);

/** A file's name is nothing that is to be seen, and nor is a mark without a letter. */
function isDescription(said: string, target: string): boolean {
  const name = nameIn(target).replace(/\.[^.]*$/, '');
  const bare = said.replace(/\.(jpe?g|png|webp)$/i, '');
  return /\p{L}/u.test(said) && bare.toLowerCase() !== name.toLowerCase();
}
