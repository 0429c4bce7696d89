/** A place in a design: `sink.length_m`, `positions[3].power_W`, `extras[0].points[1].dp_Pa`. */
export type Path = string;

type Segment = string | number;

/** Paths taken apart before: there are as many as a design has places, and studies ask for them over and over. */
const apart = new Map<Path, readonly Segment[]>();

export function splitPath(path: Path): readonly Segment[] {
  const known = apart.get(path);
  if (known) return known;
  const segments: Segment[] = [];
  for (const [, key, index] of path.matchAll(/([^.[\]]+)|\[(\d+)\]/g)) {
    if (index !== undefined) segments.push(Number(index));
    else if (key !== undefined) segments.push(key);
  }
  apart.set(path, segments);
  return segments;
}

export function joinPath(segments: readonly PropertyKey[]): Path {
  let path = '';
  for (const segment of segments) {
    if (typeof segment === 'number') path += `[${segment}]`;
    else path += path === '' ? String(segment) : `.${String(segment)}`;
  }
  return path;
}

/** The path of a descriptor: every index left out, `positions[3].on` → `positions[].on`. */
export function patternOf(path: Path): string {
  return path.replace(/\[\d+\]/g, '[]');
}

/** @returns what stands at the path, `undefined` where there is nothing */
export function getAt(root: unknown, path: Path): unknown {
  let here: unknown = root;
  for (const segment of splitPath(path)) {
    if (typeof here !== 'object' || here === null || !Object.hasOwn(here, segment)) return undefined;
    here = (here as Record<Segment, unknown>)[segment];
  }
  return here;
}

/**
 * A copy of `root` with another value at an existing place; everything beside the way there is shared, not copied.
 * A path that does not exist is a programmer's mistake and throws.
 */
export function setAt<T>(root: T, path: Path, value: unknown): T {
  return setAll(root, { [path]: value });
}

/** The same for many places: what lies on the way of several is copied once. */
export function setAll<T>(root: T, values: Readonly<Record<Path, unknown>>): T {
  const copies = new Set<unknown>();
  let varied: unknown = root;
  for (const path in values) varied = put(varied, splitPath(path), 0, values[path], path, copies);
  return varied as T;
}

/** @param copies objects made here, which may be written to */
function put(
  here: unknown,
  segments: readonly Segment[],
  depth: number,
  value: unknown,
  path: Path,
  copies: Set<unknown>,
): unknown {
  const segment = segments[depth];
  if (segment === undefined) return value;
  if (typeof here !== 'object' || here === null || !Object.hasOwn(here, segment)) {
    throw new Error(`no place ${path}`);
  }
  const copy = copies.has(here) ? here : Array.isArray(here) ? [...here] : { ...here };
  copies.add(copy);
  const place = copy as Record<Segment, unknown>;
  place[segment] = put(place[segment], segments, depth + 1, value, path, copies);
  return copy;
}
