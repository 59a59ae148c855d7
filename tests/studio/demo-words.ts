/**
 * The words of the demo studio as they stand in its files: list items by heading, line by line. On purpose not read
 * through the product's own reader, so that the language is judged as the coach wrote it.
 */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';

export const DEMO = join(import.meta.dirname, '../../content');

export interface DemoLine {
  readonly file: string;
  /** 1-based. */
  readonly line: number;
  /** Empty before the first heading. */
  readonly heading: string;
  /** The phase of a cue, `Pick up` or `Put down`; empty elsewhere. */
  readonly lead: string;
  /** Without markers, addresses and marks of emphasis. */
  readonly text: string;
  /** A link to another page stands in it. */
  readonly linked: boolean;
}

export function linesOf(file: string): readonly DemoLine[] {
  const lines = readFileSync(join(DEMO, file), 'utf8').split('\n');
  const bodyFrom = lines.indexOf('---', 1) + 1;
  let heading = '';
  const found: DemoLine[] = [];
  for (const [i, whole] of lines.entries()) {
    if (i < bodyFrom || whole.trim() === '') continue;
    const head = /^#+ (.*)$/.exec(whole);
    if (head) {
      heading = head[1] ?? '';
      continue;
    }
    const item = whole.replace(/^- /, '').replace(/\[([^\]]*)\]\([^)]*\)/g, '$1');
    const lead = /^(?:\*\*([^*]+)\*\* — |(Pick up|Put down): )(.*)$/.exec(item);
    const text = (lead ? (lead[3] ?? '') : item).replaceAll('**', '');
    found.push({
      file,
      line: i + 1,
      heading,
      lead: lead ? (lead[1] ?? lead[2] ?? '') : '',
      text,
      linked: item !== whole.replace(/^- /, ''),
    });
  }
  return found;
}

const markdownIn = (folder: string): readonly string[] =>
  readdirSync(join(DEMO, folder))
    .filter((name) => name.endsWith('.md'))
    .sort()
    .map((name) => `${folder}/${name}`);

export const exerciseFiles = (): readonly string[] => markdownIn('exercises');
export const programmeFiles = (): readonly string[] => markdownIn('programmes');

export const show = ({ file, line, text }: DemoLine): string => `${file}:${line}: ${text}`;
