/** The tree of structure elements as it stands in the file's objects. */
import { type Dict, isDict, type Json, type PdfObjects, textOf } from './pdf-objects.js';

export interface Element {
  /** Standard, after the role map. */
  readonly role: string;
  readonly own: string;
  readonly dict: Dict;
  readonly parent: Element | undefined;
  readonly kids: readonly Element[];
  /** References of annotations and other objects it holds. */
  readonly holds: readonly string[];
  readonly hasContent: boolean;
  /** Its own or an ancestor's. */
  readonly language: string;
}

export const roleMap = (objects: PdfObjects): Dict =>
  objects.dict(objects.dict(objects.catalog['/StructTreeRoot'])?.['/RoleMap']) ?? {};

function standardRole(role: string, map: Dict): string {
  let at = role;
  for (let steps = 0; steps <= Object.keys(map).length; steps += 1) {
    const to = map[at];
    if (typeof to !== 'string') return at;
    at = to;
  }
  return at;
}

export function readStructure(objects: PdfObjects): readonly Element[] {
  const map = roleMap(objects);
  const build = (reference: Json, parent: Element | undefined, language: string): readonly Element[] => {
    const dict = objects.dict(reference);
    const own = dict?.['/S'];
    if (!dict || typeof own !== 'string') return [];
    const kids: Element[] = [];
    const holds: string[] = [];
    const lang = textOf(objects.at(dict['/Lang'])) || language;
    const held = objects.list(dict['/K']);
    const element: Element = {
      role: standardRole(own, map).slice(1),
      own: own.slice(1),
      dict,
      parent,
      kids,
      holds,
      hasContent: held.some((kid) => typeof kid === 'number' || objects.dict(kid)?.['/Type'] === '/MCR'),
      language: lang,
    };
    for (const kid of held) {
      const one = objects.dict(kid);
      const object = one?.['/Obj'];
      if (one?.['/Type'] === '/OBJR' && typeof object === 'string') holds.push(object);
      else if (one) kids.push(...build(isDict(kid) ? null : kid, element, lang));
    }
    return [element];
  };
  const root = objects.dict(objects.catalog['/StructTreeRoot']);
  const language = textOf(objects.at(objects.catalog['/Lang']));
  const top = objects.list(root?.['/K']).flatMap((kid) => build(kid, undefined, language));
  const flat = (elements: readonly Element[]): readonly Element[] =>
    elements.flatMap((element) => [element, ...flat(element.kids)]);
  return flat(top);
}
