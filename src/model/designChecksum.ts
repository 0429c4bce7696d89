import type { Design } from './design.ts';
import { serialiseDesign } from './serialiseDesign.ts';
import { sha256 } from './sha256.ts';

const digits = 10;

/**
 * Short sign of one state of a design: the first ten hexadecimal digits of the SHA-256 of its file, so that a paper can be
 * compared with a file, by this program or by any other that computes SHA-256. Two revisions have the same by chance once
 * in 10¹²; nobody is kept from forging one.
 */
export function designChecksum(design: Design): string {
  return sha256(serialiseDesign(design)).slice(0, digits);
}
