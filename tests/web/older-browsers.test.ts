/** Scripts are left as they are where a browser of the oldest years served is wrong only about what they do not use. */
import { expect, test } from 'vitest';
import { webSources } from '../../src/app/web-sources.js';
import { bundleScript, prepareShell } from '../../src/web/prepare-shell.js';

const OPENS = '([{';
const CLOSES = ')]}';

/** Where what opens at `from` is closed again, and whether a list is passed on right within it. */
function within(code: string, from: number): { readonly end: number; readonly passesOn: boolean } {
  let depth = 0;
  let quote = '';
  let passesOn = false;
  for (let i = from; i < code.length; i += 1) {
    const sign = code.charAt(i);
    if (sign === '\\') i += 1;
    else if (quote !== '') quote = sign === quote ? '' : quote;
    else if (`'"\``.includes(sign)) quote = sign;
    else if (OPENS.includes(sign)) depth += 1;
    else if (CLOSES.includes(sign)) depth -= 1;
    else if (depth === 1 && code.startsWith('...', i)) passesOn = true;
    if (depth === 0) return { end: i + 1, passesOn };
  }
  return { end: code.length, passesOn };
}

/** Calls beyond an optional link, as `a?.b(...c)`, that pass a list on, which Chrome 90 does not know how to leave out. */
function passedOnBeyond(code: string): readonly string[] {
  return [...code.matchAll(/\?\.(?!\d)/g)].flatMap(({ index }) => {
    let at = index + 2;
    for (;;) {
      const name = /^\.?[\w$]+/.exec(code.slice(at, at + 200))?.[0];
      if (name !== undefined) at += name.length;
      else if (code[at] !== '(' && code[at] !== '[') return [];
      else {
        const { end, passesOn } = within(code, at);
        if (passesOn && code[at] === '(') return [code.slice(Math.max(0, index - 20), end)];
        at = end;
      }
    }
  });
}

test('what is looked for is found, and nothing else', () => {
  for (const code of ['n?.m(...a)', 'n?.m(f(")"),...a)', 'n?.(1)(...a)', 'n?.[f(1)].m(g([1]),...[])'])
    expect(passedOnBeyond(code), code).toEqual([code]);
  for (const code of [
    'n?.m({...a})',
    'n?.m(f(...a))',
    'n?.m(a),f(...a)',
    'n?.3:f(...a)',
    'n?.m+f(...a)',
    'n?.[[...a]]',
  ])
    expect(passedOnBeyond(code), code).toEqual([]);
});

test('no list is passed on beyond an optional link', async () => {
  const { script, training, planAgain, sealing, worker } = await prepareShell(webSources());
  const { search } = webSources();
  const ofLibrary = await Promise.all([bundleScript('main', search), bundleScript('worker', search)]);
  const scripts = [
    ...[script, training.en, training.nb, planAgain, sealing].map(({ text }) => text),
    worker,
    ...ofLibrary,
  ];
  for (const text of scripts) expect(passedOnBeyond(text)).toEqual([]);
  expect(scripts.join('').match(/\?\.(?!\d)/g)?.length).toBeGreaterThan(50);
});
