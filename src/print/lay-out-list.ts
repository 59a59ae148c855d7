/** Lists: items behind a dash, or behind the word that leads them. */
import type { Line } from '../model/prose.js';
import { plainText } from '../model/prose.js';
import { type Column, columnOf, HANG, hangingItem, paragraph, type Slug } from './lay-out-blocks.js';
import { languageOf, type StyledRun, styledLine, taggedRuns } from './lay-out-lines.js';
import type { Measure } from './measure.js';
import { type Tag, tag } from './page.js';

/** Lines as items of one list, each behind an en dash. */
export function dashed(
  lines: readonly Line[],
  measure: Measure,
  column: Column = columnOf('text', measure.sheet),
  parent?: Tag,
): readonly Slug[] {
  const list = tag('L', parent);
  return lines.flatMap((line) => dashedItem(styledLine(line, 'text'), list, measure, column));
}

function dashedItem(runs: readonly StyledRun[], list: Tag, measure: Measure, column: Column): readonly Slug[] {
  const item = tag('LI', list);
  const body = tag('LBody', item);
  return hangingItem(
    [{ style: 'text', text: '–', tag: tag('Lbl', item) }],
    taggedRuns(runs, body),
    HANG,
    measure,
    column,
  );
}

export interface LedLine {
  readonly lead: Line;
  readonly text: Line;
}

/** A lead is bold, whatever its author made of it. */
const leadRuns = (lead: Line, style: 'text-strong' | 'text-italic'): readonly StyledRun[] =>
  lead.length === 0 ? [] : [{ style, text: plainText(lead), ...languageOf(lead) }];

const LEAD_GAP = 9;
const NO_BREAK = '\u00a0';

/** Leads in a column of their own, as wide as the widest, but never more than so much of the measure. */
export function columned(
  lines: readonly LedLine[],
  most: number,
  leadStyle: 'text-strong' | 'text-italic',
  measure: Measure,
): readonly Slug[] {
  const list = tag('L');
  const column = columnOf('text', measure.sheet);
  const widest = Math.max(0, ...lines.map(({ lead }) => measure.width(leadStyle, plainText(lead))));
  const hang = Math.min(widest + LEAD_GAP, column.width * most);
  return lines.flatMap(({ lead, text }) => {
    const item = tag('LI', list);
    if (lead.length === 0) return dashedItem(styledLine(text, 'text'), list, measure, column);
    const label = tag('Lbl', item);
    return hangingItem(
      taggedRuns(leadRuns(lead, leadStyle), label),
      styledLine(text, 'text', tag('LBody', item)),
      hang,
      measure,
    );
  });
}

/** Each item on a line of its own, its text right behind its lead. */
export function ledItems(
  lines: readonly LedLine[],
  leadStyle: 'text-strong' | 'text-italic',
  measure: Measure,
): readonly Slug[] {
  const list = tag('L');
  return lines.flatMap(({ lead, text }) => {
    const item = tag('LI', list);
    const body = tag('LBody', item);
    const led: readonly StyledRun[] =
      lead.length === 0
        ? []
        : [
            ...taggedRuns(leadRuns(lead, leadStyle), tag('Lbl', item)),
            { style: 'text', text: `${NO_BREAK} `, tag: body },
          ];
    return paragraph([...led, ...taggedRuns(styledLine(text, 'text'), body)], measure);
  });
}

/** The lead runs into its text; the item hangs behind a dash. A single item is a paragraph and needs none. */
export function runIn(lines: readonly LedLine[], measure: Measure): readonly Slug[] {
  const [only, ...others] = lines;
  if (only && others.length === 0) {
    const of = tag('P');
    const led = leadRuns(only.lead, 'text-strong').flatMap((run) => [run, { style: 'text', text: ' ' } as const]);
    return paragraph(taggedRuns([...led, ...styledLine(only.text, 'text')], of), measure);
  }
  const list = tag('L');
  return lines.flatMap(({ lead, text }) => {
    const led: readonly StyledRun[] =
      lead.length === 0 ? [] : [...leadRuns(lead, 'text-strong'), { style: 'text', text: ' ' }];
    return dashedItem([...led, ...styledLine(text, 'text')], list, measure, columnOf('text', measure.sheet));
  });
}

/** Items one after the other in one paragraph, each still an item of the list: where room is short. */
export function runOn(lines: readonly LedLine[], measure: Measure): readonly Slug[] {
  if (lines.length < 2) return runIn(lines, measure);
  const list = tag('L');
  const runs = lines.flatMap(({ lead, text }, i): readonly StyledRun[] => {
    const led: readonly StyledRun[] =
      lead.length === 0 ? [] : [...leadRuns(lead, 'text-strong'), { style: 'text', text: ' ' }];
    const ended = /[.!?…’”]$/u.test(plainText(text)) ? '' : '.';
    const after = i === lines.length - 1 ? ended : `${ended} `;
    return taggedRuns(
      [...led, ...styledLine(text, 'text'), ...(after === '' ? [] : [{ style: 'text' as const, text: after }])],
      tag('LBody', tag('LI', list)),
    );
  });
  return paragraph(runs, measure);
}
