/**
 * What `npm run demo`, `npm run demo:sealed` and `npm run verify` do first in a fresh clone: install what is missing, saying so.
 * Plain JavaScript on Node's own modules alone, since nothing else is there yet.
 */
import { spawnSync } from 'node:child_process';
import { existsSync, mkdtempSync, readFileSync, statSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { showSealed } from './show-sealed.mjs';

const top = join(dirname(fileURLToPath(import.meta.url)), '..', '..');
const say = (text) => process.stdout.write(`${text}\n`);

/** System programs the checks read pages and papers with, and the Debian package of each. */
const PROGRAMS = [
  ['chromium', 'chromium'],
  ['qpdf', 'qpdf'],
  ['pdftotext', 'poppler-utils'],
  ['gs', 'ghostscript'],
  ['zbarimg', 'zbar-tools'],
  ['java', 'default-jre-headless'],
  ['/usr/sbin/nginx', 'nginx-light'],
  ['/usr/sbin/apache2', 'apache2-bin'],
  ['jose', 'jose'],
  ['exiftool', 'libimage-exiftool-perl'],
  // A library of the system's own Python, which is no program: known by where its package puts it.
  ['/usr/lib/python3/dist-packages/jwcrypto', 'python3-jwcrypto'],
];

/** What the checks do without where a system has none of it; with it they are quicker. */
const QUICKER = [['chromium-headless-shell', 'chromium-headless-shell']];

function run(command, args, options = {}) {
  const done = spawnSync(command, args, { cwd: top, stdio: 'inherit', ...options });
  if (done.status !== 0) {
    say(`\n${[command, ...args].join(' ')} did not finish (${done.error?.message ?? `exit code ${done.status}`}).`);
    process.exit(done.status ?? 1);
  }
}

function needNode() {
  const [major, minor] = process.versions.node.split('.').map(Number);
  if (major > 20 || (major === 20 && minor >= 19)) return;
  say(`Node.js 20.19 or later is needed; this is ${process.versions.node}.`);
  process.exit(1);
}

/** The packages the lock file names, if they are not there or are older than it. */
function installPackages() {
  const lock = join(top, 'package-lock.json');
  const mark = join(top, 'node_modules', '.package-lock.json');
  if (existsSync(mark) && statSync(mark).mtimeMs >= statSync(lock).mtimeMs) return;
  say('Installing the packages of the lock file (npm ci) …');
  run('npm', ['ci', '--no-audit', '--no-fund']);
}

function compile() {
  run('npx', ['--no-install', 'tsc', '-p', 'tsconfig.json']);
}

const isThere = (program) =>
  (program.startsWith('/') && existsSync(program)) ||
  (process.env.PATH ?? '').split(':').some((folder) => folder !== '' && existsSync(join(folder, program)));

const lacking = (programs) => programs.filter(([program]) => !isThere(program)).map(([, pack]) => pack);

/** By the system's own means, which may ask for another user's rights. */
function apt(words, start) {
  const [command, ...rest] = [...(process.getuid?.() === 0 ? [] : ['sudo', '-n']), 'apt-get', ...words];
  start(command, rest, { env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' } });
}
const APT_INSTALL = ['install', '-y', '-q', '--no-install-recommends'];

/** Programs the tests need from the system's own packages; said before they are installed. */
function installPrograms() {
  const missing = lacking(PROGRAMS);
  if (missing.length > 0) {
    say(`The checks need these system packages: ${missing.join(', ')}.`);
    if (!isThere('apt-get')) {
      say('There is no apt-get here: install them by your own system’s means and run this again.');
      process.exit(1);
    }
    say('Installing them with apt-get …');
    apt(['update', '-q'], run);
    apt([...APT_INSTALL, ...missing], run);
  }
  const welcome = lacking(QUICKER);
  if (welcome.length === 0 || !isThere('apt-get')) return;
  say(`The checks are quicker with: ${welcome.join(', ')}. Installing what there is of it …`);
  const quietly = (command, args, options) => spawnSync(command, args, { cwd: top, ...options });
  if (missing.length === 0) apt(['update', '-q'], quietly);
  apt([...APT_INSTALL, ...welcome], quietly);
}

/** The day the demo studio is drawn for: its clients start two to six weeks later. */
const DEMO_DAY = '2026-11-24';

function demo() {
  compile();
  const status = spawnSync(
    process.execPath,
    ['dist/src/app/main.js', 'build', '--content', 'content', '--out', 'output', '--today', DEMO_DAY],
    { cwd: top, stdio: 'inherit' },
  ).status;
  // 1 is expected here: three demo clients are withheld on purpose, to show what that looks like.
  if (status !== 0 && status !== 1) process.exit(status ?? 1);
  const desk = join(top, 'output', 'private', 'desk', 'index.html');
  if (!existsSync(desk)) process.exit(1);
  say('\nThe demo studio is built. Open in a browser:');
  say(`  the coach’s desk      ${pathToFileURL(desk).href}`);
  say(`  the studio’s library  ${pathToFileURL(join(top, 'output', 'public', 'index.html')).href}`);
  say('Each client’s booklet, for the phone and on paper, is one tap from the desk.');
  say(
    'Nothing in it is issued yet: `npm run demo:sealed` shows what you hand over, and a sealed booklet as a client opens it.',
  );
}

/** `deep`: the same tests over many more generated strands, clients and kits. */
function verify(deep) {
  installPrograms();
  say('\nTypes');
  compile();
  say('\nLint');
  run('npx', ['--no-install', 'biome', 'ci', '.']);
  run('npx', ['--no-install', 'knip']);
  const report = join(mkdtempSync(join(tmpdir(), 'chalkleaf-verify-')), 'tests.json');
  say('\nTests: unit, browser and print');
  const vitest = ['--no-install', 'vitest', 'run', '--config', 'tests/vitest.config.ts'];
  const done = spawnSync('npx', [...vitest, '--reporter=default', '--reporter=json', `--outputFile.json=${report}`], {
    cwd: top,
    stdio: 'inherit',
    env: { ...process.env, ...(deep ? { CHALKLEAF_DEEP: '1' } : {}) },
  });
  const { numPassedTests, numFailedTests, numPendingTests } = JSON.parse(readFileSync(report, 'utf8'));
  say(`\ntests: ${numPassedTests} passed, ${numFailedTests} failed, ${numPendingTests} skipped`);
  process.exit(done.status ?? 1);
}

needNode();
installPackages();
if (process.argv[2] === 'demo' && process.argv[3] === 'sealed') {
  compile();
  showSealed(top, say);
} else if (process.argv[2] === 'demo') demo();
else if (process.argv[2] === 'verify') verify(process.argv[3] === 'deep');
else {
  say('Usage: npm run demo, npm run demo:sealed, npm run verify, or npm run verify:deep.');
  process.exit(2);
}
