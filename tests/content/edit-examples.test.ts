/** Edits of a client's page by example: what stands there, what is changed, and what then stands there, to the byte. */
import { describe, expect, test } from 'vitest';
import { editClient } from '../../src/content/edit/edit-client.js';
import type { Edit } from '../../src/model/edit.js';

const edited = (source: string, ...edits: readonly Edit[]): string => {
  const made = editClient(source, edits);
  return 'text' in made ? made.text : `refused: ${made.problem.why} ${made.problem.name}`;
};
/** A front matter alone. */
const front = (lines: string): string => `---\n${lines}---\n`;
const set = (path: readonly string[], value: string): Edit => ({ kind: 'set', path, value });
const hip = { what: 'hip', degree: 'avoid', from: '2026-11-24', by: 'Maren Oakes' };
const add = (entry = hip): Edit => ({ kind: 'add-to-list', path: ['cautions'], entry });
const observed = { Date: '2026-11-24', Exercise: '[Squat](../../exercises/squat.md)', Side: 'left', Seen: 'hurrying' };
const row = (cells: Readonly<Record<string, string>> = observed): Edit => ({
  kind: 'add-row',
  section: 'Observations',
  cells,
});
const work = (text: string): Edit => ({ kind: 'replace-section-line', section: 'Work on this', text });

describe('values', () => {
  test.each<[string, string, readonly string[], string, string]>([
    ['a plain value, its comment and spaces', 'starts:   a  # why\n', ['starts'], 'b', 'starts:   b  # why\n'],
    ['a tab after the colon', 'starts:\ta\t# why\n', ['starts'], 'b', 'starts:\tb\t# why\n'],
    ['single quotation marks', "name: 'a' # c\n", ['name'], "Ann's", "name: 'Ann''s' # c\n"],
    ['double quotation marks', 'name: "a"\n', ['name'], 'say "go"', 'name: "say \\"go\\""\n'],
    ['a quoted key', '"name" : a\n', ['name'], 'b', '"name" : b\n'],
    ['what needs quoting', 'name: a\n', ['name'], 'two days: legs # arms', 'name: "two days: legs # arms"\n'],
    ['a date that YAML would call a date', 'starts: a\n', ['starts'], '2027-01-04', 'starts: 2027-01-04\n'],
    ['nothing after the key', 'starts:\nname: a\n', ['starts'], 'b', 'starts: b\nname: a\n'],
    ['nothing but a comment', 'starts: # when?\n', ['starts'], 'b', 'starts: b # when?\n'],
    ['a tilde', 'starts: ~ # when?\n', ['starts'], 'b', 'starts: b # when?\n'],
    ['words over two lines', 'name: a\n  b\nminutes: 4\n', ['name'], 'c', 'name: c\nminutes: 4\n'],
    ['a block of words', 'name: |- # two\n  a\n  b\n\nminutes: 4\n', ['name'], 'c', 'name: c # two\n\nminutes: 4\n'],
    ['a folded block at the end', 'minutes: 4\nname: >\n  a\n  b\n', ['name'], 'c', 'minutes: 4\nname: c\n'],
    ['keys in braces', '{name: a, minutes: 4}\n', ['name'], 'b, c', '{name: "b, c", minutes: 4}\n'],
    ['a question mark before the key', '? name\n: a\n', ['name'], 'b', '? name\n: b\n'],
    ['below a key', 'room:\n    ceiling: a # c\n', ['room', 'ceiling'], 'b', 'room:\n    ceiling: b # c\n'],
    ['keys in braces below a key', 'room: {ceiling: a}\n', ['room', 'ceiling'], 'b', 'room: {ceiling: b}\n'],
    [
      'one more below a key',
      'room:\n    floor: a\n',
      ['room', 'ceiling'],
      'b',
      'room:\n    floor: a\n    ceiling: b\n',
    ],
    ['one more in braces', 'room: {ceiling: a}\n', ['room', 'floor'], 'b', 'room: {ceiling: a, floor: b}\n'],
    ['in empty braces', 'room: {}\n', ['room', 'floor'], 'b', 'room: {floor: b}\n'],
    [
      'below a key of nothing',
      'room: # bare\nname: a\n',
      ['room', 'floor'],
      'b',
      'room: # bare\n  floor: b\nname: a\n',
    ],
    ['below a key not there', 'kit:\n   bells: 8\n', ['room', 'floor'], 'b', 'kit:\n   bells: 8\nroom:\n   floor: b\n'],
    ['in a page of no facts', '# none\n', ['name'], 'b', '# none\nname: b\n'],
    ['the very first', 'starts: a\n', ['name'], 'b', 'name: b\nstarts: a\n'],
    ['where the guide has it', 'name: a # c\nminutes: 4\n', ['starts'], 'b', 'name: a # c\nstarts: b\nminutes: 4\n'],
    [
      'after a list and the comments set in below it',
      'breaks:\n- from: a\n  until: b\n  # long\n# kit\nkit:\n',
      ['main bells'],
      'squat 16 kg, hinge 20 kg',
      'breaks:\n- from: a\n  until: b\n  # long\nmain bells: squat 16 kg, hinge 20 kg\n# kit\nkit:\n',
    ],
    [
      'one entry of a list in brackets',
      'main bells: [squat 16 kg, # hers\n  hinge 20 kg]\n',
      ['main bells'],
      'squat 16 kg, hinge 24 kg, push 8 kg',
      'main bells: [squat 16 kg, # hers\n  hinge 24 kg, push 8 kg]\n',
    ],
    [
      'entries of a list of dashes',
      'medicines: # asked\n  - other # inhaler\n  - slows the heart\n  - thins the blood\n',
      ['medicines'],
      'other, thins the blood',
      'medicines: # asked\n  - other # inhaler\n  - thins the blood\n',
    ],
  ])('%s', (_, before, path, value, after) => {
    expect(edited(front(before), set(path, value))).toBe(front(after));
    expect(edited(front(after), set(path, value))).toBe(front(after));
  });

  test.each<[string, string, readonly string[], string, string]>([
    ['keys where a value belongs', 'room:\n  floor: a\n', ['room'], 'b', 'other-shape room'],
    ['a value where keys belong', 'room: a\n', ['room', 'floor'], 'b', 'other-shape room floor'],
    ['two lines', 'name: a\n', ['name'], 'b\nstarts: c', 'not-one-line name'],
    ['nothing', 'name: a\n', ['name'], ' ', 'not-one-line name'],
    ['an anchor', 'name: &n a\nstarts: *n\n', ['name'], 'b', 'page-unreadable '],
    ['a tab for an indent', 'room:\n\tfloor: a\n', ['name'], 'b', 'page-unreadable '],
    ['a key twice', 'name: a\nname: b\n', ['name'], 'b', 'page-unreadable '],
  ])('refused: %s', (_, before, path, value, why) => {
    expect(edited(front(before), set(path, value))).toBe(`refused: ${why}`);
  });

  test('a page without facts at its top', () => {
    expect(edited('## Tests\n', set(['name'], 'a'))).toBe('refused: page-unreadable ');
  });
});

