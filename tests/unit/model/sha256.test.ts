import { createHash } from 'node:crypto';
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sha256 } from '../../../src/model/sha256.ts';

describe('SHA-256', () => {
  // FIPS 180-2 appendix B (one block, two blocks, a million letters), the example values of FIPS 180-4; the digest of the
  // empty message from the NIST test vectors. From memory, and confirmed below against another implementation.
  test.each([
    ['one block', 'abc', 'ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad'],
    [
      'two blocks',
      'abcdbcdecdefdefgefghfghighijhijkijkljklmklmnlmnomnopnopq',
      '248d6a61d20638b8e5c026930c3e6039a33ce45964ff2167f6ecedd419db06c1',
    ],
    [
      'a million letters',
      'a'.repeat(1_000_000),
      'cdc76e5c9914fb9281a1c7e284d73e67f1809a48a497200e046d39ccc7112cd0',
    ],
    ['nothing', '', 'e3b0c44298fc1c149afbf4c8996fb92427ae41e4649b934ca495991b7852b855'],
  ])('of the published example of %s has the published digest', (_, message, digest) => {
    expect(sha256(message)).toBe(digest);
  });

  test('agrees with another implementation on any text, around the ends of blocks too', () => {
    const other = (text: string) => createHash('sha256').update(text, 'utf8').digest('hex');
    for (let length = 50; length < 135; length++) {
      const text = 'µ'.repeat(length >> 1) + 'x'.repeat(length & 1);
      expect(sha256(text)).toBe(other(text));
    }
    for (const text of ['naïve', '漢字 Ω', '🔥 and more', 'half \ud83d a pair', '\udd25']) {
      expect(sha256(text)).toBe(other(text));
    }
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 300 }), (text) => sha256(text) === other(text)),
    );
  });
});
