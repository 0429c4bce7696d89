import { fieldAt } from './fields.ts';
import type { Path } from './path.ts';

/** Whether the schema takes a value in this one place; whether it goes with the others is another matter. */
export function accepts(path: Path, value: unknown): boolean {
  const field = fieldAt(path);
  switch (field.kind) {
    case 'flag':
      return typeof value === 'boolean';
    case 'choice':
      return typeof value === 'string' && field.options.includes(value);
    case 'text':
      return typeof value === 'string' && value.length <= field.longest;
    case 'count':
      return Number.isInteger(value) && within(value as number, field.hard);
    case 'quantity':
      return typeof value === 'number' && within(value, field.hard);
  }
}

function within(value: number, [low, high]: readonly [number, number]): boolean {
  return value >= low && value <= high;
}
