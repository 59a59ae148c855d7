/**
 * What a host is asked to say beside the files: the same rules in the forms that common hosts read. The policy is
 * gathered from the pages themselves: whatever one of them allows itself is allowed, and nothing else; each page keeps its
 * own, narrower one.
 */

/** Of a page as it stands, without the marks of HTML. */
export function policyIn(html: string): string | null {
  const meta = /<meta http-equiv="Content-Security-Policy" content="([^"]*)"/i.exec(html)?.[1];
  return meta === undefined ? null : meta.replaceAll('&quot;', '"').replaceAll('&#39;', "'").replaceAll('&amp;', '&');
}

/** What a page carries as data: it runs nothing, so that a header need not name the digest of each. */
export const dataIn = (html: string): readonly string[] =>
  [...html.matchAll(/<script type="application\/ld\+json">([^<]*)<\/script>/gi)].map(([, data = '']) => data);

const NONE = "'none'";

/** Every source that any of the policies names, by directive, but those left out; `'none'` where none names any. */
export function joinPolicies(policies: readonly string[], without: ReadonlySet<string> = new Set()): string {
  const sources = new Map<string, Set<string>>([['default-src', new Set()]]);
  for (const policy of policies) {
    for (const directive of policy.split(';')) {
      const [name, ...named] = directive.trim().split(/\s+/);
      if (name === undefined || name === '') continue;
      const all = sources.get(name) ?? new Set<string>();
      for (const source of named) if (source !== NONE && !without.has(source)) all.add(source);
      sources.set(name, all);
    }
  }
  // A page cannot forbid in itself that others frame it.
  sources.set('frame-ancestors', new Set());
  return [...sources].map(([name, all]) => `${name} ${all.size === 0 ? NONE : [...all].sort().join(' ')}`).join('; ');
}

/** Every header with its value, in the order they are written. */
function hostHeaders(policy: string): readonly (readonly [string, string])[] {
  return [
    ['Content-Security-Policy', policy],
    ['Referrer-Policy', 'no-referrer'],
    ['X-Content-Type-Options', 'nosniff'],
    ['Permissions-Policy', 'camera=(), geolocation=(), microphone=(), payment=(), usb=()'],
    ['Cross-Origin-Opener-Policy', 'same-origin'],
    ['Cross-Origin-Resource-Policy', 'same-origin'],
    // Asked anew each time whether it is still the same; what is the same is not sent again.
    ['Cache-Control', 'no-cache'],
  ];
}

/** Sealed folders go by 32 letters, and no file that anybody may read names one. */
const SEALED = '/[0-9a-f]{32}/';
const ROBOTS = 'noindex, nofollow, noarchive';

/** For hosts that read a list of paths with their headers. */
export const headersList = (policy: string): string =>
  `/*\n${hostHeaders(policy)
    .map(([name, value]) => `  ${name}: ${value}\n`)
    .join('')}`;

/**
 * For the Apache HTTP Server 2.4, where it lets folders say something of themselves and has `mod_headers`. `notHere`: the
 * path of the page for what is not there; null where nobody knows under which path the library will stand.
 */
export const apacheFile = (policy: string, notHere: string | null): string =>
  [
    'Options -Indexes',
    ...(notHere === null ? [] : [`ErrorDocument 404 ${notHere}`]),
    'AddDefaultCharset utf-8',
    'AddType application/manifest+json .webmanifest',
    'AddType application/octet-stream .jwe',
    '<IfModule mod_headers.c>',
    ...hostHeaders(policy).map(([name, value]) => `  Header always set ${name} "${value.replaceAll('"', '\\"')}"`),
    `  <If "%{REQUEST_URI} =~ m#${SEALED}#">`,
    `    Header always set X-Robots-Tag "${ROBOTS}"`,
    '  </If>',
    '</IfModule>',
    '',
  ].join('\n');

/** For nginx: to be included in a `location` that has a `root` or an `alias`. `notHere` as for Apache. */
export const nginxSnippet = (policy: string, notHere: string | null): string =>
  [
    '# Include this in the location that serves the library.',
    'charset utf-8;',
    'autoindex off;',
    'index index.html;',
    ...(notHere === null ? [] : [`error_page 404 ${notHere};`]),
    'set $chalkleaf_robots "";',
    `if ($uri ~ "${SEALED}") {`,
    `  set $chalkleaf_robots "${ROBOTS}";`,
    '}',
    ...hostHeaders(policy).map(([name, value]) => `add_header ${name} "${value}" always;`),
    'add_header X-Robots-Tag $chalkleaf_robots always;',
    '',
  ].join('\n');
