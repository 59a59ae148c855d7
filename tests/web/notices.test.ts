/** Notices on the first page of the web booklet, and an edition on the desk, as text. */
import { describe, expect, test } from 'vitest';
import { composeBooklet } from '../../src/booklet/compose-booklet.js';
import { composeEnded, composeWithdrawn } from '../../src/booklet/compose-changes.js';
import { compareEditions } from '../../src/engine/compare-plans.js';
import { unpackPlan } from '../../src/session/travelling.js';
import { clientPlanOf } from '../../src/web/client-plan.js';
import { deskPages } from '../../src/web/desk/render-desk.js';
import { renderPayload } from '../../src/web/render-booklet.js';
import { client, library } from '../fixtures/library.js';
import { load, plan } from '../fixtures/plan.js';
import { anEdition } from '../session/make-marks.js';

const booklet = composeBooklet({ library, client, plan });
const html = (of: typeof booklet): string => renderPayload(of, { ...clientPlanOf(plan), weeks: [] }).html;
const heavier = JSON.parse(JSON.stringify(plan).replaceAll(JSON.stringify(load(16)), JSON.stringify(load(24))));
const changes = compareEditions(plan, { ...heavier, edition: 2 });
const words = (page: string): string => page.replace(/<[^>]+>/g, ' ').replace(/[\s\u00a0]+/g, ' ');

describe('on the first page of the booklet', () => {
  test('what it changes comes before whose booklet it is', () => {
    const page = html(composeBooklet({ library, client, plan: { ...heavier, edition: 2 }, changes }));
    const said = words(page);
    expect(said.indexOf('Edition 2, ')).toBeGreaterThan(-1);
    expect(page.indexOf('role=note')).toBeLessThan(page.indexOf(`<h2>${client.name}`));
    expect(said).toContain('Train from this edition from now on.');
    expect(html(booklet)).not.toContain('role=note');
  });

  test('that it has ended, with all of it below', () => {
    const said = words(html(composeEnded(booklet, '2027-01-18')));
    expect(said).toContain('This booklet has ended Its last day was 18 January 2027.');
    expect(said).toContain('16 kg × 9');
  });

  test('that it was withdrawn, and nothing to train from or to turn to', () => {
    const page = html(composeWithdrawn(booklet, '2027-01-08'));
    expect(page.match(/<article/g)).toHaveLength(1);
    expect(page).not.toContain('<nav');
    expect(words(page)).toContain('Do not train from it, nor from a copy on paper.');
    expect(words(page)).not.toMatch(/× ?\d|\d (kg|reps)/);
    const sent = /<script type="application\/json" id="plan">(.*)<\/script>/.exec(page)?.[1];
    expect(unpackPlan(JSON.parse(sent ?? '')).weeks).toEqual([]);
  });

  test('words with marks of HTML in them stand as written', () => {
    const [cover, ...rest] = composeEnded(booklet, '2027-01-18').parts;
    if (cover?.kind !== 'cover' || cover.notice === undefined) return expect.fail('no notice');
    const parts = [{ ...cover, notice: { ...cover.notice, lines: ['<script>1 & 2</script>'] } }, ...rest];
    expect(html({ ...booklet, parts })).toContain('&lt;script>1 &amp; 2&lt;/script>');
  });
});

describe('on the desk', () => {
  const page = (standing: 'stands' | 'ended' | 'withdrawn', draft: boolean) => {
    const withdrawal = standing === 'withdrawn' ? { schema: 1 as const, date: '2027-01-08', why: 'a sore knee' } : null;
    const edition = { ...anEdition({ ...plan, edition: 2 }, 2), changes };
    const one = { edition, standing, withdrawal, draft: draft ? plan : null, since: draft ? changes : [] };
    const pages = deskPages({
      library,
      clients: [client],
      plans: [plan],
      problems: [],
      editions: new Map([[client.id, one]]),
      sayProblem: () => ({ message: '', hint: '' }),
    });
    return pages.map(({ path, render }) => [path, words(render())] as const);
  };
  const ofClient = (...of: Parameters<typeof page>) => page(...of).find(([path]) => path.startsWith('clients/'))?.[1];

  test('how it stands, what it changed row by row, and the draft with its command', () => {
    const said = ofClient('stands', true) ?? '';
    expect(said).toContain('Edition 2 stands, issued');
    expect(said).toContain(`This makes it edition 3: chalkleaf issue ${client.id}`);
    expect(said).toContain('What the draft would change');
    expect(said).toMatch(/What edition 2 changed.*16 kg × 9, 3 sets 24 kg × 9, 3 sets/);
    expect(ofClient('stands', false)).not.toContain('draft');
  });

  test('that it has ended or was withdrawn, and why: here, and on the page of all clients', () => {
    expect(ofClient('ended', false)).toContain('Edition 2 has ended');
    expect(ofClient('withdrawn', false)).toContain('Edition 2 was withdrawn on 8 January 2027: a sore knee');
    expect(page('withdrawn', false).find(([path]) => path === 'index.html')?.[1]).toContain('withdrawn on 8 January');
  });
});
