/** Clients' pages as odd as coaches and editors write them, each with what the tests have to know of how it is written. */
import fc from 'fast-check';

export interface OddPage {
  readonly text: string;
  readonly lineEnds: 'LF' | 'CRLF' | 'mixed';
  /** Entries of each list, whatever form it is written in. */
  readonly cautions: number;
  readonly breaks: number;
  /** The columns of each section's table; absent where it has no table. */
  readonly columns: Readonly<Record<string, readonly string[]>>;
  /** 1-based lines of each section's rows. */
  readonly rows: Readonly<Record<string, readonly number[]>>;
}

const one = fc.constantFrom;
const comment = one('', '', '', ' # said so', '\t# 一 two, "three": four', '   #');
const between = one('', '', '', '\n', '# a note: not a key\n', '\n# - what: knee\n\n', '  # set in\n');
const colon = one(': ', ': ', ':   ', ':\t', ' : ');
const keyForm = one('plain', 'plain', 'plain', 'single', 'double');

const quoted = (text: string, form: string): string => {
  if (form === 'single') return `'${text.replaceAll("'", "''")}'`;
  return form === 'double' ? `"${text}"` : text;
};

/** One key and its value in one line, or its words over several. */
const scalar = (key: string, value: string, form = 'any'): fc.Arbitrary<string> =>
  fc
    .tuple(keyForm, colon, one('plain', 'plain', 'single', 'double', 'folded'), comment)
    .map(([keyed, sign, valued, end]) => {
      const name = `${quoted(key, keyed)}${sign}`;
      if (valued === 'folded' && form === 'any' && value.includes(' ')) {
        return `${name}>-${end}\n   ${value.replace(' ', '\n   ')}\n`;
      }
      return `${name}${quoted(value, valued)}${end}\n`;
    });

