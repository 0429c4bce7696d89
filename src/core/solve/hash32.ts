/** An even 32-bit number out of another, and each of each: the last steps of MurmurHash3 (Appleby 2011, public domain). */
export function mix32(value: number): number {
  let h = value | 0;
  h = Math.imul(h ^ (h >>> 16), 0x85ebca6b);
  h = Math.imul(h ^ (h >>> 13), 0xc2b2ae35);
  return (h ^ (h >>> 16)) >>> 0;
}

/** One 32-bit number of several integers, in their order; a change of any bit of any changes half of its bits. */
export function hash32(...parts: readonly number[]): number {
  return parts.reduce((h, part) => mix32(Math.imul(h, 0x9e3779b1) + mix32(part + 0x7f4a7c15)), 0);
}
