/** No rule without a row, a list and a reader; what a coach may set, and what stands as it is. */
import { readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { layOverrides, listRulebook, RULE_IDS } from '../../src/engine/rulebook.js';
import { RULES_OF_THE_BLOCK } from '../../src/engine/rules-of-the-block.js';
import { rulesOfTheLadder } from '../../src/engine/rules-of-the-ladder.js';
import { rulesOfTheWalk } from '../../src/engine/rules-of-the-walk.js';
import type { RuleOverride } from '../../src/model/studio.js';

const TOP = new URL('../../', import.meta.url).pathname;
const files = (folder: string): readonly string[] =>
  readdirSync(join(TOP, folder), { recursive: true, encoding: 'utf8' })
    .filter((path) => path.endsWith('.ts'))
    .map((path) => join(folder, path));
const read = (path: string): string => readFileSync(join(TOP, path), 'utf8');

/** A file of `rules/` that holds no rule but what rules are written with. */
const NOT_A_RULE = 'walk-row';
const rules = files('src/engine/rules')
  .map((path) => /([a-z0-9-]+)\.ts$/.exec(path)?.[1] ?? '')
  .filter((name) => name !== NOT_A_RULE);
const isList = (path: string): boolean => /^src\/engine\/rules-of-[a-z-]+\.ts$/.test(path);
const engine = files('src/engine').map((path) => ({ path, text: read(path) }));
const lists = engine.filter(({ path }) => isList(path));
const code = engine.filter(({ path }) => !isList(path));
const imports = (text: string, rule: string): boolean => new RegExp(`from '[./a-z-]*/${rule}\\.js'`).test(text);
/** Rules that act through their list. */
const ofWalk = new Set<string>([...rulesOfTheWalk, ...rulesOfTheLadder].map(({ row }) => row.id));
describe('every rule', () => {
  it.each(rules)('%s is a row of that name, listed once', (rule) => {
    expect(read(`src/engine/rules/${rule}.ts`)).toMatch(new RegExp(`(ruleId|Row)\\(\\s*'${rule}'`));
    expect(lists.filter(({ text }) => imports(text, rule)).map(({ path }) => path)).toHaveLength(1);
    const rows = [...RULES_OF_THE_BLOCK, ...rulesOfTheWalk.map(({ row }) => row)];
    expect(rows.filter(({ id }) => id === rule)).toHaveLength(1);
  });

  it.each(rules.filter((rule) => !ofWalk.has(rule)))('%s is read by code other than its list', (rule) => {
    expect(code.filter(({ text }) => imports(text, rule)).map(({ path }) => path)).not.toEqual([]);
  });

  it('and no row without its file', () => {
    const rows = [...RULES_OF_THE_BLOCK, ...rulesOfTheWalk.map(({ row }) => row)].map(({ id }): string => id);
    expect([...rows].sort()).toEqual([...rules].sort());
  });
});

describe('what a coach may set', () => {
  const place = { file: 'rules.md', line: 3, column: 1, length: 1 };
  const set = (rule: string, value: number): RuleOverride => ({ rule, value, reason: 'seen it', place });
  const codes = (...overrides: readonly RuleOverride[]): readonly string[] =>
    layOverrides(overrides).problems.map(({ code: found }) => found);
  const entries = listRulebook([]).flatMap((room) => room.entries);

  it.each(entries.filter(({ bounds }) => bounds !== null))(
    '$rule.id: its bounds hold its own value, and stop beyond',
    (entry) => {
      const { rule, bounds } = entry;
      const { least, most } = bounds ?? { least: 0, most: 0 };
      expect(least).toBeLessThanOrEqual(rule.value);
      expect(most).toBeGreaterThanOrEqual(rule.value);
      expect(codes(set(rule.id, least), set(rule.id, most))).toEqual([]);
      expect(codes(set(rule.id, most + 1))).toEqual(['rule-out-of-range']);
      expect(codes(set(rule.id, least - 1))).toEqual(['rule-out-of-range']);
      if (most - least > 1) expect(codes(set(rule.id, least + 0.5))).toEqual(['rule-out-of-range']);
    },
  );

  it.each(entries.filter(({ bounds }) => bounds === null))('$rule.id stands as it is', ({ rule }) => {
    expect(codes(set(rule.id, rule.value + 1))).toEqual([
      RULE_IDS.includes(rule.id) ? 'rule-out-of-range' : 'rule-not-found',
    ]);
  });

  it('no floor of reserve goes below one rep, and no adult is under 18', () => {
    for (const { rule, bounds } of entries) {
      if (rule.id.startsWith('floor-') && rule.unit === 'tenths') {
        expect(bounds?.least ?? rule.value, rule.id).toBeGreaterThanOrEqual(10);
      }
    }
    expect(codes(set('adult-from', 17))).toEqual(['rule-out-of-range']);
  });

  it('a value out of bounds leaves the rule’s own standing', () => {
    const { value } = layOverrides([set('floor-alone', 0), set('floor-novice', 40)]);
    const row = (id: string) => value.rows.find((each) => each.id === id);
    expect(row('floor-alone')?.overridden).toBeUndefined();
    expect(row('floor-novice')?.overridden).toEqual({ value: 40, reason: 'seen it' });
  });
});