describe('entries', () => {
  const flow = '{what: hip, degree: avoid, from: 2026-11-24, by: Maren Oakes}';
  test.each<[string, string, string]>([
    [
      'dashes and gaps as there',
      'cautions: # ask\n    -   what: knee\n        by: a # c\n    # end\nkit:\n',
      `cautions: # ask\n    -   what: knee\n        by: a # c\n    -   what: hip\n        degree: avoid\n        from: 2026-11-24\n        by: Maren Oakes\n    # end\nkit:\n`,
    ],
    [
      'dashes not set in',
      'cautions:\n- what: knee\n  by: a\n  # end\n\n# kit\nkit:\n',
      'cautions:\n- what: knee\n  by: a\n  # end\n- what: hip\n  degree: avoid\n  from: 2026-11-24\n  by: Maren Oakes\n\n# kit\nkit:\n',
    ],
    [
      'after a block of words',
      'cautions:\n  - what: knee\n    say: >-\n      a\n      b\n\nkit:\n',
      'cautions:\n  - what: knee\n    say: >-\n      a\n      b\n  - what: hip\n    degree: avoid\n    from: 2026-11-24\n    by: Maren Oakes\n\nkit:\n',
    ],
    [
      'a dash on a line of its own',
      'cautions:\n  -\n    what: knee\n',
      'cautions:\n  -\n    what: knee\n  - what: hip\n    degree: avoid\n    from: 2026-11-24\n    by: Maren Oakes\n',
    ],
    ['braces after dashes', 'cautions:\n  - {what: knee} # c\n', `cautions:\n  - {what: knee} # c\n  - ${flow}\n`],
    ['in brackets', 'cautions: [{what: knee}] # c\n', `cautions: [{what: knee}, ${flow}] # c\n`],
    [
      'in brackets over lines, a comma at the end',
      'cautions: [\n    {what: knee}, # c\n]\n',
      `cautions: [\n    {what: knee}, # c\n    ${flow},\n]\n`,
    ],
    [
      'in brackets over lines, no comma at the end',
      'cautions: [\n    {what: knee} # c, d\n  ]\n',
      `cautions: [\n    {what: knee}, # c, d\n    ${flow}\n  ]\n`,
    ],
    [
      'in brackets that close on the last line',
      'cautions: [\n    {what: knee}]\n',
      `cautions: [\n    {what: knee},\n    ${flow}]\n`,
    ],
    [
      'empty brackets',
      'cautions: [] # none\nkit:\n',
      'cautions: # none\n  - what: hip\n    degree: avoid\n    from: 2026-11-24\n    by: Maren Oakes\nkit:\n',
    ],
    [
      'nothing yet',
      'name: a\nkit:\n   bells: 8\n',
      'name: a\ncautions:\n  - what: hip\n    degree: avoid\n    from: 2026-11-24\n    by: Maren Oakes\nkit:\n   bells: 8\n',
    ],
    ['everything in braces', '{name: a, kit: {}}\n', `{name: a, cautions: [${flow}], kit: {}}\n`],
  ])('added: %s', (_, before, after) => {
    expect(edited(front(before), add())).toBe(front(after));
    expect(edited(front(after), add())).toBe(front(after));
  });

  test('a break where there were none', () => {
    const edit: Edit = {
      kind: 'add-to-list',
      path: ['breaks'],
      entry: { from: '2026-11-02', until: '2026-11-20', cause: 'away' },
    };
    expect(edited(front('breaks: none # asked\nname: a\n'), edit)).toBe(
      front('breaks: # asked\n  - from: 2026-11-02\n    until: 2026-11-20\n    cause: away\nname: a\n'),
    );
  });

  const two =
    'cautions: # ask\n  # the knee\n  - what: knee\n    by: a # c\n    # still\n\n  # the hip\n  - what: hip\n';
  test.each<[string, string, number, string]>([
    ['the first', two, 0, 'cautions: # ask\n  # the knee\n\n  # the hip\n  - what: hip\n'],
    ['the last', two, 1, 'cautions: # ask\n  # the knee\n  - what: knee\n    by: a # c\n    # still\n\n  # the hip\n'],
    ['the only one', 'name: a\ncautions:\n  - what: hip\nkit:\n', 0, 'name: a\nkit:\n'],
    ['the only one, with a comment', 'cautions: # c\n  - what: hip\nkit:\n', 0, 'cautions: # c\nkit:\n'],
    ['of brackets, the first', 'cautions: [{a: b}, {c: d}, {e: f}]\n', 0, 'cautions: [{c: d}, {e: f}]\n'],
    ['of brackets, the middle', 'cautions: [{a: b}, {c: d}, {e: f}]\n', 1, 'cautions: [{a: b}, {e: f}]\n'],
    ['of brackets, the last', 'cautions: [{a: b}, {c: d}, {e: f},]\n', 2, 'cautions: [{a: b}, {c: d}, ]\n'],
    ['of brackets, the only one', 'cautions: [{a: b}]\n', 0, 'cautions: []\n'],
    [
      'of brackets over lines',
      'cautions: [\n  {a: b}, # one\n  {c: d}\n  # two\n]\n',
      1,
      'cautions: [\n  {a: b} # one\n  # two\n]\n',
    ],
  ])('taken out: %s', (_, before, index, after) => {
    expect(edited(front(before), { kind: 'remove-entry', path: ['cautions', index] })).toBe(front(after));
  });

  test('an entry is taken out by what it says, once', () => {
    const edit: Edit = { kind: 'remove-entry', path: ['cautions', 0], says: { what: 'knee' } };
    const once = edited(front(two), edit);
    expect(once).not.toBe(front(two));
    expect(edited(once, edit)).toBe(once);
    expect(edited(front(two), { ...edit, path: ['cautions', 1] })).toBe('refused: says-otherwise cautions 1');
  });

  test.each<[string, string, number, string, string, string]>([
    ['a value', two, 0, 'by', 'b', two.replace('by: a', 'by: b')],
    ['a key more', two, 0, 'review', '2027-01-04', two.replace('    by', '    review: 2027-01-04\n    by')],
    ['a key more of the last', two, 1, 'until', '2027-01-04', `${two}    until: 2027-01-04\n`],
    ['in braces', 'cautions: [{what: a, by: b}]\n', 0, 'from', 'c', 'cautions: [{what: a, from: c, by: b}]\n'],
  ])('set in an entry: %s', (_, before, index, key, value, after) => {
    const edit: Edit = { kind: 'set-in-entry', path: ['cautions', index], key, value };
    expect(edited(front(before), edit)).toBe(front(after));
    expect(edited(front(after), edit)).toBe(front(after));
  });

  test('indices are those of the page as it was handed in', () => {
    const page = front('cautions:\n  - what: knee\n  - what: hip\n  - what: neck\n');
    const out = (index: number): Edit => ({ kind: 'remove-entry', path: ['cautions', index] });
    expect(edited(page, out(0), out(2))).toBe(front('cautions:\n  - what: hip\n'));
    expect(edited(page, out(2), out(0))).toBe(front('cautions:\n  - what: hip\n'));
    expect(edited(page, out(0), out(1))).toBe(front('cautions:\n  - what: neck\n'));
    expect(edited(page, out(1), out(0), out(2))).toBe(edited(page, out(2), out(1), out(0)));
    const by: Edit = { kind: 'set-in-entry', path: ['cautions', 2], key: 'by', value: 'a' };
    expect(edited(page, out(0), by)).toBe(front('cautions:\n  - what: hip\n  - what: neck\n    by: a\n'));
    expect(edited(page, out(0), out(0))).toBe('refused: no-such-entry cautions 0');
    expect(edited(page, out(3))).toBe('refused: no-such-entry cautions 3');
  });
});

