/** Marks as a message: read by eye, through what messengers do to it, and back to the very same events. */
import { crc32 } from 'node:zlib';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checksumOf } from '../../src/marks/checksum.js';
import { foldLine, readWords, writeWords } from '../../src/marks/fold.js';
import { looksLikeMarks, readText } from '../../src/marks/read-text.js';
import { readShortId, writeShortId } from '../../src/marks/short-id.js';
import { writeText } from '../../src/marks/write-text.js';
import type { Log } from '../../src/model/log.js';
import { runs } from '../deep.js';
import { aTuesday } from './a-tuesday.js';
import { anyLog, anyWords } from './made-logs.js';

const RUNS = { numRuns: runs(400, 5000) };
const backAs = (log: Log): readonly Log[] => [log];

test('a whole evening, as it is sent', () => {
  expect(writeText(aTuesday)).toBe(
    [
      'Chalkleaf marks',
      'Booklet 0123456789abcdef0123456789abcdef',
      'Device phone-7f3a',
      '2027-01-05 +01:00, edition 1, block 1, session 2',
      '1. 18:30:05 Begun: not my best #5mkmtp39vt2af6c7ffppbqcch',
      '2. 18:38:10 goblet-squat, both sides, work 1: 8 × 16 kg in all (bell-16); as planned #5mkmtp39vt2af6c7ffppbqcci',
      '3. 18:41:30 goblet-squat as chair-squat, both sides, work 2: easier, 10 reps; slow lowering #5mkmtp39vt2af6c7ffppbqccj',
      '4. 18:44:00 goblet-squat, both sides, work 3: left out #5mkmtp39vt2af6c7ffppbqcck',
      '5. 18:44:20 goblet-squat, both sides: 1.5 in reserve #5mkmtp39vt2af6c7ffppbqccl',
      '6. 18:45:00 Pain in goblet-squat: knee 3 of 10, right #5mkmtp39vt2af6c7ffppbqccm',
      '7. 19:04:00 Over: effort 7 of 10, 34 min #5mkmtp39vt2af6c7ffppbqccn',
      `8. 19:05:30 Note: Knee was \\<odd\\> on the way down;\\nI\\'ll see tomorrow. #5mkmtp39vt2af6c7ffppbqcco`,
      '9. 19:06:00 Taken back: 5mkmtp39vt2af6c7ffppbqccl #5mkmtp39vt2af6c7ffppbqccp',
      'End: 9 marks, check 2530b0ce',
      '',
    ].join('\n'),
  );
  expect(readText(writeText(aTuesday))).toEqual([aTuesday]);
});

describe('the same events come back', () => {
  test('of any log', () => {
    fc.assert(
      fc.property(anyLog, (log) => {
        expect(readText(writeText(log))).toEqual(backAs(log));
      }),
      RUNS,
    );
  });

  test('every line is as folding leaves it', () => {
    fc.assert(
      fc.property(anyLog, (log) => {
        for (const line of writeText(log).trimEnd().split('\n')) expect(foldLine(line)).toBe(line);
      }),
      RUNS,
    );
  });

  test('of any words, and of any id', () => {
    fc.assert(
      fc.property(anyWords, (words) => {
        expect(readWords(writeWords(words))).toBe(words);
      }),
      RUNS,
    );
    fc.assert(
      fc.property(fc.uuid(), (id) => {
        expect(readShortId(writeShortId(id))).toBe(id);
        expect(writeShortId(id)).toMatch(/^[0-9a-z]{25}$/);
      }),
    );
    expect(readShortId('z'.repeat(25))).toBeNull();
    expect(readWords('\\q')).toBeNull();
    expect(readWords('\\u{110000}')).toBeNull();
  });
});

/** What messengers and mail do on the way. */
const HARMS: Readonly<Record<string, (text: string) => string>> = {
  'line ends of two letters': (text) => text.replaceAll('\n', '\r\n'),
  'quoted, twice over': (text) => text.replace(/^/gm, '> > '),
  'blanks at the ends': (text) => text.replace(/$/gm, ' \t '),
  'empty lines between': (text) => text.replaceAll('\n', '\n\n'),
  'blanks that do not break': (text) => text.replaceAll(' ', '\u00a0'),
  'bent quotation marks': (text) => text.replace(/"([^"\n]*)"/g, '“$1”').replaceAll("'", '\u2019'),
  'a greeting before and a name after': (text) => `Hi Ines,\nhere is Tuesday.\n\n${text}\n-- \nSent from my phone\n`,
  'marks that nobody sees': (text) => `\ufeff${text.replaceAll('\n', '\u200e\n').replaceAll(', ', ',\u200b ')}`,
  'wrapped at 40 letters': (text) => text.replace(/^.{41,}$/gm, (line) => line.replace(/(?=.{41})(.{1,40}) /g, '$1\n')),
};

