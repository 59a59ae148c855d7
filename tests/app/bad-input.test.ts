/** Nothing a coach can write, and no disk, gives a stack trace, a hang or half an output. */
import { execFileSync, spawn, spawnSync } from 'node:child_process';
import { once } from 'node:events';
import {
  chmodSync,
  cpSync,
  existsSync,
  mkdirSync,
  readdirSync,
  renameSync,
  symlinkSync,
  truncateSync,
  unlinkSync,
  writeFileSync,
} from 'node:fs';
import { join } from 'node:path';
import { setTimeout as wait } from 'node:timers/promises';
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest';
import {
  bytesBelow,
  chalkleaf,
  chalkleafAlone,
  type Ran,
  smallStudio,
  TOP,
  workFolder,
  writeFiles,
} from './run-chalkleaf.js';

let work = workFolder();
let content = '';
let output = '';
/** The output of the smallest studio, built once by the program: before a case stands a copy of it. */
const good = workFolder();
beforeAll(() => {
  const folders = ['--content', join(good.path, 'content'), '--out', join(good.path, 'output')];
  writeFiles(join(good.path, 'content'), smallStudio());
  expect(chalkleaf(['build', ...folders, '--today', '2026-11-24']).code).toBe(0);
});
afterAll(() => good.away());
const standGood = (): void => cpSync(join(good.path, 'output'), output, { recursive: true, verbatimSymlinks: true });

beforeEach(() => {
  work = workFolder();
  content = join(work.path, 'content');
  output = join(work.path, 'output');
  writeFiles(content, smallStudio());
});
afterEach(() => work.away());

const run = (command: string, more: readonly string[] = [], as?: { readonly uid: number }): Ran => {
  const args = [
    command,
    '--content',
    content,
    '--out',
    output,
    '--state',
    join(work.path, 'state'),
    '--today',
    '2026-11-24',
    ...more,
  ];
  return as === undefined ? chalkleaf(args) : chalkleafAlone(args, as);
};

function expectPlainSpeech(ran: Ran): void {
  const all = ran.out + ran.err;
  expect(all).not.toMatch(/\n\s+at .+:\d+:\d+/);
  expect(all).not.toMatch(/node:internal|undefined|\[object Object\]|NaN/);
  expect(ran.code).not.toBeNull();
  expect(ran.code).not.toBe(70);
}

/** Changes one file, builds over the good output, and says whether the output still stands. */
function buildOver(
  path: string,
  change: (text: string) => string | Uint8Array,
): { readonly ran: Ran; readonly stands: boolean } {
  standGood();
  const before = bytesBelow(output);
  const text = smallStudio().get(path) ?? '';
  writeFiles(content, [[path, change(text)]]);
  const ran = run('build');
  expectPlainSpeech(ran);
  return { ran, stands: JSON.stringify(bytesBelow(output)) === JSON.stringify(before) };
}

const CLIENT = 'clients/ash-venn/client.md';
const SQUAT = 'exercises/goblet-squat.md';
test('a fault of the whole folder is told once, however many clients there are', () => {
  const client = smallStudio().get(CLIENT) ?? '';
  const rules = (id: string, value: string) =>
    `| Rule | Value | Reason |\n| --- | --- | --- |\n| ${id} | ${value} | ours |\n`;
  writeFiles(content, [['clients/bram-holt/client.md', client.replace('Ash Venn', 'Bram Holt')]]);
  for (const [id, value] of [
    ['floor-alone', '0'],
    ['no-such-rule', '2'],
  ] as const) {
    writeFiles(content, [['rules.md', rules(id, value)]]);
    for (const command of ['check', 'build']) {
      const ran = run(command);
      expectPlainSpeech(ran);
      expect(ran.code).not.toBe(0);
      expect(ran.out.match(/rules\.md:/g)).toHaveLength(1);
    }
  }
});