describe('rows', () => {
  const page = (body: string): string => `---\nname: a\n---\n${body}`;
  const link = observed.Exercise;
  test.each<[string, string, string]>([
    [
      'plain',
      '## Observations\n\n| Date | Exercise | Side | Seen |\n| --- | --- | --- | --- |\n',
      `## Observations\n\n| Date | Exercise | Side | Seen |\n| --- | --- | --- | --- |\n| 2026-11-24 | ${link} | left | hurrying |\n`,
    ],
    [
      'even columns, and columns in another order',
      '## Observations\n| Seen       | Side  | Exercise                          |    Date    |\n| :--------- | ----: | --------------------------------- | :--------: |\n\nAfter.\n',
      `## Observations\n| Seen       | Side  | Exercise                          |    Date    |\n| :--------- | ----: | --------------------------------- | :--------: |\n| hurrying   |  left | ${link} | 2026-11-24 |\n\nAfter.\n`,
    ],
    [
      'no pipes at the ends, no last line end',
      '## Observations\n\nDate | Exercise | Side | Seen\n--- | --- | --- | ---\n2026-01-01 | | | a',
      `## Observations\n\nDate | Exercise | Side | Seen\n--- | --- | --- | ---\n2026-01-01 | | | a\n2026-11-24 | ${link} | left | hurrying`,
    ],
    [
      'set in, without spaces',
      '## Observations\n\n  |Date|Exercise|Side|Seen|\n  |-|-|-|-|\n',
      `## Observations\n\n  |Date|Exercise|Side|Seen|\n  |-|-|-|-|\n  |2026-11-24|${link}|left|hurrying|\n`,
    ],
    [
      'a section without a table',
      '## Observations\nNone yet.\n\n## Notes\n\nb\n',
      `## Observations\n\n| Date | Exercise | Side | Seen |\n| --- | --- | --- | --- |\n| 2026-11-24 | ${link} | left | hurrying |\n\nNone yet.\n\n## Notes\n\nb\n`,
    ],
    [
      'no section, before the notes',
      '\n### Tests\n\nnone\n\n\n### Notes\n\nb\n',
      `\n### Tests\n\nnone\n\n### Observations\n\n| Date | Exercise | Side | Seen |\n| --- | --- | --- | --- |\n| 2026-11-24 | ${link} | left | hurrying |\n\n\n### Notes\n\nb\n`,
    ],
    [
      'no section, an underlined heading after it',
      'Notes\n-----\nb',
      `\n## Observations\n\n| Date | Exercise | Side | Seen |\n| --- | --- | --- | --- |\n| 2026-11-24 | ${link} | left | hurrying |\n\nNotes\n-----\nb`,
    ],
    [
      'no body',
      '',
      `\n## Observations\n\n| Date | Exercise | Side | Seen |\n| --- | --- | --- | --- |\n| 2026-11-24 | ${link} | left | hurrying |\n`,
    ],
  ])('added: %s', (_, before, after) => {
    expect(edited(page(before), row())).toBe(page(after));
    expect(edited(page(after), row())).toBe(page(after));
  });

  test('a bar in a cell, and one wide letter after another', () => {
    const before =
      '## Observations\n\n| Date       | Seen     |\n| ---------- | -------- |\n| 2026-01-01 | 漢字漢字 |\n';
    expect(edited(page(before), row({ Date: '2026-11-24', Seen: 'a|b' }))).toBe(
      page(`${before}| 2026-11-24 | a\\|b     |\n`),
    );
  });

  test('a column that is not there is not added', () => {
    const before = '## Observations\n\n| Date | Seen |\n| --- | --- |\n';
    expect(edited(page(before), row())).toBe('refused: no-column Exercise');
    expect(edited(page(before), row({ Date: '2026-11-24', Side: '', Seen: 'a' }))).toBe(
      page(`${before}| 2026-11-24 | a |\n`),
    );
    expect(edited(page(''), row({ Date: '2026-11-24', Colour: 'a' }))).toBe('refused: no-column Colour');
  });

  test('line ends as those of the line above, whatever the others are', () => {
    const before = '---\r\nname: a\r\n---\r\n\n## Observations\r\n\r\n| Date | Seen |\n| --- | --- |\r\n\nb\n';
    const after = before.replace('| --- |\r\n', '| --- |\r\n| 2026-11-24 | a |\r\n');
    expect(edited(before, row({ Date: '2026-11-24', Seen: 'a' }))).toBe(after);
    expect(edited(before, set(['starts'], 'b'))).toBe(before.replace('a\r\n', 'a\r\nstarts: b\r\n'));
    expect(edited(`\ufeff${before}`, set(['name'], 'b'))).toBe(`\ufeff${before.replace('name: a', 'name: b')}`);
  });

  const rows = '## Tests\n\n| Exercise | Reps |\n| --- | --- |\n| a | 1 |\n| b | 2 |\n| c | 3 |';
  const out = (line: number, says?: Readonly<Record<string, string>>): Edit => ({
    kind: 'remove-row',
    section: 'Tests',
    line,
    ...(says ? { says } : {}),
  });
  test('taken out by their lines in the page as it was handed in', () => {
    expect(edited(page(rows), out(9))).toBe(page(rows.replace('| b | 2 |\n', '')));
    expect(edited(page(rows), out(10))).toBe(page(rows.replace('\n| c | 3 |', '')));
    expect(edited(page(rows), out(8), out(9), out(10))).toBe(page('## Tests\n\n| Exercise | Reps |\n| --- | --- |'));
    expect(edited(page(rows), set(['starts'], 'b'), out(9))).toBe(
      `---\nname: a\nstarts: b\n---\n${rows.replace('| b | 2 |\n', '')}`,
    );
    expect(edited(page(rows), out(7))).toBe('refused: no-such-row Tests');
    expect(edited(page(rows), out(9), out(9))).toBe('refused: no-such-row Tests');
  });

  test('taken out by what they say, once', () => {
    const edit = out(9, { reps: '2', Exercise: 'b' });
    const once = edited(page(rows), edit);
    expect(once).toBe(page(rows.replace('| b | 2 |\n', '')));
    expect(edited(once, edit)).toBe(once);
    expect(edited(page(rows), edit, edit)).toBe(once);
    expect(edited(page(rows), out(8, { Reps: '2' }))).toBe('refused: says-otherwise Tests');
  });
});

