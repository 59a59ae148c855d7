/** What stands first on a booklet's first page: changes, that it has ended, or that nobody is to train from it. */
import { describe, expect, test } from 'vitest';
import { composeBooklet } from '../../src/booklet/compose-booklet.js';
import { composeEnded, composeWithdrawn } from '../../src/booklet/compose-changes.js';
import { compareEditions } from '../../src/engine/compare-plans.js';
import type { Booklet, CoverPart } from '../../src/model/booklet.js';
import { client, library } from '../fixtures/library.js';
import { load, plan } from '../fixtures/plan.js';
import { bannedIn } from '../words/ban-list.js';

const first = composeBooklet({ library, client, plan });
const lighter = {
  ...plan,
  edition: 2,
  today: '2027-01-06',
  weeks: plan.weeks.map((week) => ({
    ...week,
    sessions: week.sessions.map((session) => ({
      ...session,
      groups: session.groups.map((group) => ({
        ...group,
        items: group.items.map((item) => ({
          ...item,
          sets: item.sets.map((set) => (set.load === undefined ? set : { ...set, load: load(8) })),
        })),
      })),
    })),
  })),
};
const coverOf = (booklet: Booklet): CoverPart =>
  booklet.parts.find((part): part is CoverPart => part.kind === 'cover') ?? expect.fail('no cover');
const strings = (of: unknown): string => JSON.stringify(of).replaceAll('\u00a0', ' ');

describe('what an edition changes', () => {
  const second = composeBooklet({ library, client, plan: lighter, changes: compareEditions(plan, lighter) });
  const notice = coverOf(second).notice ?? expect.fail('no notice');

  test('stands on the cover, with the number and the day; the rest of the booklet is untouched by it', () => {
    expect(notice.kind).toBe('changes');
    expect(strings(notice.title)).toContain('Edition 2, 6 January 2027');
    expect(strings(notice.lines)).toContain('is with 8 kg');
    expect(notice.lines.length).toBeGreaterThanOrEqual(2);
    expect(notice.lines.length).toBeLessThanOrEqual(3);
    expect(notice.lines.flatMap(bannedIn)).toEqual([]);
    const without = composeBooklet({ library, client, plan: lighter });
    expect(second.parts.slice(1)).toEqual(without.parts.slice(1));
  });

  test('a first edition tells of nothing; one with the same work says that it is the same', () => {
    expect(coverOf(first).notice).toBeUndefined();
    const same = composeBooklet({ library, client, plan: { ...plan, edition: 2 }, changes: [] });
    expect(coverOf(same).notice?.lines).toEqual(['The work is the same as in the edition before.']);
  });
});

test('one that has ended says so in place of what it changed, and stays readable', () => {
  const ended = composeEnded(first, '2027-01-18');
  expect(coverOf(ended).notice).toMatchObject({ kind: 'ended' });
  expect(strings(coverOf(ended).notice)).toContain('18 January 2027');
  expect(ended.parts.slice(1)).toEqual(first.parts.slice(1));
});

test('one that was withdrawn keeps its cover alone: no session, no set, no week', () => {
  const withdrawn = composeWithdrawn(first, '2027-01-08');
  expect(withdrawn.parts).toHaveLength(1);
  const cover = coverOf(withdrawn);
  expect(cover).toMatchObject({ notice: { kind: 'withdrawn' }, weeks: [], client: client.name });
  const said = strings(cover.notice);
  expect(said).toContain('withdrawn on 8 January 2027');
  expect(said).toContain('Do not train from it');
  expect(said).toContain(`Ask ${library.studio.coach}`);
  expect(strings(withdrawn)).not.toMatch(/× ?\d|\d+ (kg|reps)/);
});