const aliasBomb = Array.from(
  { length: 30 },
  (_, i) =>
    `a${i}: &a${i} [${
      i === 0
        ? 'x'
        : Array(9)
            .fill(`*a${i - 1}`)
            .join(', ')
    }]`,
).join('\n');

describe('files read as meant', () => {
  test.each([
    ['Windows line ends', (text: string) => text.replaceAll('\n', '\r\n')],
    ['old line ends', (text: string) => text.replaceAll('\n', '\r')],
    ['a byte order mark', (text: string) => `\uFEFF${text}`],
    ['no line end at the end', (text: string) => text.trimEnd()],
    ['trailing spaces', (text: string) => text.replaceAll('\n', '  \n').replaceAll('---  ', '---')],
  ])('%s', (_, change) => {
    standGood();
    const before = bytesBelow(join(output, 'private'));
    for (const [path, text] of smallStudio()) writeFiles(content, [[path, change(text)]]);
    const ran = run('build');
    expectPlainSpeech(ran);
    expect(ran.code).toBe(0);
    expect(bytesBelow(join(output, 'private'))).toEqual(before);
  });

  test('smart quotes around a value, and in the words', () => {
    const { ran } = buildOver(SQUAT, (text) => text.replace('"Keep', '“Keep').replace('floor."', 'floor.”'));
    expect(ran.code).toBe(0);
  });
});

describe('a folder error leaves the last output byte for byte', () => {
  test.each([
    ['an alias bomb', SQUAT, (text: string) => text.replace('name: Goblet squat', `name: Goblet squat\n${aliasBomb}`)],
    [
      'an id that climbs out',
      SQUAT,
      (text: string) => text.replace('name: Goblet squat', 'name: Goblet squat\nid: ../../x'),
    ],
    ['no closing fence', SQUAT, (text: string) => text.replace('\n---\n', '\n')],
    ['bytes that are not text', SQUAT, () => new Uint8Array([0xff, 0xfe, 0x00, 0x41, 0x80])],
    ['an empty file', SQUAT, () => ''],
    ['a broken programme', 'programmes/first-six-weeks.md', (text: string) => text.replace('3 × 6–10', '3 × 10–6')],
  ])('%s', (_, path, change) => {
    const { ran, stands } = buildOver(path, change);
    expect(ran.code).toBe(1);
    expect(ran.out).toContain(path);
    expect(stands).toBe(true);
  });

  test('a file of 50 MB', () => {
    standGood();
    const before = bytesBelow(output);
    truncateSync(join(content, SQUAT), 50 * 1024 * 1024);
    const ran = run('build');
    expectPlainSpeech(ran);
    expect(ran.code).toBe(1);
    expect(bytesBelow(output)).toEqual(before);
  });

  test('a circle of links', () => {
    symlinkSync('..', join(content, 'exercises', 'round'));
    const ran = run('build');
    expectPlainSpeech(ran);
    expect(ran.code).toBe(1);
    expect(existsSync(join(output, 'private'))).toBe(false);
  });

  test('one broken file among good ones: all its mistakes, and nobody else’s', () => {
    writeFiles(content, [
      [
        SQUAT,
        (smallStudio().get(SQUAT) ?? '').replace('way: strength', 'way: strenth').replace('sides: both', 'sids: both'),
      ],
    ]);
    const ran = run('check');
    expectPlainSpeech(ran);
    expect(ran.out.match(/goblet-squat\.md:\d+:\d+/g)?.length).toBeGreaterThanOrEqual(2);
    expect(ran.out).not.toMatch(/chair-squat\.md:\d+/);
    expect(ran.out).not.toMatch(/first-six-weeks\.md:\d+/);
  });
});

