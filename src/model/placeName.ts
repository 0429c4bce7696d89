import { fieldAt } from './fields.ts';
import { type Path, splitPath } from './path.ts';

const rowNames: Readonly<Record<string, string>> = {
  positions: 'resistor',
  parts: 'part',
  curve: 'point',
  points: 'point',
  extras: 'extra loss',
  moreFans: 'fan',
  spreads: 'spread',
  temperatures: 'temperature reading',
  pressures: 'pressure reading',
  flows: 'flow reading',
  voltages: 'voltage reading',
  sounds: 'sound reading',
};

/** The first fan is `fan`, so the first of the others is the second. */
const firstNumbers: Readonly<Record<string, number>> = { moreFans: 2 };

/** An input as a reader would call it: "Side clearance", "Watts, resistor 3", "Flow, fan 2, point 4". */
export function placeName(path: Path): string {
  return [fieldAt(path).label, ...rowsOf(path)].join(', ');
}

/** The row that a place belongs to, innermost last: `positions[2]` → "resistor 3"; empty for what is in no row. */
export function rowsOf(path: Path): string[] {
  const segments = splitPath(path);
  return segments.flatMap((segment, at) => {
    const list = segments[at - 1];
    if (typeof segment !== 'number' || typeof list !== 'string') return [];
    return [`${rowNames[list] ?? list} ${segment + (firstNumbers[list] ?? 1)}`];
  });
}
