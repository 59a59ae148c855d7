/** Advice: what is told, where its bounds lie, how it is left unsaid, and that it never holds anything back. */
import { describe, expect, test } from 'vitest';
import type { FolderFile } from '../../src/content/read-folder.js';
import { ADVICE, isAdvice } from '../../src/model/advice.js';
import type { Problem } from '../../src/model/problem.js';
import { baseFiles, errorFolders, readWith } from './error-folders.js';

const SQUAT = 'exercises/goblet-squat.md';
const CHAIR = 'exercises/chair-squat.md';
const PROGRAMME = 'programmes/one-day.md';

const textOf = ({ bytes }: FolderFile): string => new TextDecoder().decode(bytes);
const fileOf = (path: string, text: string): FolderFile => ({ path, bytes: new TextEncoder().encode(text) });

/** The whole studio with one page changed; the change must be one. */
function changed(path: string, change: (text: string) => string, files: readonly FolderFile[] = baseFiles()) {
  return files.map((file) => {
    if (file.path !== path) return file;
    const after = change(textOf(file));
    expect(after).not.toBe(textOf(file));
    return fileOf(path, after);
  });
}

const codesOf = (problems: readonly Problem[]): readonly string[] => problems.map(({ code }) => code);
const told = (files: readonly FolderFile[]): readonly string[] => codesOf(readWith(files).problems);

const cue = (words: number): string => `- **Up** — ${Array.from({ length: words }, (_, at) => `word${at}`).join(' ')}`;
const cues = (...lines: readonly string[]) =>
  changed(SQUAT, (text) => text.replace(/## Cues\n[\s\S]*?## Breath/, `## Cues\n\n${lines.join('\n')}\n\n## Breath`));

describe('bounds', () => {
  test.each([
    ['14 words of a cue are one breath', [cue(3), cue(14), '- Tall.'], []],
    ['15 are not; marks are no words', [cue(3), `${cue(15)} —`, '- Tall.'], ['long-cue']],
    ['five cues are read', ['- a', '- b', '- c', '- d', '- e'], []],
    ['six are not, and are told once', ['- a', '- b', '- c', '- d', '- e', '- f'], ['many-cues']],
    ['three cues of a phase are heard', ['- **Up** — a', '- **Up** — b', '- **Up** — c'], []],
    ['four are not', ['- **Up** — a', '- **Up** — b', '- **Up** — c', '- **Up** — d'], ['many-cues']],
  ])('%s', (_, lines, codes) => {
    // The squat is asked for at the bottom, so one cue has to say so.
    const asked = changed(SQUAT, (text) => text.replace('some, bottom', 'some'), cues(...lines));
    expect(told(asked)).toEqual(codes);
  });

  const rows = (...targets: readonly string[]) =>
    changed(PROGRAMME, (text) => {
      const lines = targets.map((target, at) => `| row-${at} | ${target} | 3 × 6–10 | 90 s |`);
      const head = '| Id | Exercise | Sets and reps | Rest |\n| --- | --- | --- | --- |';
      return text.replace(
        /\| Exercise[\s\S]*$/,
        `${head}\n${['| squat | any squat | 3 × 6–10 | 90 s |', ...lines].join('\n')}\n`,
      );
    });

  test.each([
    [['any hinge', 'any hinge', 'any hinge'], ['hinges-without-pull']],
    [['any hinge', 'any hinge'], []],
    [['any hinge', 'any hinge', 'any hinge', 'any pull'], []],
    [['any push', 'any push'], ['pushes-without-pull']],
    [['any push'], []],
    [['any push', 'any push', 'any pull'], []],
  ])('a session of %j', (targets, codes) => {
    expect(told(rows(...targets))).toEqual(codes);
  });
});

describe('the way down without kit', () => {
  test('is found on the harder side of the other page too', () => {
    const alone = changed(SQUAT, (text) => text.replace('- [Chair squat](chair-squat.md)', '- To half depth'));
    expect(told(alone)).toContain('easier-needs-kit');
    const harder = '\n## Harder\n\n- [Goblet squat](goblet-squat.md) — for load\n';
    const said = changed(CHAIR, (text) => text.replace('\n## Stop if', `${harder}\n## Stop if`), alone);
    expect(told(said)).toEqual([]);
  });

  test('nothing is told of it while anything is wrong: a link astray looks like a gap', () => {
    const astray = changed(SQUAT, (text) => text.replace('chair-squat.md', 'chair-sqat.md'));
    expect(told(astray)).toEqual(['unknown-exercise']);
  });

  test('may be the exercise itself, with empty hands; a bench is no chair', () => {
    const empty = changed(SQUAT, (text) =>
      text.replace('load: bell', 'load: bell or nothing').replace('- [Chair squat](chair-squat.md)', '- To half depth'),
    );
    expect(told(empty)).toEqual(['exercise-unreached']);
    expect(told(changed(CHAIR, (text) => text.replace('needs: chair', 'needs: bench')))).toEqual([
      'easier-needs-kit',
      'easier-needs-kit',
    ]);
  });
});

describe('left unsaid', () => {
  const folders = errorFolders().filter(({ code }) => isAdvice(code));

  test('every kind has a folder', () => {
    expect([...new Set(folders.map(({ code }) => code))].sort()).toEqual([...ADVICE].sort());
  });

  test.each(folders.map((folder) => [folder.name, folder] as const))('%s, with one line', (_, { files, code }) => {
    const { problems } = readWith(files);
    expect([...new Set(codesOf(problems))]).toEqual([code]);
    for (const { severity } of problems) expect(severity).toBe('advice');
    const everywhere = changed('studio.md', (text) => text.replace('\n---\n', `\nadvice off: ${code}\n---\n`), files);
    expect(told(everywhere)).toEqual([]);
    const page = problems[0]?.place?.file ?? '';
    const here = changed(page, (text) => text.replace('\n---\n', `\nadvice off: [${code}]\n---\n`), files);
    expect(told(here)).toEqual([]);
    const other = ADVICE.find((kind) => kind !== code);
    const elsewhere = changed('studio.md', (text) => text.replace('\n---\n', `\nadvice off: ${other}\n---\n`), files);
    expect(told(elsewhere)).toEqual([code]);
  });

  test('on one page it is still told of another', () => {
    const long = [SQUAT, CHAIR].reduce(
      (files, path) => changed(path, (text) => text.replace('## Breath', `${cue(20)}\n\n## Breath`), files),
      baseFiles(),
    );
    expect(told(long)).toEqual(['long-cue', 'long-cue']);
    const off = changed(SQUAT, (text) => text.replace('\n---\n', '\nadvice off: long-cue\n---\n'), long);
    expect(readWith(off).problems.map(({ place }) => place?.file)).toEqual([CHAIR]);
  });
});