describe('a client’s error withholds that client alone', () => {
  test('a second client with a date that does not exist', () => {
    const bad = (smallStudio().get(CLIENT) ?? '').replace('2027-01-04', '2027-02-30').replace('Ash Venn', 'Bo Lark');
    writeFiles(content, [['clients/bo-lark/client.md', bad]]);
    const ran = run('build');
    expectPlainSpeech(ran);
    expect(ran.code).toBe(1);
    expect(ran.out).toMatch(/clients\/bo-lark\/client\.md:3:/);
    expect(existsSync(join(output, 'private/clients/ash-venn/booklet.html'))).toBe(true);
    expect(existsSync(join(output, 'private/clients/bo-lark/booklet.html'))).toBe(false);
  });

  test.each([
    ['emoji', 'Ash 🏋️‍♀️ Venn'],
    ['Arabic', 'ليلى'],
    ['Vietnamese', 'Nguyễn Ánh'],
    ['Polish', 'Łucja Żak'],
    ['four thousand letters', 'Ash'.repeat(1333)],
    ['markup', '<script>alert(1)</script>'],
  ])('a name in %s is shown right or refused with a reason', (_, name) => {
    const { ran } = buildOver(CLIENT, (text) => text.replace('Ash Venn', name));
    expect([0, 1]).toContain(ran.code);
    if (ran.code === 1) expect(ran.out).toMatch(/client\.md:\d+:\d+/);
  });
});

describe('folders and disks', () => {
  test('an empty folder, no folder, a file in its place', () => {
    mkdirSync(join(work.path, 'empty'));
    for (const folder of [join(work.path, 'empty'), join(work.path, 'none'), join(content, 'studio.md')]) {
      const ran = chalkleaf(['build', '--content', folder, '--out', output, '--today', '2026-11-24']);
      expectPlainSpeech(ran);
      expect(ran.code).toBe(1);
      expect(existsSync(join(output, 'public'))).toBe(false);
    }
  });

  test('a file that vanishes while being read', () => {
    const flapping = join(content, 'exercises', 'flapping.md');
    const script = `const fs=require('node:fs');const p=${JSON.stringify(flapping)};const t=${JSON.stringify(smallStudio().get(SQUAT))};const end=Date.now()+4000;while(Date.now()<end){try{fs.writeFileSync(p,t);fs.unlinkSync(p)}catch{}}`;
    const other = spawnSync('sh', ['-c', 'node -e "$SCRIPT" >/dev/null 2>&1 & echo $!'], {
      env: { ...process.env, SCRIPT: script },
      encoding: 'utf8',
    });
    try {
      for (let i = 0; i < 4; i += 1) {
        const ran = run('check');
        expectPlainSpeech(ran);
        expect([0, 1]).toContain(ran.code);
      }
    } finally {
      spawnSync('kill', [other.stdout.trim()]);
    }
  });

  test('an output that is no folder: /dev/full', () => {
    const ran = chalkleaf(['build', '--content', content, '--out', '/dev/full', '--today', '2026-11-24']);
    expectPlainSpeech(ran);
    expect(ran.code).toBe(3);
  });

  test('where the system lets nobody make a folder, it says so and does not try for ever', () => {
    const built = chalkleaf(['build', '--content', content, '--out', '/proc/pages', '--today', '2026-11-24']);
    const kept = ['--state', '/proc/kept', '--today', '2026-11-24'];
    const issued = chalkleaf(['issue', 'ash-venn', '--content', content, ...kept]);
    for (const [ran, code] of [[built, 'output-not-writable'] as const, [issued, 'state-not-writable'] as const]) {
      expectPlainSpeech(ran);
      expect(ran.code).toBe(3);
      expect(ran.out).toContain(code);
      expect(ran.out).toContain('no folder can be made there');
    }
    expect(existsSync(join(content, 'clients/ash-venn/editions'))).toBe(false);
  });

  const root = process.getuid?.() === 0;

  test.runIf(root)('a full disk: a small one, and the last output stands', () => {
    mkdirSync(output);
    execFileSync('mount', ['-t', 'tmpfs', '-o', 'size=4m', 'tmpfs', output]);
    try {
      standGood();
      const before = bytesBelow(output);
      writeFileSync(join(output, 'filler'), Buffer.alloc(64 * 1024));
      let filled = true;
      for (let i = 0; filled && i < 200; i += 1) {
        try {
          writeFileSync(join(output, `filler-${i}`), Buffer.alloc(64 * 1024));
        } catch {
          filled = false;
        }
      }
      writeFiles(content, [[SQUAT, (smallStudio().get(SQUAT) ?? '').replace('low stool', 'low bench')]]);
      const ran = run('build');
      expectPlainSpeech(ran);
      expect(ran.code).toBe(3);
      expect(ran.out).toContain('full');
      expect(bytesBelow(output).filter(([path]) => !path.startsWith('filler'))).toEqual(before);
    } finally {
      execFileSync('umount', [output]);
    }
  });

  test.runIf(root)('an output another user owns', () => {
    standGood();
    const before = bytesBelow(output);
    chmodSync(work.path, 0o755);
    execFileSync('chmod', ['-R', 'go+rX', content]);
    const ran = run('build', [], { uid: 65534 });
    expectPlainSpeech(ran);
    expect(ran.code).toBe(3);
    expect(bytesBelow(output)).toEqual(before);
  });

  test('a build killed half-way leaves the last output, and the next build clears up', async () => {
    const staged = () => readdirSync(join(output, '.builds')).filter((name) => name.startsWith('new-'));
    standGood();
    const before = bytesBelow(join(output, 'private/')).length;
    writeFiles(content, [[SQUAT, (smallStudio().get(SQUAT) ?? '').replace('low stool', 'low bench')]]);
    const args = ['build', '--content', content, '--out', output, '--today', '2026-11-24'];
    const killed = spawn(process.execPath, [join(TOP, 'dist/src/app/main.js'), ...args], { stdio: 'ignore' });
    const ended = once(killed, 'exit');
    while (staged().length === 0 && killed.exitCode === null) await wait(5);
    killed.kill('SIGKILL');
    expect(await ended).toEqual([null, 'SIGKILL']);
    expect(staged()).toHaveLength(1);
    expect(bytesBelow(join(output, 'private/')).length).toBe(before);
    expect(run('build').code).toBe(0);
    expect(staged()).toEqual([]);
  });

  test('the studio’s own page missing', () => {
    unlinkSync(join(content, 'studio.md'));
    const ran = run('build');
    expectPlainSpeech(ran);
    expect(ran.code).toBe(1);
    expect(ran.out).toContain('studio.md');
  });

  test('a client’s folder whose name is an exercise’s', () => {
    renameSync(join(content, 'clients/ash-venn'), join(content, 'clients/goblet-squat'));
    const ran = run('check');
    expectPlainSpeech(ran);
    expect(ran.code).toBe(1);
  });
});