type Entry = Readonly<Record<string, string>>;
const inBraces = (entry: Entry): string =>
  `{${Object.entries(entry)
    .map(([key, value]) => `${key}: ${/[,:'’]/.test(value) ? `"${value}"` : value}`)
    .join(', ')}}`;

/** A list of entries as dashes, as braces after dashes, or in brackets on one line or several. */
const entries = (key: string, list: readonly Entry[]): fc.Arbitrary<string> =>
  fc
    .record({
      form: one('dashes', 'dashes', 'dashes', 'braces', 'brackets', 'lines'),
      indent: one('', '  ', '    '),
      gap: one(' ', '   '),
      head: comment,
      tail: comment,
      comma: one('', ','),
      inside: one('', '', '# and\n', '\n'),
    })
    .map(({ form, indent, gap, head, tail, comma, inside }) => {
      if (list.length === 0) return form === 'lines' ? `${key}:${head}\n` : `${key}: []${head}\n`;
      if (form === 'brackets') return `${key}: [${list.map(inBraces).join(', ')}${comma}]${head}\n`;
      if (form === 'lines') {
        const lines = list.map((entry, at) => `    ${inBraces(entry)}${at < list.length - 1 ? ',' : comma}${tail}\n`);
        return `${key}: [${head}\n${lines.join('')}  ]\n`;
      }
      const items = list.map((entry) => {
        if (form === 'braces') return `${indent}-${gap}${inBraces(entry)}${tail}\n`;
        const under = `${indent} ${' '.repeat(gap.length)}`;
        const lines = Object.entries(entry).map(([name, value]) => `${name}: ${value}${tail}\n`);
        return `${indent}-${gap}${lines.join(under)}${inside === '' ? '' : `${under}${inside.trim()}\n`}`;
      });
      return `${key}:${head}\n${items.join(inside === '\n' ? '\n' : '')}`;
    });

export const CAUTIONS: readonly Entry[] = [
  {
    what: 'knee',
    degree: 'take care',
    side: 'left',
    from: '2026-10-12',
    by: 'Maren Oakes',
    say: 'keep the last hand for later',
  },
  { what: 'overhead', degree: 'avoid', from: '2026-10-13', review: '2027-02-01', by: 'Åse Ødegård' },
  { what: 'shoulder', degree: 'take care', from: '2026-10-14', by: '李雷' },
];
export const BREAKS: readonly Entry[] = [
  { from: '2026-08-03', until: '2026-08-16', cause: 'away' },
  { from: '2026-09-07', until: '2026-09-13', cause: 'ill' },
];

const upTo = <Value>(all: readonly Value[]) => fc.integer({ min: 0, max: all.length }).map((n) => all.slice(0, n));
const maybe = (text: fc.Arbitrary<string>): fc.Arbitrary<string> =>
  fc.oneof({ arbitrary: text, weight: 2 }, fc.constant(''));

const frontMatter = fc
  .tuple(
    upTo(CAUTIONS).chain((list) =>
      fc.tuple(fc.constant(list), list.length ? entries('cautions', list) : maybe(entries('cautions', list))),
    ),
    upTo(BREAKS).chain((list) =>
      fc.tuple(
        fc.constant(list),
        list.length
          ? entries('breaks', list)
          : fc.oneof(maybe(entries('breaks', list)), scalar('breaks', 'none', 'one line')),
      ),
    ),
  )
  .chain(([[cautions, cautionText], [breaks, breakText]]) =>
    fc
      .tuple(
        fc.tuple(
          scalar('name', 'Ida Fell'),
          scalar('starts', '2027-01-04', 'one line'),
          scalar('programme', 'one-day'),
          fc.oneof(scalar('days', 'mon, thu'), one('days: [mon, thu]\n', 'days:\n- mon # early\n- thu\n')),
          scalar('minutes', '30'),
          scalar('birth year', '1980'),
          scalar('experience', 'novice'),
          scalar('blocks before', '0'),
          one(
            'kit:\n  bells: 8, 12, 16 # kg\n\n  things: chair\n',
            'kit: {bells: "8, 12, 16", things: chair}\n',
            'kit:\n    bells:\n    - 8, 12\n    - 16\n',
          ),
        ),
        fc.tuple(
          maybe(scalar('body mass', '70 kg, 2026-11-02')),
          maybe(one('medicines: none\n', 'medicines: [other, slows the heart] # asked\n')),
          maybe(
            fc.oneof(
              scalar('main bells', 'squat 12 kg, hinge 16 kg'),
              one('main bells: [squat 12 kg, hinge 16 kg]\n', 'main bells:\n  - squat 12 kg # new\n  - hinge 16 kg\n'),
            ),
          ),
          maybe(one('room:\n  ceiling: 2.4 m\n', 'room: {ceiling: 2.4 m}\n', 'room:\n')),
        ),
        fc.array(between, { minLength: 16, maxLength: 16 }),
      )
      .chain(([needed, others, notes]) =>
        fc
          .shuffledSubarray(
            [...needed, ...others, cautionText, breakText].filter((text) => text !== ''),
            {
              minLength: [...needed, ...others, cautionText, breakText].filter((text) => text !== '').length,
            },
          )
          .map((keys) => ({
            text: keys.map((key, at) => key + (notes[at] ?? '')).join(''),
            cautions: cautions.length,
            breaks: breaks.length,
          })),
      ),
  );

const LINK = '[Goblet squat](../../exercises/goblet-squat.md)';
const TABLES = {
  'Signed off': {
    needed: ['Exercise', 'Date', 'By'],
    spare: ['Up to'],
    rows: [
      { Exercise: LINK, Date: '2026-11-02', By: 'Maren Oakes', 'Up to': '12 kg' },
      { Exercise: LINK, Date: '2026-11-09', By: 'Åse 漢字', 'Up to': '' },
    ],
  },
  Tests: {
    needed: ['Exercise', 'Reps', 'Reserve', 'Date', 'Load'],
    spare: ['Side', 'In a circuit'],
    rows: [
      { Exercise: LINK, Reps: '10', Reserve: '2', Date: '2026-11-02', Load: '12 kg' },
      { Exercise: LINK, Reps: '9', Reserve: '2', Date: '2026-11-09', Load: '16' },
    ],
  },
  Observations: {
    needed: ['Date', 'Seen'],
    spare: ['Exercise', 'Side'],
    rows: [
      { Date: '2026-11-02', Seen: 'slow to settle', Exercise: LINK, Side: '' },
      { Date: '2026-11-04', Seen: 'late \\| by a minute — “again”', Exercise: '', Side: '' },
      { Date: '2026-11-09', Seen: 'steady and calm', Exercise: LINK, Side: '' },
    ],
  },
} as const;

const letters = (text: string): number => Array.from(text).length;

const table = ({ needed, spare, rows }: (typeof TABLES)[keyof typeof TABLES]) =>
  fc
    .record({
      kept: fc.subarray<string>([...spare]),
      count: fc.integer({ min: 0, max: rows.length }),
      form: one('plain', 'plain', 'even', 'even', 'ragged', 'open', 'compact', 'set in'),
      mark: one('---', ':---', ':---:', '---:'),
    })
    .chain(({ kept, count, form, mark }) =>
      fc.shuffledSubarray<string>([...needed, ...kept], { minLength: needed.length + kept.length }).map((columns) => {
        const cells: readonly Readonly<Record<string, string>>[] = rows.slice(0, count);
        const all = [
          columns,
          columns.map(() => mark),
          ...cells.map((row) => columns.map((column) => row[column] ?? '')),
        ];
        const widths = columns.map((_, at) => Math.max(...all.map((row) => letters(row[at] ?? ''))));
        const lines = all.map((row, line) => {
          if (form === 'even') {
            const padded = row.map((text, at) => {
              const spare = (widths[at] ?? 0) - letters(text);
              if (line === 1) return text.replace('---', '-'.repeat(3 + spare));
              return mark === '---:' ? ' '.repeat(spare) + text : text + ' '.repeat(spare);
            });
            return `| ${padded.join(' | ')} |`;
          }
          if (form === 'ragged')
            return `|${row.map((text, at) => ` ${text}${' '.repeat((at + line) % 4)}`).join('|')}|`;
          // Without a bar at its beginning a row that begins with an empty cell would lose it.
          if (form === 'open' && row[0] !== '' && row.at(-1) !== '') return row.join(' | ');
          if (form === 'compact') return `|${row.join('|')}|`;
          return `${form === 'set in' ? '  ' : ''}| ${row.join(' | ')} |`;
        });
        return { columns, lines, rows: cells.length };
      }),
    );

const heading = (name: string) =>
  one(
    `## ${name}`,
    `## ${name}`,
    `### ${name}`,
    `## ${name} ##`,
    `${name}\n-----`,
    `# ${name.toUpperCase()}`,
    `##  ${name.replace(' ', '  ')}`,
  );
