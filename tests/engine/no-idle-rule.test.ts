/**
 * No rule outside the walk is idle: over real-life cases and made-up studios each is either the reason of something
 * planned or told, or another value of it changes a plan; what none of them meets is shown by a check that names it. (The walk and the ladder take their rules out in turn.)
 */
import { readdirSync, readFileSync } from 'node:fs';
import { beforeAll, describe, expect, it, vi } from 'vitest';
import type { BlockInput } from '../../src/engine/plan-block.js';
import { planBlock } from '../../src/engine/plan-block.js';
import type * as RulebookModule from '../../src/engine/rulebook.js';
import { RULES_OF_THE_BLOCK } from '../../src/engine/rules-of-the-block.js';
import type { Rule } from '../../src/model/reason.js';
import { readCaseFile } from '../cases/read-case.js';
import { readLibrary } from '../cases/read-library.js';
import { generateStudio } from './generate-studio.js';

/** What is asked of the rules while a plan is made: which were read, and one that answers with another value. */
const asked = vi.hoisted(() => ({ read: new Set<string>(), other: new Map<string, number>() }));

vi.mock('../../src/engine/rulebook.js', async (original) => {
  const real = await original<typeof RulebookModule>();
  const layOverrides: typeof real.layOverrides = (overrides) => {
    const { value, problems } = real.layOverrides(overrides);
    const rows = value.rows.map((row) => {
      const other = asked.other.get(row.id);
      return other === undefined ? row : { ...row, overridden: { value: other, reason: 'to see what it does' } };
    });
    const inForce = (rule: Rule): number => {
      asked.read.add(rule.id);
      return asked.other.get(rule.id) ?? value.valueOf(rule);
    };
    return { value: { rows, valueOf: inForce }, problems };
  };
  return { ...real, layOverrides };
});

const CASES = new URL('../cases/', import.meta.url).pathname;
const STUDIOS = 40;
/** As far as is looked for a rule that none of those meets. */
const MORE_STUDIOS = 240;

interface Made {
  readonly input: BlockInput;
  readonly text: string;
  readonly read: ReadonlySet<string>;
}
const made: Made[] = [];
let said = '';

/** What came of it. The rules' own rows and what a strand carries of them are left out: they only repeat a value. */
function outcome(input: BlockInput): string {
  const { value, problems } = planBlock(input);
  const { weeks, findings, stops, inputs } = value ?? {};
  return JSON.stringify([problems, weeks, findings, stops, inputs?.standing, inputs?.floors]);
}

function plan(input: BlockInput): Made {
  asked.read.clear();
  const text = outcome(input);
  return { input, text, read: new Set(asked.read) };
}

beforeAll(() => {
  const exercises = readLibrary();
  const names = readdirSync(CASES).flatMap((file) =>
    file.endsWith('.case.txt') ? [file.replace('.case.txt', '')] : [],
  );
  for (const name of names) {
    const { library, client, today, history } = readCaseFile(name, exercises);
    made.push(plan({ library, client, today, history, edition: 0 }));
  }
  for (let seed = 0; seed < STUDIOS; seed += 1) made.push(studio(seed));
  said = made.map(({ text }) => text).join('\n');
}, 300_000);

const studio = (seed: number): Made => {
  const { library, client, today } = generateStudio(seed, 'everything');
  return plan({ library, client, today, edition: 0 });
};

const isReason = (id: string): boolean => said.includes(`"rule":"${id}"`);

/** Other values, the nearest first; each in a few clients that read the rule. */
function changesSomething(rule: Rule): boolean {
  if (changes(rule, made)) return true;
  for (let seed = STUDIOS; seed < MORE_STUDIOS; seed += 1) if (changes(rule, [studio(seed)])) return true;
  return false;
}

function changes({ id, value }: Rule, of: readonly Made[]): boolean {
  const readers = of.filter(({ read }) => id.startsWith('audit-') || read.has(id));
  const others = [
    ...new Set([value + 1, Math.max(0, value - 1), 2 * value + 10, Math.floor(value / 2), 0, 10 * value]),
  ];
  for (const other of others.filter((each) => each !== value)) {
    asked.other.set(id, other);
    try {
      if (readers.some(({ input, text }) => outcome(input) !== text)) return true;
    } finally {
      asked.other.clear();
    }
  }
  return false;
}

/** What no client here meets is shown by a check that names it. */
const TESTS = new URL('../', import.meta.url).pathname;
const OWN = ['no-idle-rule.test.ts', 'rulebook.test.ts', 'rulebook-page.test.ts', 'say-reason.test.ts'];
const checks = readdirSync(TESTS, { recursive: true, encoding: 'utf8' })
  .filter((path) => path.endsWith('.test.ts') && !OWN.some((own) => path.endsWith(own)))
  .map((path) => readFileSync(`${TESTS}${path}`, 'utf8'))
  .join('\n');
const isNamed = (id: string): boolean => checks.includes(`'${id}'`);

describe('no rule is idle', () => {
  it('planning is the same twice, so that a difference means something', () => {
    expect(made.length).toBeGreaterThan(100);
    for (const { input, text } of made.slice(0, 10)) expect(outcome(input)).toBe(text);
  });

  it.each(RULES_OF_THE_BLOCK.map((rule) => ({ ...rule, name: rule.id })))(
    '$name',
    (rule) => {
      expect(isReason(rule.id) || isNamed(rule.id) || changesSomething(rule)).toBe(true);
    },
    60_000,
  );
});