describe('a message survives', () => {
  test.each(Object.entries(HARMS))('%s', (_, harm) => {
    expect(readText(harm(writeText(aTuesday)))).toEqual([aTuesday]);
  });

  test.each(Object.entries(HARMS).filter(([name]) => name !== 'wrapped at 40 letters'))('%s, of any log', (_, harm) => {
    fc.assert(
      fc.property(anyLog, (log) => {
        expect(readText(harm(writeText(log)))).toEqual(backAs(log));
      }),
      { numRuns: 100 },
    );
  });

  test('all of it at once, and two messages in one', () => {
    const harmed = Object.values(HARMS).reduce((text, harm) => harm(text), writeText(aTuesday));
    expect(readText(harmed)).toEqual([aTuesday]);
    expect(readText(`${harmed}\nand again:\n${writeText(aTuesday)}`)).toEqual([aTuesday, aTuesday]);
  });
});

describe('a slip is noticed', () => {
  const text = writeText(aTuesday);
  const lines = text.trimEnd().split('\n');

  test('cut off anywhere', () => {
    for (let length = 'Chalkleaf marks\n'.length; length < text.trimEnd().length; length += 1) {
      expect(readText(text.slice(0, length))).toMatchObject({ kind: 'cut short' });
    }
    for (let from = 1; from < text.length - (lines.at(-1)?.length ?? 0) - 1; from += 7) {
      expect(readText(text.slice(from))).toMatchObject({ kind: 'cut short' });
    }
  });

  test('a line left out, twice, or in another place', () => {
    for (let at = 1; at < lines.length - 1; at += 1) {
      expect(readText(lines.filter((_, index) => index !== at).join('\n'))).toHaveProperty('kind');
      expect(
        readText(lines.flatMap((line, index) => (index === at ? [line, line] : [line])).join('\n')),
      ).toHaveProperty('kind');
    }
    expect(readText(lines.filter((line) => !line.startsWith('3. ')).join('\n'))).toEqual({
      kind: 'cut short',
      line: lines.length - 1,
      found: aTuesday.events.length - 1,
      wanted: aTuesday.events.length,
    });
  });

  test('one letter mistyped', () => {
    fc.assert(
      fc.property(fc.nat({ max: text.length - 2 }), fc.constantFrom('0', '7', 'q', 'K', '.'), (at, letter) => {
        fc.pre(text[at] !== letter && text[at] !== '\n');
        const read = readText(text.slice(0, at) + letter + text.slice(at + 1));
        // In the heading alone, capitals say nothing.
        if (!('length' in read)) expect(read).toHaveProperty('kind');
        else expect(letter.toLowerCase()).toBe(text[at]?.toLowerCase());
      }),
      RUNS,
    );
  });

  test('summed as written and yet no mark', () => {
    const broken = [...lines.slice(0, 4), '1. 18:30:05 Hello #0000000000000000000000000'];
    const sent = [...broken, `End: 1 mark, check ${checksumOf(broken.join('\n'))}`].join('\n');
    expect(readText(sent)).toEqual({ kind: 'line', line: 5 });
  });
});

test('any text at all is read without a fault', () => {
  fc.assert(
    fc.property(
      fc.oneof(
        anyWords,
        fc.array(anyWords).map((all) => all.join('\n')),
      ),
      (text) => {
        expect(readText(text)).toBeDefined();
        expect(typeof looksLikeMarks(text)).toBe('boolean');
      },
    ),
    RUNS,
  );
});

/** The check value of CRC-32 as catalogues print it (from memory), and the zlib library (RFC 1952, 8) over any words. */
test('the checksum is the common one', () => {
  expect(checksumOf('123456789')).toBe('cbf43926');
  expect(checksumOf('')).toBe('00000000');
  fc.assert(
    fc.property(anyWords, (words) => {
      expect(checksumOf(words)).toBe(crc32(words).toString(16).padStart(8, '0'));
    }),
  );
});
