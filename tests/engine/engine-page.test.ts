/** The engine's own pages say of every rule outside the walk what the rule says of itself. */
import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';
import { RULES_OF_THE_BLOCK } from '../../src/engine/rules-of-the-block.js';

const ENGINE = new URL('../../src/engine/', import.meta.url);
const PAGES = [
  'BLOCK.md',
  'SCREENING.md',
  'VERSIONS.md',
  'LADDER.md',
  'SESSIONS.md',
  'AUDIT.md',
  'HISTORY.md',
  'REVIEW.md',
];
const block = PAGES.map((name) => readFileSync(new URL(name, ENGINE), 'utf8')).join('\n');

/** The cells of the row that begins with the rule's id, as written after it. */
function rowsOf(id: string): readonly (readonly string[])[] {
  return block
    .split('\n')
    .filter((line) => line.startsWith(`| \`${id}\` `))
    .map((line) =>
      line
        .split('|')
        .slice(2, -1)
        .map((cell) => cell.trim()),
    );
}

describe('the pages of the block', () => {
  it.each(RULES_OF_THE_BLOCK.map((rule) => ({ ...rule, name: rule.id })))('has $name as it is', (rule) => {
    const file = readFileSync(new URL(`rules/${rule.id}.ts`, ENGINE), 'utf8');
    const what = /^\/\*\* ([\s\S]*?) \*\//.exec(file)?.[1]?.replaceAll(/\s*\n \* ?/g, ' ');
    const at = rule.locator === '' ? '' : ` (${rule.locator})`;
    const source = rule.standing === 'practice' ? 'practice' : `${rule.standing}: ${rule.source}${at}`;
    if (rule.standing === 'practice') expect(rule.source).toBe('common practice, no source');
    expect(rowsOf(rule.id)).toEqual([[what, `${rule.value} ${rule.unit}`, source]]);
  });

  it('has no rule that is not there', () => {
    const ids = new Set<string>(RULES_OF_THE_BLOCK.map(({ id }) => id));
    const named = [...block.matchAll(/^\| `([a-z-]+)` +\|/gm)].map(([, id = '']) => id);
    expect(named.length).toBe(ids.size);
    for (const id of named) expect(ids).toContain(id);
  });
});
