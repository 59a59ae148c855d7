/** Serves a folder under a sub-path by nginx, as an ordinary process on this machine, with the headers a published folder brings. */
import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, readFileSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

const NGINX = '/usr/sbin/nginx';

export interface Hosted {
  /** Ends in `/`. */
  readonly address: string;
  readonly close: () => Promise<void>;
}

async function freePort(): Promise<number> {
  const server = createServer();
  await new Promise<void>((done) => server.listen(0, '127.0.0.1', done));
  const address = server.address();
  await new Promise((done) => server.close(done));
  if (address === null || typeof address === 'string') throw new Error('no port is free');
  return address.port;
}

/** `under` begins and ends with `/`. `port` is one that is free. The folder brings `nginx-headers.conf`. */
export async function serveByNginx(folder: string, under: string, port?: number): Promise<Hosted> {
  const home = mkdtempSync(join(tmpdir(), 'chalkleaf-nginx-'));
  const at = port ?? (await freePort());
  const root = realpathSync(folder);
  for (const name of ['body', 'proxy', 'fastcgi', 'uwsgi', 'scgi']) mkdirSync(join(home, name));
  writeFileSync(
    join(home, 'nginx.conf'),
    `daemon off;
master_process off;
pid ${home}/nginx.pid;
error_log ${home}/error.log;
events {}
http {
  include /etc/nginx/mime.types;
  access_log ${home}/access.log;
  client_body_temp_path ${home}/body;
  proxy_temp_path ${home}/proxy;
  fastcgi_temp_path ${home}/fastcgi;
  uwsgi_temp_path ${home}/uwsgi;
  scgi_temp_path ${home}/scgi;
  gzip on;
  gzip_types text/css text/javascript application/javascript application/manifest+json image/svg+xml;
  server {
    listen 127.0.0.1:${at};
    location ${under} {
      alias ${root}/;
      include ${root}/nginx-headers.conf;
    }
  }
}
`,
  );
  const tried = spawnSync(NGINX, ['-t', '-c', join(home, 'nginx.conf'), '-p', home], { encoding: 'utf8' });
  if (tried.status !== 0) throw new Error(`nginx does not take the headers: ${tried.stderr}`);
  const nginx = spawn(NGINX, ['-c', join(home, 'nginx.conf'), '-p', home], { stdio: 'ignore' });
  const address = `http://127.0.0.1:${at}${under}`;
  for (let tries = 0; ; tries += 1) {
    const answer = await fetch(address).catch(() => undefined);
    if (answer !== undefined) break;
    if (tries > 100) throw new Error(`nginx does not answer: ${readFileSync(join(home, 'error.log'), 'utf8')}`);
    await new Promise((done) => setTimeout(done, 50));
  }
  return { address, close: () => closeIt(nginx, home) };
}

async function closeIt(nginx: ChildProcess, home: string): Promise<void> {
  const gone = new Promise((done) => nginx.once('exit', done));
  nginx.kill('SIGTERM');
  await gone;
  rmSync(home, { recursive: true, force: true });
}
