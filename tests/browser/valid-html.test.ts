/** Every kind of page through the Nu Html Checker: no errors. */
import { mkdir, mkdtemp, rm, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { webSources } from '../../src/app/web-sources.js';
import { countSets } from '../../src/engine/audit/count-sets.js';
import { exercisesById } from '../../src/engine/block-context.js';
import { listRulebook } from '../../src/engine/rulebook.js';
import { newKey } from '../../src/publish/seal-booklet.js';
import { clientPlanOf } from '../../src/web/client-plan.js';
import { renderDesk } from '../../src/web/desk/render-desk.js';
import { RULEBOOK, renderLibrary } from '../../src/web/library/render-library.js';
import { prepareShell } from '../../src/web/prepare-shell.js';
import { renderBookletFile, renderBookletFolder } from '../../src/web/render-booklet.js';
import { fixtureBooklet, longNamesBooklet } from '../fixtures/booklet.js';
import { nuFaults } from '../nu-checker.js';
import { hostPages, readPages } from '../publish/hostile-studio.js';
import { hostileBooklet } from '../web/hostile-booklet.js';
import { fixtureLibrary, fixturePublic } from '../web/library-fixture.js';
import { fixturePlan } from '../web/plan-fixture.js';
import { filesOf, KINDS, onePhotograph } from './every-page.js';
import { everyShapeBooklet, everyShapeDrawings, everyShapeSent } from './every-shape-booklet.js';

const plan = clientPlanOf(fixturePlan);
/** Java is slow to start on a busy machine. */
const PATIENT = 180_000;
let folder: string;

async function write(name: string, bytes: string | Uint8Array): Promise<void> {
  await mkdir(dirname(join(folder, name)), { recursive: true });
  await writeFile(join(folder, name), bytes);
}

beforeAll(async () => {
  folder = await mkdtemp(join(tmpdir(), 'valid-'));
});
afterAll(() => rm(folder, { recursive: true, force: true }));

test(
  'booklets in one file and as a folder, library and desk',
  async () => {
    const sources = webSources();
    const parts = await prepareShell(sources);
    await write('ordinary.html', renderBookletFile(fixtureBooklet, plan, parts));
    await write('awkward.html', renderBookletFile(longNamesBooklet, plan, parts));
    await write('every-shape.html', renderBookletFile(everyShapeBooklet, everyShapeSent, parts, everyShapeDrawings));
    await write('hostile.html', renderBookletFile(hostileBooklet, plan, parts));
    for (const { path, bytes } of await renderBookletFolder(fixtureBooklet, plan, parts))
      await write(join('hosted', path), bytes);
    const web = { fonts: parts.fonts, sources };
    await renderLibrary({ library: fixturePublic, rulebook: listRulebook([]), out: join(folder, 'library'), ...web });
    const sayProblem = () => ({ message: 'Something is wrong.', hint: 'Write it right.' });
    const desk = {
      library: fixtureLibrary,
      clients: [],
      plans: [fixturePlan],
      sets: new Map([[fixturePlan.client, countSets(fixturePlan, exercisesById(fixtureLibrary.exercises))]]),
      problems: [],
      rulebook: `../library/${RULEBOOK}`,
      sayProblem,
    };
    await renderDesk({ ...desk, out: join(folder, 'desk'), ...web });
    expect(nuFaults(folder)).toEqual([]);
  },
  PATIENT,
);

test(
  'every kind of page that a small studio comes to, sealed and opened, handed over, and with a photograph',
  async () => {
    const { value } = readPages(hostPages());
    const files = await filesOf(value, await prepareShell(webSources()), newKey(), { photographs: onePhotograph });
    const pages = [...files.files].filter(([path]) => path.endsWith('.html'));
    for (const kind of KINDS) expect([kind, pages.some(([path]) => path.includes(kind))]).toEqual([kind, true]);
    for (const [path, bytes] of pages) await write(join('every', path), bytes);
    expect(new TextDecoder().decode(files.files.get('exercises/goblet-squat.html'))).toContain('srcset=');
    expect(nuFaults(join(folder, 'every'))).toEqual([]);
  },
  PATIENT,
);

test(
  'the checker sees a fault where there is one',
  async () => {
    await write(
      'fault/fault.html',
      '<!doctype html><html lang="en"><title>Fault</title><p><a href="#"><a href="#">x</a></a>',
    );
    expect(nuFaults(join(folder, 'fault')).join('\n')).toContain('fault.html');
  },
  PATIENT,
);
