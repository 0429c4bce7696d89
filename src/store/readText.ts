import { fieldAt } from '../model/fields.ts';
import type { Path } from '../model/path.ts';
import { parseIn, type UnitSystem } from '../model/say.ts';
import { allowed } from '../model/wordIssue.ts';

export type TextRead =
  | { readonly ok: true; readonly value: number | string; readonly unit: string | null }
  | { readonly ok: false; readonly reason: string };

/** A text as typed → the value of this field in SI, or one sentence on what is wrong and what is allowed. */
export function readText(path: Path, text: string, unit: string | undefined, system: UnitSystem): TextRead {
  const field = fieldAt(path);
  switch (field.kind) {
    case 'quantity': {
      const read = parseIn(text, field.dimension, unit, system);
      if (!read.ok) return read;
      // Typed decimals leave dust in the sixteenth digit; it has no business in a file.
      const value = Number(read.value.toPrecision(15));
      const [low, high] = field.hard;
      if (value < low || value > high)
        return { ok: false, reason: `Out of bounds. ${allowed(path, system, read.unit)}` };
      return { ok: true, value, unit: read.unit };
    }
    case 'count':
      return readCount(text, field.hard, allowed(path, system));
    case 'text':
      if (text.length <= field.longest) return { ok: true, value: text, unit: null };
      return { ok: false, reason: `This has ${text.length} characters; at most ${field.longest} fit.` };
    default:
      throw new Error(`${path} is not typed`);
  }
}

function readCount(text: string, [low, high]: readonly [number, number], rule: string): TextRead {
  const plain = text.trim();
  if (plain === '') return { ok: false, reason: `Nothing stands here. ${rule}` };
  if (!/^[+]?\d+$/.test(plain)) return { ok: false, reason: `This is no whole number. ${rule}` };
  const value = Number(plain);
  if (value < low || value > high) return { ok: false, reason: `Out of bounds. ${rule}` };
  return { ok: true, value, unit: null };
}
