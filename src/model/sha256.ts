/** Fractional parts of the cube roots of the first 64 primes, and of the square roots of the first eight: FIPS 180-4. */
const primes = firstPrimes(64);
const rounds = Uint32Array.from(primes, (prime) => fraction(Math.cbrt(prime)));
const start = primes.slice(0, 8).map((prime) => fraction(Math.sqrt(prime)));

/**
 * SHA-256 of a text in UTF-8, as FIPS 180-4 defines it: 64 hexadecimal digits. The browser's own waits for a promise,
 * and a sheet that is being printed cannot.
 */
export function sha256(text: string): string {
  const state = Uint32Array.from(start);
  const words = new Uint32Array(64);
  const message = padded(utf8(text));
  const view = new DataView(message.buffer);
  for (let block = 0; block < message.length; block += 64) {
    for (let i = 0; i < 16; i++) words[i] = view.getUint32(block + 4 * i);
    for (let i = 16; i < 64; i++) words[i] = schedule(words, i);
    compress(state, words);
  }
  return [...state].map((word) => word.toString(16).padStart(8, '0')).join('');
}

/** Half a pair of surrogates is no character: it becomes the sign for one that cannot be shown, as when a file is written. */
function utf8(text: string): number[] {
  return [...text].flatMap((character) => {
    const given = character.codePointAt(0) ?? 0;
    const code = given >= 0xd800 && given <= 0xdfff ? 0xfffd : given;
    const tail = (shift: number) => 0x80 | ((code >> shift) & 0x3f);
    if (code < 0x80) return [code];
    if (code < 0x800) return [0xc0 | (code >> 6), tail(0)];
    if (code < 0x10000) return [0xe0 | (code >> 12), tail(6), tail(0)];
    return [0xf0 | (code >> 18), tail(12), tail(6), tail(0)];
  });
}

/** A one bit, zeros, and the length in bits, up to a whole number of blocks. */
function padded(bytes: readonly number[]): Uint8Array {
  const message = new Uint8Array(64 * Math.ceil((bytes.length + 9) / 64));
  message.set(bytes);
  message[bytes.length] = 0x80;
  new DataView(message.buffer).setBigUint64(message.length - 8, 8n * BigInt(bytes.length));
  return message;
}

function schedule(words: Uint32Array, i: number): number {
  const far = words[i - 15] ?? 0;
  const near = words[i - 2] ?? 0;
  const small = turn(far, 7) ^ turn(far, 18) ^ (far >>> 3);
  const large = turn(near, 17) ^ turn(near, 19) ^ (near >>> 10);
  return (words[i - 16] ?? 0) + small + (words[i - 7] ?? 0) + large;
}

function compress(state: Uint32Array, words: Uint32Array): void {
  let [a = 0, b = 0, c = 0, d = 0, e = 0, f = 0, g = 0, h = 0] = state;
  for (let i = 0; i < 64; i++) {
    const choice = (e & f) ^ (~e & g);
    const majority = (a & b) ^ (a & c) ^ (b & c);
    const first =
      (h + (turn(e, 6) ^ turn(e, 11) ^ turn(e, 25)) + choice + (rounds[i] ?? 0) + (words[i] ?? 0)) | 0;
    const second = ((turn(a, 2) ^ turn(a, 13) ^ turn(a, 22)) + majority) | 0;
    [a, b, c, d, e, f, g, h] = [(first + second) | 0, a, b, c, (d + first) | 0, e, f, g];
  }
  [a, b, c, d, e, f, g, h].forEach((word, i) => {
    state[i] = (state[i] ?? 0) + word;
  });
}

/** Turned right by so many bits. */
function turn(word: number, bits: number): number {
  return (word >>> bits) | (word << (32 - bits));
}

/** First 32 bits behind the point. */
function fraction(value: number): number {
  return Math.floor((value - Math.floor(value)) * 2 ** 32);
}

function firstPrimes(count: number): number[] {
  const found: number[] = [];
  for (let n = 2; found.length < count; n++) {
    if (found.every((prime) => n % prime !== 0)) found.push(n);
  }
  return found;
}
