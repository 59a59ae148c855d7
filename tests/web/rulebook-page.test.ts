/** The rulebook's page: every rule of the planner once, in words that stand alone, with where its value comes from. */
import { describe, expect, test } from 'vitest';
import { listRulebook } from '../../src/engine/rulebook.js';
import { RULES_OF_THE_BLOCK } from '../../src/engine/rules-of-the-block.js';
import { rulesOfTheWalk } from '../../src/engine/rules-of-the-walk.js';
import type { RuleOverride } from '../../src/model/studio.js';
import { libraryPages, RULEBOOK } from '../../src/web/library/render-library.js';
import { sayRule, sayRuleTitle, sayRuleValue } from '../../src/words/rulebook-words.js';
import { PLAIN } from '../../src/words/rules/plain.js';
import { RULE_TITLES } from '../../src/words/rules/titles.js';
import { speechOf } from '../../src/words/speech.js';
import { fixturePublic } from './library-fixture.js';

const speech = speechOf('en-GB');
const rules = [...RULES_OF_THE_BLOCK, ...rulesOfTheWalk.map(({ row }) => row)];
const rulebook = listRulebook([]);
const entries = rulebook.flatMap((room) => room.entries);

async function pageOf(overrides: readonly RuleOverride[] = []): Promise<string> {
  const pages = await libraryPages({ library: fixturePublic, rulebook: listRulebook(overrides) });
  return pages.find(({ path }) => path === RULEBOOK)?.render() ?? '';
}
const html = await pageOf();
const article = (of: string, id: string): string =>
  new RegExp(`<article class="rule" id="${id}">.*?</article>`).exec(of)?.[0].replaceAll('\u00a0', ' ') ?? '';

describe('words', () => {
  test.each(rules)('$id can be said where there is no plan', (rule) => {
    const said = sayRule(rule, speech);
    expect(said).toMatch(/^[A-Z0-9].*\.$/s);
    expect(said).not.toMatch(/undefined|\s{2}|\s[.,:;]|\(\)/);
    expect(sayRuleTitle(rule.id)).toMatch(/^[A-Z][^.]{2,60}$/);
  });

  test('two rules of one room never share a title', () => {
    for (const { room, entries: own } of rulebook) {
      const titles = own.map(({ rule }) => sayRuleTitle(rule.id));
      expect([room, titles.filter((title, at) => titles.indexOf(title) !== at)]).toEqual([room, []]);
    }
  });

  test('nothing is written of a rule that is not there', () => {
    const ids = new Set<string>(rules.map(({ id }) => id));
    expect([...Object.keys(RULE_TITLES), ...Object.keys(PLAIN)].filter((id) => !ids.has(id))).toEqual([]);
  });

  test('a value is said in its unit', () => {
    const value = (id: string): string => {
      const entry = entries.find(({ rule }) => rule.id === id);
      return entry ? sayRuleValue(entry.rule, entry.rule.value, entry.bounds, speech).replaceAll('\u00a0', ' ') : '?';
    };
    expect(['floor-alone', 'audit-weekly-sets', 'put-down', 'gain-trained', 'warm-up-load'].map(value)).toEqual([
      '2 reps',
      '4 sets',
      '5 s',
      '0.5 %',
      '75 %',
    ]);
    expect(['feeler-rise', 'rpe-to-reserve', 'walk-slower', 'start-moved'].map(value)).toEqual([
      '1 load',
      '10',
      '',
      '0 days',
    ]);
  });
});

describe('the page', () => {
  test('has every rule once, under its own name', () => {
    const ids = [...html.matchAll(/<article class="rule" id="([^"]+)">/g)].map(([, id = '']) => id);
    expect([...ids].sort()).toEqual(rules.map(({ id }): string => id).sort());
  });

  test('leads to its rooms, and runs nothing', () => {
    const rooms = [...html.matchAll(/<a href="#(room-[a-z]+)">/g)].map(([, id = '']) => id);
    expect(rooms).toHaveLength(rulebook.length);
    for (const id of rooms) expect(html).toContain(`<h2 id="${id}">`);
    // What crawlers are told is data.
    expect(html.match(/<script[^>]*>/g)).toEqual(['<script type="application/ld+json">']);
  });

  test('says where a value comes from, as faithfully as it does', () => {
    expect(article(html, 'audit-weekly-sets')).toContain(
      'As published: Iversen et al. 2021, Sports Med 51:2079-2095 (at least 4 weekly sets a muscle group)',
    );
    expect(article(html, 'older-from')).toContain('Adapted from: WHO guidelines');
    expect(article(html, 'floor-alone')).toContain('<dd>Common practice, no source</dd>');
    expect(article(html, 'floor-alone')).toContain('<dd>floor-alone in rules.md, from 10 (1 rep) to 60 (6 reps)</dd>');
    expect(article(html, 'put-down')).toContain('<dd>put-down in rules.md, from 2 s to 20 s</dd>');
    expect(article(html, 'minutes-cap')).not.toContain('rules.md');
  });

  test('shows the coach’s own value with the reason, and keeps the rule’s own beside it', async () => {
    const place = { file: 'rules.md', line: 1, column: 1, length: 1 };
    const own = article(
      await pageOf([{ rule: 'floor-alone', value: 30, reason: 'most of <ours> are new', place }]),
      'floor-alone',
    );
    expect(own).toContain('never fewer than 3 in reserve');
    expect(own).toContain('<dd>2 reps</dd>');
    expect(own).toContain('<strong>3 reps: most of &lt;ours> are new</strong>');
  });
});
