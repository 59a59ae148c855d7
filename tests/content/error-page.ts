/** The coach's page of errors, `content/ERRORS.md`, made from the folders of mistakes. */
import type { ErrorFolder } from './error-folders.js';

const LONGEST = 14;

/** In the order of the contract's list; codes of other layers last. */
export function composeErrorPage(folders: readonly ErrorFolder[], order: readonly string[]): string {
  const codes = [...new Set([...order, ...folders.map(({ code }) => code)])];
  const parts = codes.flatMap((code) => {
    const found = folders.filter((folder) => folder.code === code);
    if (found.length === 0) return [];
    return [`## ${code}\n`, ...found.map(({ expected }) => `${fenced(expected)}\n`)];
  });
  return [
    '# What the checks say',
    '',
    'Every message `chalkleaf check` can give about your pages, each with an example that gives it. The code, such as',
    '`unknown-key`, never changes; look it up here. An *error* in a client’s page keeps that client’s booklet back and no',
    'other; an error elsewhere keeps everything back and leaves the last output as it was. A *warning* keeps nothing back, nor',
    'does *advice*, which one line leaves unsaid: see GUIDE.md.',
    '',
    'This page is made from the examples; changes to it by hand are lost.',
    '',
    ...parts,
  ].join('\n');
}

function fenced(report: string): string {
  const lines = report.trimEnd().split('\n');
  const shown = lines.length > LONGEST ? [...lines.slice(0, LONGEST), '…'] : lines;
  return ['```text', ...shown, '```'].join('\n');
}
