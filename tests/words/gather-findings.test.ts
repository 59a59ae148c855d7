/** What check says to a coach with ten minutes a client: one line a matter, most pressing first, and few of them. */
import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { planBlock } from '../../src/engine/plan-block.js';
import { RULES_OF_THE_BLOCK } from '../../src/engine/rules-of-the-block.js';
import type { Plan } from '../../src/model/plan.js';
import { apart, gatherFindings, plansBy } from '../../src/words/gather-findings.js';
import { ASKS, MATTERS, placeOf } from '../../src/words/matters.js';
import { sayFindings } from '../../src/words/print-findings.js';
import { TELLINGS } from '../../src/words/reason-words.js';
import { accountIn, type Finding, findingsOf, recordsOf } from '../../src/words/say-findings.js';
import { speechOf } from '../../src/words/speech.js';
import { readCaseFile } from '../cases/read-case.js';
import { readLibrary } from '../cases/read-library.js';

const speech = speechOf('en-GB');
const exercises = readLibrary();
const CASES = new URL('../cases/', import.meta.url);
const names = [
  ...readdirSync(CASES).flatMap((file) => (file.endsWith('.case.txt') ? [file.replace('.case.txt', '')] : [])),
  ...readdirSync(new URL('aloud/', CASES)).flatMap((file) =>
    file.endsWith('.case.txt') ? [`aloud/${file.replace('.case.txt', '')}`] : [],
  ),
].sort();

interface Planned {
  readonly name: string;
  readonly plan: Plan;
  readonly findings: readonly Finding[];
}

const planned: readonly Planned[] = names.flatMap((name): readonly Planned[] => {
  const { library, client, today } = readCaseFile(name, exercises);
  const { value: plan } = planBlock({ library, client, today, edition: 0 });
  return plan === null ? [] : [{ name, plan, findings: findingsOf(accountIn(plan, library)) }];
});
const linesOf = ({ plan, findings }: Planned): readonly string[] => sayFindings(findings, [plan]);

describe('what a finding asks of the coach', () => {
  test('every matter has one place, and every place is a rule or is read from the plan', () => {
    const placed = ASKS.flatMap((asks) => MATTERS[asks]);
    expect(new Set(placed).size).toBe(placed.length);
    const rules = new Set<string>([
      ...RULES_OF_THE_BLOCK.map(({ id }) => id),
      ...TELLINGS,
      'twice-in-a-session',
      'row-left-out',
    ]);
    for (const matter of placed) expect(rules).toContain(matter);
  });

  test('whatever is found in real cases has its place', () => {
    const found = new Set(planned.flatMap(({ findings }) => findings.map(({ matter }) => matter)));
    expect(found.size).toBeGreaterThan(25);
    for (const matter of found) expect([matter, placeOf(matter).rank]).not.toEqual([matter, -1]);
  });

  test('what nobody has placed is not hidden but told first', () => {
    const [one] = planned.flatMap(({ findings }) => findings.filter(({ asks }) => asks === 'desk'));
    if (one === undefined) expect.fail('nothing for the desk');
    const unknown = { ...one, matter: 'never-heard-of', ...placeOf('never-heard-of') };
    const [first] = gatherFindings([...planned.flatMap(({ findings }) => findings), unknown], new Map(), speech);
    expect(first).toMatchObject({ matter: 'never-heard-of', asks: 'decide' });
  });
});

describe('in a terminal', () => {
  test.each(planned)('$name: about a dozen lines, none twice, the coach’s own first', (one) => {
    const lines = linesOf(one);
    expect(lines.length).toBeLessThanOrEqual(17);
    expect(new Set(lines).size).toBe(lines.length);
    const order = lines.flatMap((line) => {
      const at = ['To decide', 'Worth a look', 'On the desk'].findIndex((head) => line.trim().startsWith(`${head}: `));
      return at < 0 ? [] : [at];
    });
    expect(order).toEqual([...order].sort());
    for (const line of lines) expect(line).not.toMatch(/\u00a0|undefined|\(\)|: :|, ,/);
  });

  test('whatever is to be decided is told, and what is for the desk is only counted', () => {
    for (const one of planned) {
      const told = linesOf(one).join('\n');
      for (const { asks, says } of gatherFindings(one.findings, plansBy([one.plan]), speech)) {
        if (asks === 'decide') expect(told).toContain(says);
        if (asks === 'desk') expect(told).not.toContain(says);
      }
    }
    expect(planned.flatMap(linesOf).join('\n')).toMatch(/On the desk: .*what would open \d+ more exercises/);
  });

  test('nothing found is lost on the way to the desk', () => {
    for (const { plan, findings } of planned) {
      const gathered = gatherFindings(findings, plansBy([plan]), speech).flatMap((one) => one.findings);
      expect(new Set(gathered)).toEqual(new Set(findings));
      expect(gathered).toHaveLength(findings.length);
      expect(recordsOf(findings)).toHaveLength(findings.length);
    }
  });

  test('what is true of many clients alike is told once, and names them', () => {
    const two = planned.filter(({ findings }) => findings.some(({ matter }) => matter === 'not-asked')).slice(0, 2);
    const [one, other] = two.map(({ findings }, index) =>
      findings.map((finding) => ({ ...finding, client: ['ash', 'birch'][index] ?? '' })),
    );
    if (one === undefined || other === undefined) expect.fail('nobody was not asked');
    const told = sayFindings([...one, ...other], []);
    const asked = told.filter((line) => line.includes('Not asked yet'));
    expect(asked).toHaveLength(1);
    expect(asked[0]).toMatch(/^ {2}To decide: Not asked yet: .*ash.*birch/);
    expect(apart(one).studio).toEqual([]);
  });
});

test('several rows that one thing would open are one line', () => {
  const kept = planned.flatMap(({ plan, findings }) =>
    gatherFindings(findings, plansBy([plan]), speech).filter(
      ({ matter, findings: own }) => matter === 'would-unlock' && own.length > 1,
    ),
  );
  expect(kept.length).toBeGreaterThan(3);
  for (const { says, findings } of kept) {
    expect(says).toMatch(/^Opens? (once|with|after) [^:]+: [^:]+\.$/);
    for (const { figure } of findings) expect(says).toContain(figure('exercise'));
  }
});
