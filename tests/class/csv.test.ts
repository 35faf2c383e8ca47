import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { toCsv } from '../../src/class/csv.ts';

/** Reads CSV by the grammar of RFC 4180, section 2, and by nothing else. */
function readCsv(text: string): string[][] {
  const rows: string[][] = [];
  let row: string[] = [];
  let at = 0;
  while (at < text.length) {
    let cell = '';
    if (text[at] === '"') {
      at += 1;
      while (text[at] !== '"' || text[at + 1] === '"') {
        at += text[at] === '"' ? 1 : 0;
        cell += text[at];
        at += 1;
      }
      at += 1;
    } else {
      while (text[at] !== ',' && text[at] !== '\r') {
        cell += text[at];
        at += 1;
      }
    }
    row.push(cell);
    if (text[at] === ',') {
      at += 1;
      continue;
    }
    at += 2;
    rows.push(row);
    row = [];
  }
  return rows;
}

describe('toCsv()', () => {
  test('quotes commas, quotes and line ends; leaves numbers and empty cells alone', () => {
    expect(
      toCsv([
        ['a', 'b,c', 'd"e', 'f\r\ng'],
        [-6.02, 0, undefined, 'h'],
      ]),
    ).toBe('a,"b,c","d""e","f\r\ng"\r\n-6.02,0,,h\r\n');
  });

  // The characters of OWASP ASVS 5, 1.2.10, and blanks before them.
  test.each(['=1+1', '+1', '-1', '@x', '\tx', '\0=x', '  =x', '\r=x'])('disarms %j', (text) => {
    expect(readCsv(toCsv([[text, 'z']]))[0]?.[0]).toBe(`'${text}`);
  });

  test('whatever stands in the cells, a reader of the standard gets it back', () => {
    const table = fc.array(fc.array(fc.string({ unit: 'binary' }), { minLength: 2, maxLength: 2 }));
    fc.assert(
      fc.property(table, (rows) => {
        const read = readCsv(toCsv(rows));
        expect(read.map((row) => row.map((cell) => cell.replace(/^'/, '')))).toEqual(
          rows.map((row) => row.map((cell) => cell.replace(/^'/, ''))),
        );
      }),
    );
  });

  test('no text cell begins like a formula, whatever it is', () => {
    fc.assert(
      fc.property(fc.constantFrom('=', '+', '-', '@', '\t', ' '), fc.string(), (first, rest) => {
        const [cell] = readCsv(toCsv([[first + rest, 'z']]))[0] ?? [];
        expect(cell?.trimStart()).not.toMatch(/^[=+\-@\t]/);
      }),
    );
  });

  test('a number that is not finite is an error', () => {
    expect(() => toCsv([[Number.NaN]])).toThrow(RangeError);
  });
});