const blank = one('', '\n', '\n\n');
const aside = one(
  '',
  '',
  '',
  '<!-- | not | a table | -->\n',
  '```yaml\n---\nstarts: 2020-01-01\n| a | b |\n| - | - |\n## Tests\n---\n```\n',
  'Words — 一二, *leaning*,\nin two lines.\n',
  '- one\n  more\n- two\n',
);

interface OddSection {
  readonly name: string;
  readonly text: string;
  readonly columns?: readonly string[];
  /** Of its first row, from 0, in its own text. */
  readonly firstRow?: number;
  readonly rows?: number;
}

const tableSection = (name: keyof typeof TABLES): fc.Arbitrary<OddSection> =>
  fc
    .record({
      head: heading(name),
      gap: blank,
      holds: one('table', 'table', 'table', 'nothing', 'words'),
      table: table(TABLES[name]),
      aside,
      end: blank,
    })
    .map(({ head, gap, holds, table: { columns, lines, rows }, aside: after, end }) => {
      // An underlined heading needs an empty line before what follows it no more than another.
      const before = `${head}\n${gap}`;
      if (holds !== 'table') return { name, text: `${before}${holds === 'words' ? after : ''}${end}` };
      const text = `${before}${lines.join('\n')}\n${after === '' ? '' : `\n${after}`}${end}`;
      return { name, text, columns, firstRow: before.split('\n').length - 1 + 2, rows };
    });

const wordSection = (name: string): fc.Arbitrary<OddSection> =>
  fc
    .record({
      head: heading(name),
      gap: blank,
      words: one(
        'Let the bell come to you.\n',
        'Let the *bell*\n come to you.  \n\nAnd wait.\n',
        '- Let the bell come\n  to you.\n- And wait.\n',
        '1. Wait\n',
        '',
      ),
      aside,
      end: blank,
    })
    .map(({ head, gap, words, aside: after, end }) => ({
      name,
      text: `${head}\n${gap}${words}${after === '' ? '' : `\n${after}`}${end}`,
    }));

const body = fc
  .tuple(
    fc.option(tableSection('Signed off'), { nil: undefined }),
    fc.option(tableSection('Tests'), { nil: undefined }),
    fc.option(tableSection('Observations'), { nil: undefined }),
    fc.option(wordSection('Work on this'), { nil: undefined }),
    fc.option(wordSection('Notes'), { nil: undefined }),
    one('', '', '\n', '\nBefore all: a word.\n\n', '\n<!-- ## Tests -->\n\n'),
  )
  .chain(([signedOff, tests, seen, work, notes, intro]) => {
    const sections = [signedOff, tests, seen, work, notes].filter((section) => section !== undefined);
    return fc
      .oneof(fc.constant(sections), fc.shuffledSubarray(sections, { minLength: sections.length }))
      .map((order) => ({ intro, sections: order }));
  });

/** A page whose facts can be read, whatever else a reader would say of it. */
export const oddPage: fc.Arbitrary<OddPage> = fc
  .record({
    front: frontMatter,
    body,
    lineEnds: one('LF' as const, 'LF' as const, 'CRLF' as const, 'mixed' as const),
    mark: one('', '', '\ufeff'),
    above: one('', '', '\n'),
    last: one('kept', 'kept', 'none', 'more'),
    seed: fc.integer({ min: 1, max: 2 ** 30 }),
  })
  .map(({ front, body: { intro, sections }, lineEnds, mark, above, last, seed }) => {
    const columns: Record<string, readonly string[]> = {};
    const rows: Record<string, readonly number[]> = {};
    let text = `${above}---\n${front.text}---\n${intro}`;
    for (const section of sections) {
      // A heading straight below a paragraph would be part of it where it is underlined.
      if (!/(^|\n)\n$|---\n$/.test(text)) text += '\n';
      const line = text.split('\n').length;
      if (section.columns) {
        columns[section.name] = section.columns;
        const first = line + (section.firstRow ?? 0);
        rows[section.name] = Array.from({ length: section.rows ?? 0 }, (_, at) => first + at);
      }
      text += section.text;
    }
    if (last === 'none') text = text.replace(/\n+$/, '');
    if (last === 'more') text += '\n\n';
    let state = seed;
    const ended = text.replace(/\n/g, () => {
      state = (state * 1_103_515_245 + 12_345) % 2_147_483_648;
      return lineEnds === 'CRLF' || (lineEnds === 'mixed' && state > 1_073_741_824) ? '\r\n' : '\n';
    });
    return { text: mark + ended, lineEnds, cautions: front.cautions, breaks: front.breaks, columns, rows };
  });
