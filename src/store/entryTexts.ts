import { fieldAt } from '../model/fields.ts';
import type { Path } from '../model/path.ts';
import { editIn, type UnitSystem, unitFor, unitSymbol } from '../model/say.ts';
import type { OwnEntry } from '../model/shelf/entry.ts';
import { type KindId, pathsOf } from '../model/shelf/kinds.ts';
import { longest } from '../model/shelf/ownEntries.ts';
import { readText } from './readText.ts';

/** An entry as it is being typed: texts by the keys `name`, `source`, `remark` and those of the values. */
export type EntryTexts = Readonly<Record<string, string>>;

export interface ValueBox {
  readonly key: string;
  readonly label: string;
  readonly unit: string;
}

export type EntryTextsRead =
  | { readonly ok: true; readonly entry: Omit<OwnEntry, 'id'> }
  | { readonly ok: false; readonly problems: Readonly<Record<string, string>> };

/** The boxes for the values of a kind, with the unit that a bare number in them is in. */
export function valueBoxes(kind: KindId, place: Path, system: UnitSystem): ValueBox[] {
  return pathsOf(kind, place).map(([key, path]) => {
    const field = fieldAt(path);
    const unit =
      field.kind === 'quantity' ? unitSymbol(field.dimension, unitFor(field.dimension, system)) : '';
    return { key, label: field.label, unit };
  });
}

/** Values as somebody would type them. */
export function valueTexts(
  values: Readonly<Record<string, number>>,
  kind: KindId,
  place: Path,
  system: UnitSystem,
): EntryTexts {
  return Object.fromEntries(
    pathsOf(kind, place).map(([key, path]) => {
      const field = fieldAt(path);
      const value = values[key] ?? 0;
      return [
        key,
        field.kind === 'quantity'
          ? editIn(value, field.dimension, unitFor(field.dimension, system))
          : String(value),
      ];
    }),
  );
}

/**
 * Texts → an entry, or what is wrong by key. A value whose text is still that of `before` keeps its last digits.
 * `taken`: names of the other entries of this kind.
 */
export function readEntryTexts(
  texts: EntryTexts,
  kind: KindId,
  place: Path,
  system: UnitSystem,
  before: Readonly<Record<string, number>>,
  taken: readonly string[],
): EntryTextsRead {
  const problems: Record<string, string> = {};
  const values: Record<string, number> = {};
  const untouched = valueTexts(before, kind, place, system);
  for (const [key, path] of pathsOf(kind, place)) {
    const text = texts[key] ?? '';
    const kept = before[key];
    if (kept !== undefined && text === untouched[key]) {
      values[key] = kept;
      continue;
    }
    const read = readText(path, text, undefined, system);
    if (!read.ok) problems[key] = read.reason;
    else values[key] = Number(read.value);
  }
  const name = (texts.name ?? '').trim();
  const source = (texts.source ?? '').trim();
  const remark = (texts.remark ?? '').trim();
  if (name === '') problems.name = 'An entry needs a name.';
  if (taken.some((each) => each.toLowerCase() === name.toLowerCase()))
    problems.name = 'You have an entry of this name already.';
  for (const [key, text] of Object.entries({ name, source, remark })) {
    const most = longest[key as keyof typeof longest];
    if (text.length > most) problems[key] = `This has ${text.length} characters; at most ${most} fit.`;
  }
  if (Object.keys(problems).length > 0) return { ok: false, problems };
  return { ok: true, entry: { kind, name, values, source, remark } };
}
