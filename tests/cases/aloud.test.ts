/**
 * Six very different clients whose every reason is read aloud, as a coach would say it. `CHALKLEAF_ALOUD=folder` writes
 * the six trees there, to be read; what can be heard without reading is checked here: whole sentences in plain words,
 * none of them long, nothing of the planner's own names, and nothing a client should not read.
 */
import { writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { PLAIN_NAMES } from '../../src/words/say-figures.js';
import { sayWhyTree } from '../../src/words/say-why.js';
import { tellWhy } from '../../src/words/tell-why.js';
import type { WhyReason, WhyTree } from '../../src/words/why-tree.js';
import { bannedIn, longestSentence } from '../words/ban-list.js';
import { planCase } from './plan-of-case.js';
import { readCaseFile } from './read-case.js';
import { readLibrary } from './read-library.js';

const exercises = readLibrary();
const CLIENTS = ['beginner', 'strong', 'over-65', 'after-birth', 'back-from-hurt', 'moderate'];

function toldOf(name: string): { readonly tree: WhyTree; readonly booklet: () => string } {
  const one = readCaseFile(`aloud/${name}`, exercises);
  const { plan, problems, booklet } = planCase(one);
  const errors = problems.filter(({ severity }) => severity === 'error').map(({ code, data }) => [code, data]);
  expect(errors, name).toEqual([]);
  const called = {
    client: one.title,
    programme: 'Six weeks',
    exercise: (id: string) => exercises.find((exercise) => exercise.id === id)?.name ?? PLAIN_NAMES.exercise(id),
  };
  const tree = plan === null ? null : tellWhy(plan, {}, called, 'en-GB');
  return { tree: tree ?? expect.fail(`${name}: nothing to say`), booklet };
}

/** Every reason anywhere in the tree. */
function reasonsIn(value: unknown): readonly WhyReason[] {
  if (Array.isArray(value)) return value.flatMap(reasonsIn);
  if (typeof value !== 'object' || value === null) return [];
  const inside = Object.values(value).flatMap(reasonsIn);
  return isReason(value) ? [value, ...inside] : inside;
}

const isReason = (value: object): value is WhyReason => 'says' in value && 'audience' in value && 'rule' in value;

describe('read aloud', () => {
  it.each(CLIENTS)('%s: nothing that no coach would say', (name) => {
    const { tree, booklet } = toldOf(name);
    const folder = process.env.CHALKLEAF_ALOUD;
    if (folder) writeFileSync(join(folder, `${name}.txt`), `${sayWhyTree(tree)}\n`);
    const reasons = reasonsIn(tree);
    expect(reasons.length).toBeGreaterThan(50);
    const wrong = new Set<string>();
    for (const { says, rule, audience } of reasons) {
      const say = (what: string) => wrong.add(`${rule} (${audience}), ${what}: ${says}`);
      if (!/^[\p{Lu}\d]/u.test(says)) say('does not begin like a sentence');
      if (!/[.?!]$/.test(says)) say('does not end like a sentence');
      if (/undefined|null|NaN|\[object|\{|\}|per-mille|tenths\b/.test(says)) say('says what only a machine would');
      if (/\b[a-z]+(?:-[a-z]+)+#|\b(?:walk|ladder|audit)-[a-z]/.test(says)) say('names a rule or an id');
      if (/(\b\w+\b) \1\b/i.test(says)) say('says a word twice');
      if (/\s[,.;:]|\(\)|\s{2,}/.test(says.replaceAll('\u00a0', ' '))) say('leaves a gap');
      if (longestSentence(says) > 34) say('is too long to say');
    }
    for (const line of booklet().split('\n')) for (const banned of bannedIn(line)) wrong.add(`the booklet, ${banned}`);
    expect([...wrong]).toEqual([]);
  });
});
