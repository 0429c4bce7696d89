import type { Design } from './design.ts';
import { fieldAt } from './fields.ts';
import { labelOfOption } from './options.ts';
import type { Path } from './path.ts';
import { sayQuantity, type UnitSystem } from './say.ts';

/**
 * A value of the input at this place in words, in `unit` or in that of the system: "0.8 mm", "yes", "round wires", the
 * name of a part where its number stands.
 */
export function sayInput(
  path: Path,
  value: unknown,
  system: UnitSystem,
  { unit, parts = [] }: { readonly unit?: string | undefined; readonly parts?: Design['parts'] } = {},
): string {
  const field = fieldAt(path);
  switch (field.kind) {
    case 'quantity':
      return sayQuantity(value as number, field.dimension, system, unit);
    case 'flag':
      return value === true ? 'yes' : 'no';
    case 'choice':
      return labelOfOption(value as string);
    case 'text':
      return value === '' ? '–' : (value as string);
    case 'count':
      return field.pattern === 'positions[].part' ? partName(parts, value as number) : `${value}`;
  }
}

function partName(parts: Design['parts'], index: number): string {
  return [`No. ${index + 1}`, parts[index]?.name].filter(Boolean).join(', ');
}
