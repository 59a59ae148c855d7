/** The forms of a booklet that the desk leads to: those that stand there, and no others. */
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { formsOf } from '../../src/app/booklet-forms.js';
import { clientId } from '../../src/model/identity.js';
import { PARTNER } from '../../src/web/render-partner.js';
import { sayDeskWords } from '../../src/words/desk-words.js';

const client = clientId('rowan-ashby');
let stage: string;
beforeAll(async () => {
  stage = await mkdtemp(join(tmpdir(), 'forms-'));
});
afterAll(() => rm(stage, { recursive: true, force: true }));

async function put(name: string): Promise<void> {
  const path = join(stage, 'private', 'clients', client, name);
  await mkdir(dirname(path), { recursive: true });
  await writeFile(path, '');
}

test('whoever hands a booklet over finds the partner’s page beside it, where there is a partner', async () => {
  await put('booklet.html');
  expect(formsOf(stage, client).map(({ kind }) => kind)).toEqual(['phone']);
  await put(`booklet/${PARTNER}`);
  const forms = formsOf(stage, client);
  expect(forms).toEqual([
    { kind: 'phone', path: '../clients/rowan-ashby/booklet.html' },
    { kind: 'partner-phone', path: '../clients/rowan-ashby/booklet/partner.html' },
  ]);
  for (const { kind } of forms) expect(sayDeskWords('en').forms[kind]).not.toBe('');
});
