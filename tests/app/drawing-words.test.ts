/** What a coach writes above a table of positions is read in place of what the table says: on the screen and on paper. */
import { beforeAll, describe, expect, test } from 'vitest';
import { openDrawing } from '../../src/app/draw-client.js';
import { gatherFiles } from '../../src/app/gather-files.js';
import { readFolder } from '../../src/content/read-folder.js';
import { clientId } from '../../src/model/identity.js';
import type { Drawings } from '../../src/model/picture.js';
import { invariant } from '../../src/model/result.js';
import { drawBooklet } from '../../src/print/draw-booklet.js';
import { clientPlanOf } from '../../src/web/client-plan.js';
import { renderPayload } from '../../src/web/render-booklet.js';
import { fixtureBooklet } from '../fixtures/booklet.js';
import { readPdf, tagsOf } from '../print/read-pdf.js';
import { DEMO } from '../studio/demo-words.js';
import { fixturePlan } from '../web/plan-fixture.js';

const PAGE = 'exercises/goblet-squat.md';
const OWN = 'Somebody sinks between the heels as into a low armchair.';

/** The demo's page, with or without the coach's words above its table. */
async function drawingsWith(words: string): Promise<Drawings> {
  const { value: files } = await gatherFiles(DEMO);
  const { value } = readFolder(
    files.map((file) => {
      if (file.path !== PAGE) return file;
      const text = new TextDecoder().decode(file.bytes).replace('## Poses\n', `## Poses\n\n${words}\n`);
      return { ...file, bytes: new TextEncoder().encode(text) };
    }),
  );
  const exercises = value.library.exercises.filter(({ id }) => id === 'goblet-squat');
  expect(exercises).toHaveLength(1);
  return (await openDrawing(exercises, new Map(), null)).drawings;
}

const onScreen = (drawings: Drawings): readonly string[] =>
  [
    ...renderPayload(fixtureBooklet, clientPlanOf(fixturePlan), drawings).html.matchAll(
      /<svg class=figure[^>]* aria-label="([^"]*)"/g,
    ),
  ].map(([, said = '']) => said);

async function onPaper(drawings: Drawings): Promise<readonly string[]> {
  const { value } = await drawBooklet(fixtureBooklet, clientId('somebody'), undefined, { drawings });
  invariant(value !== null, 'it can be printed');
  const { pages } = await readPdf(value);
  return tagsOf(
    pages.flatMap(({ tags }) => tags),
    'Figure',
  ).flatMap(({ alt }) => alt ?? []);
}

describe('a drawing', () => {
  let bare: Drawings;
  let worded: Drawings;
  beforeAll(async () => {
    bare = await drawingsWith('');
    worded = await drawingsWith(OWN);
  }, 300_000);

  test('is told by its table', async () => {
    const [said, ...others] = onScreen(bare);
    expect(others).toEqual([]);
    expect(said).toMatch(/^Seen from/);
    expect(await onPaper(bare)).toContain(said);
  });

  test('is told in the coach’s words where there are any, and in no others', async () => {
    const table = onScreen(bare);
    expect(onScreen(worded)).toEqual([OWN]);
    const read = await onPaper(worded);
    expect(read).toContain(OWN);
    for (const said of table) expect(read).not.toContain(said);
  });
});
