/**
 * What `npm run demo:sealed` shows: a first studio whose one client, an invented one, was issued a booklet; sealed, published, and
 * handed out from this computer to nobody but this computer, so that it can be opened as a client opens it.
 */
import { spawnSync } from 'node:child_process';
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:http';
import { tmpdir } from 'node:os';
import { extname, join, normalize } from 'node:path';
import { pathToFileURL } from 'node:url';

const CLIENT = 'ash-venn';
/** What a browser must be told; the rest it tells by itself. */
const TYPES = {
  '.html': 'text/html; charset=utf-8',
  '.css': 'text/css; charset=utf-8',
  '.js': 'text/javascript; charset=utf-8',
  '.svg': 'image/svg+xml',
  '.webmanifest': 'application/manifest+json',
};

/** Any plain host does as much: a file, or the page for what is not there. */
function answer(upload, request, response) {
  const send = (status, file) => {
    const bytes = readFileSync(join(upload, file));
    response.writeHead(status, { 'content-type': TYPES[extname(file)] ?? 'application/octet-stream' }).end(bytes);
  };
  try {
    const { pathname } = new URL(request.url ?? '/', 'http://here.invalid');
    send(200, normalize(decodeURIComponent(pathname)).replace(/\/$/, '/index.html'));
  } catch {
    send(404, '404.html');
  }
}

/** `top` is the folder of Chalkleaf, compiled. It ends when it is told to, and takes the studio away. */
export function showSealed(top, say) {
  const studio = mkdtempSync(join(tmpdir(), 'chalkleaf-sealed-'));
  const [content, output] = [join(studio, 'content'), join(studio, 'output')];
  const away = () => rmSync(studio, { recursive: true, force: true });
  const run = (...words) => {
    const done = spawnSync(process.execPath, [join(top, 'dist', 'src', 'app', 'main.js'), ...words], {
      encoding: 'utf8',
    });
    if (done.status === 0) return;
    say(`${done.stdout}${done.stderr}`);
    away();
    process.exit(done.status ?? 1);
  };
  const server = createServer((request, response) => answer(join(output, 'upload'), request, response));
  server.listen(0, '127.0.0.1', () => {
    // A browser opens what is sealed where nobody can listen: by https, or from this computer itself.
    const address = `http://127.0.0.1:${server.address().port}/`;
    run('begin', studio);
    const page = join(content, 'studio.md');
    writeFileSync(page, readFileSync(page, 'utf8').replace(/^coach:/m, `address: ${address}\ncoach:`));
    say('\nIssuing, building and publishing …');
    for (const words of [['issue', CLIENT], ['build'], ['publish']]) run(...words, '--content', content);
    const folder = readdirSync(join(output, 'upload')).find((name) => /^[0-9a-f]{32}$/.test(name));
    say('\nAsh Venn, who is invented, was issued a booklet. As long as this runs, open on this computer:');
    say(
      `  what you hand over      ${pathToFileURL(join(output, 'private', 'desk', 'hand-over', `${CLIENT}.html`)).href}`,
    );
    say('  what Ash opens          the link in the message on that sheet');
    say(`  what anybody else sees  ${address}${folder}/`);
    say(`  the library beside it   ${address}`);
    say('End it with Ctrl and C. The studio and its keys are then taken away.');
  });
  for (const signal of ['SIGINT', 'SIGTERM']) {
    process.on(signal, () => {
      away();
      process.exit(0);
    });
  }
}
