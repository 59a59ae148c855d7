/** A photograph with a client's name in it, from the coach's folder to what is uploaded: the picture arrives, the name does not. */
import { appendFileSync, existsSync, readdirSync, readFileSync, truncateSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { bytesBelow, chalkleaf, type Ran, smallStudio, workFolder, writeFiles } from '../app/run-chalkleaf.js';
import { PLANTED, photograph, tagsIn, withMetadata } from '../pictures/photographs.js';

const SAID = 'A man sits deep in a squat, a bell held close to his chest.';
const work = workFolder();
const content = join(work.path, 'content');
const output = join(work.path, 'output');
const picture = join(content, 'exercises', 'Larkspur 2041.jpg');
const run = (...args: readonly string[]): Ran => chalkleaf([...args, '--content', content]);
const build = (): Ran => run('build', '--today', '2026-11-24');

/** Its metadata names the client, in every place a program may write a name to. */
let taken: Uint8Array;
beforeAll(async () => {
  writeFiles(content, smallStudio());
  const page = join(content, 'clients/ash-venn/client.md');
  writeFileSync(page, readFileSync(page, 'utf8').replace('name: Ash Venn', `name: ${PLANTED.name}`));
  appendFileSync(join(content, 'exercises/goblet-squat.md'), `\n## Poses\n\n![${SAID}](<Larkspur 2041.jpg>)\n`);
  taken = withMetadata(await photograph(1500), work.path, 'planted.jpg', 1);
  writeFileSync(picture, taken);
  for (const ran of [run('issue', 'ash-venn', '--today', '2026-11-24'), build()]) {
    expect(ran.code, `${ran.out}${ran.err}`).toBe(0);
  }
}, 480_000);
afterAll(() => work.away());

const publicFiles = (): readonly (readonly [string, Buffer])[] =>
  bytesBelow(join(output, 'public')).map(([path, bytes]) => [path, Buffer.from(bytes)]);

test('it stands in public without the name, the place and the camera, and is published', () => {
  expect(Buffer.from(taken).includes(PLANTED.name)).toBe(true);
  const files = publicFiles();
  const pictures = files.filter(([path]) => path.includes('pictures/'));
  expect(pictures.map(([path]) => path)).toEqual([
    'pictures/goblet-squat-1280.jpg',
    'pictures/goblet-squat-320.jpg',
    'pictures/goblet-squat-640.jpg',
  ]);
  for (const [path, bytes] of files) {
    for (const word of [...Object.values(PLANTED), 'Larkspur 2041'])
      expect([path, bytes.includes(word)]).toEqual([path, false]);
  }
  const tags = pictures.flatMap(([path, bytes]) => tagsIn(bytes, work.path, path.slice('pictures/'.length)));
  expect(tags.filter((tag) => /GPS|IFD|XMP|IPTC|ICC|Comment/i.test(tag))).toEqual([]);
  const ran = run('publish');
  expect(ran.code, `${ran.out}${ran.err}`).toBe(0);
  expect(existsSync(join(output, 'upload/pictures/goblet-squat-1280.jpg'))).toBe(true);
});

test('the page has all widths, the coach’s words, and its worker keeps them', () => {
  const page = readFileSync(join(output, 'public/exercises/goblet-squat.html'), 'utf8');
  expect(page).toContain('src="../pictures/goblet-squat-640.jpg"');
  expect(page).toContain(
    'srcset="../pictures/goblet-squat-320.jpg 320w, ../pictures/goblet-squat-640.jpg 640w, ../pictures/goblet-squat-1280.jpg 1280w"',
  );
  expect(page).toContain(`width="640" height="480" alt="${SAID}"`);
  expect(readFileSync(join(output, 'public/worker.js'), 'utf8')).toContain('"pictures/goblet-squat-1280.jpg"');
});

test('an open booklet has the files beside it; the one file and the sealed folder have the picture in them', () => {
  const home = join(output, 'private/clients/ash-venn');
  expect(readdirSync(join(home, 'booklet/pictures'))).toHaveLength(3);
  const payload = readFileSync(join(home, 'booklet/payload.html'), 'utf8');
  expect(payload).toContain('pictures/goblet-squat-1280.jpg 1280w');
  const file = readFileSync(join(home, 'booklet.html'), 'utf8');
  expect(file).toMatch(/<img class=.?photograph.? src="?data:image\/jpeg;base64,/);
  expect(file).toContain(SAID);
  expect(file).not.toContain('srcset');
  const sealed = publicFiles().filter(([path]) => /^[0-9a-f]{32}\//.test(path));
  expect(sealed.length).toBeGreaterThan(3);
  // Nothing beside it tells what is done at home, and what is sealed is longer by the picture.
  expect(sealed.filter(([path, bytes]) => path.includes('goblet') || bytes.includes('goblet'))).toEqual([]);
  const [, part] = sealed.find(([path]) => path.endsWith('payload.html')) ?? ['', Buffer.alloc(0)];
  const copy = readFileSync(join(output, 'public/pictures/goblet-squat-640.jpg'));
  expect(part.length).toBeGreaterThan(copy.length);
});

test('the photograph as it came from the camera, put there by hand, is refused', () => {
  writeFileSync(join(output, 'public/pictures/by-hand.jpg'), taken);
  const ran = run('publish');
  expect(ran.code).toBe(1);
  expect(ran.out).toContain('by-hand.jpg');
});

test('one that is cut off holds everything back, told at its line by check and build', () => {
  truncateSync(picture, Math.floor(taken.length / 2));
  for (const ran of [run('check', '--today', '2026-11-24'), build()]) {
    expect(ran.code).toBe(1);
    expect(ran.out + ran.err).toMatch(/exercises\/goblet-squat\.md:\d+:1 {2}error {2}picture-unreadable/);
  }
});