describe('the line to work on', () => {
  const page = (body: string): string => `---\nname: a\n---\n${body}`;
  test.each<[string, string, string]>([
    [
      'a paragraph of two lines',
      '## Work on this\n\n  Old *one\n  two*. \n\nMore.\n',
      '## Work on this\n\n  New **one**. \n\nMore.\n',
    ],
    ['a list', '## Work on this\n\n* Old\n  one\n* More.\n', '## Work on this\n\n* New **one**.\n* More.\n'],
    ['nothing yet', '## Work on this\n\n\n## Notes', '## Work on this\n\nNew **one**.\n\n\n## Notes'],
    ['no section', '## Tests\n\nb\n## Notes', '## Tests\n\nb\n\n## Work on this\n\nNew **one**.\n\n## Notes'],
  ])('%s', (_, before, after) => {
    expect(edited(page(before), work('New **one**.'))).toBe(page(after));
    expect(edited(page(after), work('New **one**.'))).toBe(page(after));
  });

  test.each(['# a', '- a', '1. a', '> a', '```', '    a\nb', '| a |', ''])('refused: %j', (text) => {
    const made = edited(page('## Work on this\n\nOld.\n'), work(text));
    expect(['refused: not-one-line Work on this', page(`## Work on this\n\n${text}\n`)]).toContain(made);
  });
});