describe('the command line', () => {
  test.each([
    [['--help'], 0],
    [['build', '--help'], 0],
    [['--version'], 0],
    [[], 2],
    [['biuld'], 2],
    [['build', '--oot', 'x'], 2],
    [['build', '--today', '2027-02-30'], 2],
    [['build', '--today'], 2],
    [['why', 'rowan-ashby', '--only', 'hester-vane'], 2],
    [['why', 'ash-venn', '--week', 'four'], 2],
    [['why', 'ash-venn', '--week', '0'], 2],
  ] as const)('%j exits with %i', (args, code) => {
    const ran = chalkleafAlone(args);
    expectPlainSpeech(ran);
    expect(ran.code).toBe(code);
  });

  test('a client who is not there, with the nearest who is', () => {
    const ran = run('why', ['ash-ven']);
    expect(ran.code).toBe(1);
    expect(ran.out).toContain('ash-venn');
  });

  test('JSON is JSON, whatever was found', () => {
    writeFiles(content, [[SQUAT, 'nothing here']]);
    const ran = run('check', ['--json']);
    const parsed: unknown = JSON.parse(ran.out);
    expect(parsed).toMatchObject({ command: 'check', exit: 1 });
  });

  test('nobody watching: no progress line, no colour', () => {
    const ran = run('build');
    expect(ran.err).toBe('');
    expect(ran.out).not.toContain('\u001b');
  });
});
