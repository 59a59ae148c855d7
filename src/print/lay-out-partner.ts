/** The partner's card: how to stand beside somebody, when to stop, and what to count and watch. The exercise's own page has the rest. */
import type { PartnerPart } from '../model/booklet.js';
import type { Line } from '../model/prose.js';
import { type Block, block, paragraph, title } from './lay-out-blocks.js';
import { type StyledRun, styledLine, taggedRuns } from './lay-out-lines.js';
import type { Chapter } from './lay-out-pages.js';
import { layOutStopFrame } from './lay-out-stop-frame.js';
import { tag } from './page.js';
import type { Setting } from './setting.js';

export function layOutPartner(part: PartnerPart, setting: Setting, target: string): Chapter {
  const { measure } = setting;
  const call: readonly Line[] = [[{ text: part.call, strong: true }]];
  const list = tag('L');
  const watched = part.watched.flatMap(({ name, count, watch }) => {
    const of = tag('LBody', tag('LI', list));
    const runs: readonly StyledRun[] = [
      ...taggedRuns([{ style: 'text-strong', text: `${name}. `, ...setting.ownName }], of),
      { style: 'text', text: count.join(' '), tag: of },
      ...watch.flatMap((line) => [{ style: 'text' as const, text: ' ', tag: of }, ...styledLine(line, 'text', of)]),
    ];
    return paragraph(runs, measure);
  });
  const blocks: readonly Block[] = [
    block(title(part.title, measure, { tag: tag('H2'), target, level: 1 })),
    block(
      part.paragraphs.flatMap((line) => paragraph(styledLine(line, 'text', tag('P')), measure)),
      { before: 1 },
    ),
    block(layOutStopFrame(part.emergencyTitle, part.emergency, call, setting), { whole: true, before: 1 }),
    block(watched, { before: 1 }),
  ];
  return { start: 'page', running: part.title, blocks };
}
