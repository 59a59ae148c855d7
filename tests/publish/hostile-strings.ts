/** Strings that would do harm where they are taken for more than text. Each that could run something calls `struck`. */

const CALL = 'struck(1)';
const AWAY = 'http://away.invalid/x';

const MARKUP = [
  `<script>${CALL}</script>`,
  `</script><script>${CALL}</script>`,
  `<img src=x onerror=${CALL}>`,
  `"><img src=x onerror=${CALL}>`,
  `'><svg onload=${CALL}>`,
  `" autofocus onfocus="${CALL}" x="`,
  `' onpointerover='${CALL}`,
  '`onload=struck(1)`',
  `<svg><script>${CALL}</script></svg>`,
  `<svg><animate onbegin=${CALL} attributeName=x dur=1s>`,
  `<math><mtext></mtext><mglyph><style><img src onerror=${CALL}></style></mglyph></math>`,
  `<noscript><p title="</noscript><img src=x onerror=${CALL}>">`,
  `<iframe srcdoc="<script>parent.${CALL}</script>"></iframe>`,
  `<object data="javascript:${CALL}"></object>`,
  `<embed src="javascript:${CALL}">`,
  `<base href="${AWAY}/">`,
  `<meta http-equiv=refresh content="0;url=${AWAY}">`,
  `<link rel=stylesheet href="${AWAY}.css">`,
  `<form action="${AWAY}"><button autofocus>x</button></form>`,
  `<video><source onerror=${CALL}></video>`,
  `<details open ontoggle=${CALL}>x</details>`,
  `<input autofocus onfocus=${CALL}>`,
  `<body onload=${CALL}>`,
  `<style>@import "${AWAY}.css";</style>`,
  `</style><style>*{background:url(${AWAY}.png)}</style>`,
  `</title><script>${CALL}</script>`,
  `</textarea><script>${CALL}</script>`,
  `</template><script>${CALL}</script>`,
  `--><script>${CALL}</script><!--`,
  `<!--><script>${CALL}</script>`,
  `]]><script>${CALL}</script>`,
  `<?xml version="1.0"?><x:script xmlns:x="http://www.w3.org/1999/xhtml">${CALL}</x:script>`,
  `<a href="javascript:${CALL}">x</a>`,
  `<plaintext>`,
  `<xmp>`,
  `<scr<script>ipt>${CALL}</scr</script>ipt>`,
  `\u003cscript\u003e${CALL}\u003c/script\u003e`,
  '&lt;script&gt;struck(1)&lt;/script&gt;',
  '&#60;img src=x onerror=struck(1)&#62;',
  '%3Cscript%3Estruck(1)%3C/script%3E',
  '\\u003cscript\\u003estruck(1)\\u003c/script\\u003e',
];

const MARKDOWN = [
  `[x](javascript:${CALL})`,
  `[x](JaVaScRiPt:${CALL})`,
  `[x](java&#10;script:${CALL})`,
  `[x](data:text/html,<script>${CALL}</script>)`,
  `[x](vbscript:${CALL})`,
  `![x](${AWAY}.png)`,
  `![x](x"onerror="${CALL})`,
  `<${AWAY}>`,
  `<javascript:${CALL}>`,
  `[x]: javascript:${CALL}`,
  `[x](<"onclick=${CALL}>)`,
  `**${'*'.repeat(40)}**`,
  '[a]('.repeat(60),
  '`</code><script>struck(1)</script>`',
];

const TEMPLATES = [
  '{{ struck(1) }}',
  "{{constructor.constructor('struck(1)')()}}",
  '{% raw %}{{ struck(1) }}{% endraw %}',
  '<%= struck(1) %>',
  '<% struck(1) %>',
  `\${struck(1)}`,
  '#{struck(1)}',
  '@{struck(1)}',
  `[[\${struck(1)}]]`,
  '*{struck(1)}',
  "'+struck(1)+'",
  '"+struck(1)+"',
  '");struck(1);("',
  "');struck(1);('",
  '"}];struck(1);[{"',
  '"},"plan":{"x":"',
  '*/struck(1)/*',
  '//\u2028struck(1)',
  'a}body{background:url(http://away.invalid/x.png)}b{',
  'expression(struck(1))',
  'url(javascript:struck(1))',
];

const ODD = [
  '\u202estneilc lla',
  '\u2066\u202e\u2069',
  'a\u200bb\u200dc\ufeff',
  '\u0000',
  'a\u0000b',
  '\u0001\u001b[31mred\u001b[0m',
  '\u001b]0;title\u0007',
  '\u2028',
  '\u2029',
  '\ud800',
  '\udfff\ud800',
  '\ufffe\uffff',
  'Z\u0300\u0301\u0302\u0303\u0304'.repeat(30),
  'x'.repeat(20_000),
  `${'<b>'.repeat(3000)}`,
  '\t\t\t',
  '\r',
  '…'.repeat(400),
  '𝖘𝖈𝖗𝖎𝖕𝖙',
  '＜script＞struck(1)＜/script＞',
  '‹img src=x onerror=struck(1)›',
];

const PATHS = [
  '../../../../etc/passwd',
  '..\\..\\..\\windows\\win.ini',
  '/etc/passwd',
  'file:///etc/passwd',
  '%2e%2e%2f%2e%2e%2fetc%2fpasswd',
  '..%00/',
  'CON',
  'NUL.md',
  'a/b/../../c',
  '~root',
  '$(touch /tmp/struck)',
  '`touch /tmp/struck`',
  '; touch /tmp/struck',
  '| touch /tmp/struck',
  '\\\\host\\share',
  'http://away.invalid/',
  '//away.invalid/x.js',
];

const DATA = [
  '__proto__',
  'constructor',
  'toString',
  'hasOwnProperty',
  'null',
  'undefined',
  'NaN',
  '1e999',
  '-0',
  '!!js/function "struck(1)"',
  '&a [*a]',
  '*a',
  '? : -',
  '"',
  "'",
  '|',
  '---',
  '...',
  '# x',
  '## Stop if',
  ': x: y',
  '[]',
  '{}',
  '=1+1',
  '=HYPERLINK("http://away.invalid","x")',
  '@SUM(1)',
];

/** The same in other dress: in capitals, between words, twice over, with blanks that are none. */
const dressed = (text: string): readonly string[] => [
  text,
  `Slow ${text} down`,
  text.replace(/script|img|svg|on[a-z]+=/gi, (word) => word.toUpperCase()),
  text.replaceAll(' ', '\u00a0'),
];

export const HOSTILE: readonly string[] = [
  ...new Set([...MARKUP, ...MARKDOWN, ...TEMPLATES].flatMap(dressed)),
  ...ODD,
  ...PATHS,
  ...DATA,
];

/** All of them in so many texts: for what shows one text at a time. */
export const inBundles = (strings: readonly string[], bundles: number): readonly string[] =>
  Array.from({ length: bundles }, (_, at) => strings.filter((_text, index) => index % bundles === at).join(' '));

/** Gives them in turn, over and over. */
export function inTurn(texts: readonly string[]): () => string {
  let next = 0;
  return () => texts[next++ % texts.length] ?? '';
}

/** A word that is on no page unless one of them ran, and a host that is asked for by nothing else. */
export const ASKED_AWAY = 'away.invalid';
