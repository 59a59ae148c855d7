/**
 * The partner's card, for somebody who has no booklet in their hand: how to stand beside somebody, when to stop, and of
 * each exercise what to count, watch and say. One sheet, on both its sides where one is not enough; a second one rather
 * than that something is left out.
 */
import type { PartnerPart, Watched } from '../model/booklet.js';
import type { Line } from '../model/prose.js';
import { acrossColumns, layOutCard } from './card-sheet.js';
import { type Block, block, linesOf, paragraph, rule, type Slug, slugsOf, together } from './lay-out-blocks.js';
import { layOutLines, type StyledRun, styledLine, taggedRuns } from './lay-out-lines.js';
import { layOutStopFrame } from './lay-out-stop-frame.js';
import { type Page, type Tag, tag } from './page.js';
import type { Setting } from './setting.js';
import { LINE } from './sheet.js';

const COLUMNS = 2;
const SIDES_OF_A_SHEET = 2;

export function layOutPartnerCard(part: PartnerPart, setting: Setting): readonly Page[] {
  const { measure } = setting;
  const width = acrossColumns(measure.sheet);
  const titled = slugsOf(layOutLines([{ style: 'title', text: part.title, tag: tag('H1') }], width, measure), 'text');
  const above: readonly Slug[] = [
    ...titled.map((slug, i) => (i === 0 ? { ...slug, bookmark: { title: part.title, level: 1 as const } } : slug)),
    { lines: 1, area: 'text', boxes: [rule(0, LINE / 2, width, 1)], withNext: true },
  ];
  const laid = (close: boolean): readonly Page[] =>
    layOutCard({ above, blocks: cardBlocks(part, close, setting), below: [] }, COLUMNS, measure);
  const roomy = laid(false);
  if (roomy.length <= SIDES_OF_A_SHEET) return roomy;
  const closer = laid(true);
  return closer.length < roomy.length ? closer : roomy;
}

function cardBlocks(part: PartnerPart, close: boolean, setting: Setting): readonly Block[] {
  const { measure } = setting;
  const call: readonly Line[] = [[{ text: part.call, strong: true }]];
  return [
    block(part.paragraphs.flatMap((line) => paragraph(styledLine(line, 'text', tag('P')), measure))),
    block(layOutStopFrame(part.emergencyTitle, part.emergency, call, setting, 'H2'), { whole: true, before: 1 }),
    ...part.watched.map((one) => block(together(watchedSlugs(one, part, close, setting)), { whole: true, before: 1 })),
  ];
}

/** Name; what to count and watch; what to say to what is seen, run on where it is set close; when to stop. */
function watchedSlugs(one: Watched, part: PartnerPart, close: boolean, setting: Setting): readonly Slug[] {
  const { measure, labels } = setting;
  const set = (runs: readonly StyledRun[], of: Tag): readonly Slug[] => paragraph(taggedRuns(runs, of), measure);
  const named = set([{ style: 'exercise', text: one.name, ...setting.ownName }], tag('H2'));
  const watched = tag('P');
  const watch = one.watch.flatMap((line): readonly StyledRun[] => [
    { style: 'text', text: ' ' },
    ...styledLine(line, 'text'),
  ]);
  const said = one.faults.map(({ see, say }): readonly StyledRun[] => [
    { style: 'label-strong', text: `${labels['you-see']}: ` },
    ...styledLine(see, 'text'),
    { style: 'text', text: ' ' },
    { style: 'label-strong', text: `${labels.say}: ` },
    ...styledLine(say, 'text'),
  ]);
  const runOn = said.flatMap((runs, i): readonly StyledRun[] => [
    ...(i > 0 ? [{ style: 'text' as const, text: ' ' }] : []),
    ...runs,
  ]);
  const stop = one.stop.flatMap((line, i): readonly StyledRun[] => [
    ...(i > 0 ? [{ style: 'text' as const, text: ' ' }] : []),
    ...styledLine(line, 'text'),
  ]);
  const slugs = [
    ...named,
    ...set([{ style: 'text', text: one.count.join(' ') }, ...watch], watched),
    ...(close && runOn.length > 0 ? set(runOn, tag('P')) : []),
    ...(close ? [] : said.flatMap((runs) => set(runs, tag('P')))),
    ...(stop.length === 0 ? [] : set([{ style: 'text-strong', text: `${part.stopTitle}: ` }, ...stop], tag('P'))),
  ];
  return linesOf(slugs) === 0 ? [] : slugs;
}
