/** A place in a design: `sink.length_m`, `positions[3].power_W`, `extras[0].points[1].dp_Pa`. */
export type Path = string;

type Segment = string | number;

export function splitPath(path: Path): Segment[] {
  const segments: Segment[] = [];
  for (const [, key, index] of path.matchAll(/([^.[\]]+)|\[(\d+)\]/g)) {
    if (index !== undefined) segments.push(Number(index));
    else if (key !== undefined) segments.push(key);
  }
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
  return put(root, splitPath(path), 0, value, path) as T;
}

function put(
  here: unknown,
  segments: readonly Segment[],
  depth: number,
  value: unknown,
  path: Path,
): unknown {
  const segment = segments[depth];
  if (segment === undefined) return value;
  if (typeof here !== 'object' || here === null || !Object.hasOwn(here, segment)) {
    throw new Error(`no place ${path}`);
  }
  const child = put((here as Record<Segment, unknown>)[segment], segments, depth + 1, value, path);
  if (Array.isArray(here)) return here.map((item, index) => (index === segment ? child : item));
  return { ...here, [segment]: child };
}
