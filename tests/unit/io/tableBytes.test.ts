import { describe, expect, test } from 'vitest';
import { tableText } from '../../../src/io/tableBytes.ts';

const bytes = (...values: number[]) => new Uint8Array(values);

describe('the text of a file', () => {
  test.each([
    ['UTF-8', bytes(0xc2, 0xb3), '³'],
    ['UTF-8 with its mark', bytes(0xef, 0xbb, 0xbf, 0xc2, 0xb3), '³'],
    ['UTF-16, small end first', bytes(0xff, 0xfe, 0xb3, 0x00), '³'],
    ['UTF-16, large end first', bytes(0xfe, 0xff, 0x00, 0xb3), '³'],
    ['Windows-1252, where it is not UTF-8', bytes(0x6d, 0xb3, 0xb0), 'm³°'],
    ['nothing', bytes(), ''],
  ])('is read from %s', (_, read, text) => {
    expect(tableText(read)).toEqual({ ok: true, text });
  });

  test.each([
    [[0x89, 0x50, 0x4e, 0x47, 0x0d], 'This is no text but a picture (PNG).'],
    [[0x50, 0x4b, 0x03, 0x04, 0x14], /packed file\. Save the sheet as CSV/],
    [[0xd0, 0xcf, 0x11, 0xe0], /Save the sheet as CSV/],
    [[0x25, 0x50, 0x44, 0x46], /a PDF/],
    [[0xef, 0xbb, 0xbf, 0xff], 'This file begins as UTF-8, but does not go on like that.'],
  ])('is not read from what is none: %j', (read, reason) => {
    const found = tableText(bytes(...read));
    expect(found.ok ? '' : found.reason).toMatch(reason);
  });
});
