/** Serves a folder under a sub-path by the Apache HTTP Server, which reads the `.htaccess` a published folder brings. */
import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { chmodSync, cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import type { Hosted } from './serve-nginx.js';

const APACHE = '/usr/sbin/apache2';
const MODULES = ['mpm_event', 'authz_core', 'alias', 'mime', 'dir', 'headers'];

/** `under` begins and ends with `/`. `port` is one that is free. */
export async function serveByApache(folder: string, under: string, port: number): Promise<Hosted> {
  const home = mkdtempSync(join(tmpdir(), 'chalkleaf-apache-'));
  // Where it is started by root it hands out files as somebody who may read but little.
  chmodSync(home, 0o755);
  const root = join(home, 'served');
  cpSync(folder, root, { recursive: true, dereference: true });
  const conf = join(home, 'apache.conf');
  writeFileSync(
    conf,
    `ServerRoot "${home}"
ServerName 127.0.0.1
Listen 127.0.0.1:${port}
PidFile "${home}/apache.pid"
ErrorLog "${home}/error.log"
DefaultRuntimeDir "${home}"
Mutex pthread
${MODULES.map((name) => `LoadModule ${name}_module /usr/lib/apache2/modules/mod_${name}.so`).join('\n')}
<IfModule unixd_module>
  User nobody
  Group nogroup
</IfModule>
TypesConfig /dev/null
AddType text/html .html
AddType text/css .css
AddType text/javascript .js
AddType image/png .png
AddType image/svg+xml .svg
DirectoryIndex index.html
Alias "${under}" "${root}/"
<Directory "${root}">
  AllowOverride All
  Require all granted
</Directory>
`,
  );
  const tried = spawnSync(APACHE, ['-t', '-f', conf], { encoding: 'utf8' });
  if (tried.status !== 0) throw new Error(`apache does not start: ${tried.stderr}`);
  const apache = spawn(APACHE, ['-D', 'FOREGROUND', '-f', conf], { stdio: 'ignore' });
  const address = `http://127.0.0.1:${port}${under}`;
  for (let tries = 0; ; tries += 1) {
    if ((await fetch(address).catch(() => undefined)) !== undefined) break;
    if (tries > 100) throw new Error(`apache does not answer: ${readFileSync(join(home, 'error.log'), 'utf8')}`);
    await new Promise((done) => setTimeout(done, 50));
  }
  return { address, close: () => closeIt(apache, home) };
}

async function closeIt(apache: ChildProcess, home: string): Promise<void> {
  const gone = new Promise((done) => apache.once('exit', done));
  apache.kill('SIGTERM');
  await gone;
  rmSync(home, { recursive: true, force: true });
}
