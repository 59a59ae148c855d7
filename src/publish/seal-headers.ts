/**
 * What a host is to send beside the pages: no address passed on, nothing guessed of a file's kind, no page in another
 * site's frame, nothing of a sealed folder in any search engine; and the policy that each page also carries itself, so
 * that it holds before a letter of the page is read. None of it names a folder: a sealed one is known by its 32 figures.
 */

export interface Policies {
  /** Of the page that opens, and of the one that carries the sealed part. */
  readonly shell: string;
  readonly payload: string;
}

/** Cannot be said in a page itself (Content Security Policy Level 3, section 3.3). */
const NO_FRAME = "frame-ancestors 'none'";
/** What holds for every page of the studio, whatever else it allows itself. */
const EVERYWHERE = `${NO_FRAME}; base-uri 'none'; form-action 'none'; object-src 'none'`;
const ALWAYS: readonly (readonly [string, string])[] = [
  ['Referrer-Policy', 'no-referrer'],
  ['X-Content-Type-Options', 'nosniff'],
  ['Cross-Origin-Opener-Policy', 'same-origin'],
];
const ROBOTS = ['X-Robots-Tag', 'noindex, nofollow'] as const;
const POLICY = 'Content-Security-Policy';
/** Whoever has it asks each time whether it still holds. */
const FRESH = ['Cache-Control', 'no-cache'] as const;

type Row = readonly [string, string];

const apache = (rows: readonly Row[]): string =>
  rows.map(([name, value]) => `  Header always set ${name} "${value}"\n`).join('');

/** `.htaccess` of the public folder's top. */
export const apacheTop = (): string =>
  `<IfModule mod_headers.c>\n${apache([...ALWAYS, [POLICY, EVERYWHERE]])}</IfModule>\n` +
  '<IfModule mod_mime.c>\n  AddType application/manifest+json .webmanifest\n</IfModule>\n';

/** `.htaccess` of a sealed folder. */
export const apacheSealed = ({ shell, payload }: Policies): string => {
  const only = (name: string, policy: string): string =>
    `  <Files "${name}">\n  ${apache([[POLICY, `${policy}; ${NO_FRAME}`]])}  </Files>\n`;
  return `<IfModule mod_headers.c>\n${apache([...ALWAYS, ROBOTS, FRESH])}${only('index.html', shell)}${only('payload.html', payload)}</IfModule>\n`;
};

/** `_headers`, which several hosts of static pages read; a name after a colon there stands for any one folder. */
export function headersFile({ payload }: Policies): string {
  const rule = (path: string, rows: readonly Row[]): string =>
    `${path}\n${rows.map(([name, value]) => `  ${name}: ${value}\n`).join('')}`;
  return [
    rule('/*', [...ALWAYS, [POLICY, EVERYWHERE]]),
    rule('/:folder/payload.html', [ROBOTS, FRESH, [POLICY, payload]]),
    rule('/:folder/paper.jwe', [ROBOTS]),
    rule('/:folder/calendar.jwe', [ROBOTS]),
  ].join('\n');
}

const SEALED = '/[0-9a-f]{32}/';

/** For nginx: what stands in its `http` block, once. */
export const nginxMaps = ({ shell, payload }: Policies): string => `# In the http block, as a file of conf.d is.
map $uri $chalkleaf_policy {
  default "${EVERYWHERE}";
  "~${SEALED}(index\\.html)?$" "${shell}; ${NO_FRAME}";
  "~${SEALED}payload\\.html$" "${payload}; ${NO_FRAME}";
}
map $uri $chalkleaf_robots {
  default "";
  "~${SEALED}" "${ROBOTS[1]}";
}
map $uri $chalkleaf_cache {
  default "";
  "~${SEALED}" "${FRESH[1]}";
}
`;

/** For nginx: what stands in the `server` or `location` block that serves the studio. Nothing is sent of an empty value. */
export const nginxHeaders = (): string =>
  [
    '# In the server or location block that serves the public folder. A block below it with an add_header of its own',
    '# needs these lines again.',
    ...ALWAYS.map(([name, value]) => `add_header ${name} "${value}" always;`),
    `add_header ${POLICY} $chalkleaf_policy always;`,
    `add_header ${ROBOTS[0]} $chalkleaf_robots always;`,
    `add_header ${FRESH[0]} $chalkleaf_cache always;`,
    '',
  ].join('\n');
