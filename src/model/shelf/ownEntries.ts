import { fieldAt } from '../fields.ts';
import type { ReadProblem } from '../readDesign.ts';
import { allowed } from '../wordIssue.ts';
import type { OwnEntry } from './entry.ts';
import { anyPlaceOf, type KindId, kindIds, pathsOf } from './kinds.ts';

/** How long the texts of an own entry may be. A name fits every field that carries one. */
export const longest = { id: 60, name: 60, source: 200, remark: 300 } as const;
export const mostEntries = 500;
export const shelfFormat = 'throughfin-shelf';

export type EntryRead =
  | { readonly ok: true; readonly entry: OwnEntry }
  | { readonly ok: false; readonly problems: readonly ReadProblem[] };

export type ShelfRead =
  | { readonly ok: true; readonly entries: readonly OwnEntry[] }
  | { readonly ok: false; readonly problems: readonly ReadProblem[] };

/** A whole shelf as saved → its entries, or every reason why not, each with its place; nothing is taken by halves. */
export function readShelf(raw: unknown): ShelfRead {
  const refuse = (path: string, reason: string): ShelfRead => ({ ok: false, problems: [{ path, reason }] });
  if (!isRecord(raw) || raw.format !== shelfFormat)
    return refuse('format', `This is no file of shelf entries: its "format" should be "${shelfFormat}".`);
  if (raw.version !== 1)
    return refuse('version', `This has to be 1, and is ${JSON.stringify(raw.version) ?? 'missing'}.`);
  const list = raw.entries;
  if (!Array.isArray(list)) return refuse('entries', 'A list of entries should stand here.');
  if (list.length > mostEntries)
    return refuse('entries', `That is ${list.length} entries; at most ${mostEntries} fit.`);
  const reads = list.map((each, index) => readOwnEntry(each, `entries[${index}]`));
  const problems = [
    ...unknownKeys(raw, ['format', 'version', 'entries'], ''),
    ...reads.flatMap((read) => (read.ok ? [] : read.problems)),
  ];
  if (problems.length > 0) return { ok: false, problems };
  return { ok: true, entries: reads.flatMap((read) => (read.ok ? [read.entry] : [])) };
}

/** One entry as saved. `place`: where it stands in a file, told with each problem. */
export function readOwnEntry(raw: unknown, place: string): EntryRead {
  if (!isRecord(raw))
    return { ok: false, problems: [{ path: place, reason: 'An entry in { } should stand here.' }] };
  const kind = kindIds.find((id) => id === raw.kind);
  const problems = [
    ...textProblems(raw, place),
    ...unknownKeys(raw, ['id', 'kind', 'name', 'values', 'source', 'remark'], `${place}.`),
    ...(kind === undefined
      ? [{ path: `${place}.kind`, reason: `Allowed is ${kindIds.map((id) => `"${id}"`).join(', ')}.` }]
      : valueProblems(raw.values, kind, `${place}.values`)),
  ];
  if (problems.length > 0) return { ok: false, problems };
  // Every part of it was looked at above.
  const { id, name, values, source, remark } = raw as unknown as OwnEntry;
  return { ok: true, entry: { id, kind: kind as KindId, name, values, source, remark } };
}

function textProblems(raw: Readonly<Record<string, unknown>>, place: string): ReadProblem[] {
  return Object.entries(longest).flatMap(([key, most]) => {
    const text = raw[key];
    const least = key === 'id' || key === 'name' ? 1 : 0;
    const fits = typeof text === 'string' && text.length <= most && text.trim().length >= least;
    const rule = `Allowed is a text of ${least === 1 ? `1 to ${most}` : `at most ${most}`} characters.`;
    return fits
      ? []
      : [{ path: `${place}.${key}`, reason: text === undefined ? `This is missing. ${rule}` : rule }];
  });
}

function valueProblems(values: unknown, kind: KindId, place: string): ReadProblem[] {
  if (!isRecord(values)) return [{ path: place, reason: 'The values in { } should stand here.' }];
  const paths = pathsOf(kind, anyPlaceOf(kind));
  const wrong = paths.flatMap(([key, path]) => {
    const value = values[key];
    if (fits(path, value)) return [];
    const found = value === undefined ? 'This is missing.' : `This cannot be ${JSON.stringify(value)}.`;
    return [{ path: `${place}.${key}`, reason: `${found} ${allowed(path, 'metric')}` }];
  });
  return [
    ...wrong,
    ...unknownKeys(
      values,
      paths.map(([key]) => key),
      `${place}.`,
    ),
  ];
}

function fits(path: string, value: unknown): boolean {
  const field = fieldAt(path);
  if (field.kind !== 'quantity' || typeof value !== 'number') return false;
  return value >= field.hard[0] && value <= field.hard[1];
}

function unknownKeys(
  raw: Readonly<Record<string, unknown>>,
  known: readonly string[],
  before: string,
): ReadProblem[] {
  return Object.keys(raw)
    .filter((key) => !known.includes(key))
    .map((key) => ({ path: before + key, reason: 'This name is not known here.' }));
}

function isRecord(raw: unknown): raw is Readonly<Record<string, unknown>> {
  return typeof raw === 'object' && raw !== null && !Array.isArray(raw);
}
