/** Where an exercise's page is, as a link behind its name. */
import type { ExerciseId } from '../model/identity.js';
import type { StyledRun } from './lay-out-lines.js';
import { type Tag, tag } from './page.js';
import { exerciseTarget, pageNumber, type Setting } from './setting.js';

const NO_BREAK = '\u00a0';

/** Nothing where there is no page to lead to. */
export function pageLink(id: ExerciseId | undefined, parent: Tag, setting: Setting): readonly StyledRun[] {
  if (id === undefined) return [];
  const to = exerciseTarget(id);
  if (setting.pageOf.size > 0 && !setting.pageOf.has(to)) return [];
  const text = `${setting.labels.page}${NO_BREAK}${pageNumber(setting, to)}`;
  return [
    { style: 'label', text: ' ', tag: parent },
    { style: 'label', text, tag: tag('Link', parent), to },
  ];
}
