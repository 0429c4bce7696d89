import type { core } from 'zod';
import { findField, rowLimits } from './fields.ts';
import { labelOfOption } from './options.ts';
import { type Path, patternOf } from './path.ts';
import { sayRange, type UnitSystem } from './say.ts';

/** What the schema found at one place, in plain words: what stands there, and what is allowed. */
export function wordIssue(path: Path, issue: core.$ZodIssue, system: UnitSystem): string {
  const found = issue.input;
  if (found === undefined && issue.code !== 'unrecognized_keys')
    return `This is missing. ${allowed(path, system)}`.trim();
  if (issue.code === 'invalid_type' && issue.expected === 'int')
    return `This has to be a whole number, and is ${show(found)}. ${allowed(path, system)}`.trim();
  return `This cannot be ${show(found)}. ${allowed(path, system)}`.trim();
}

/** What an input may hold, as a sentence: "Allowed is 0.2 mm to 50 mm." */
export function allowed(path: Path, system: UnitSystem, unit?: string): string {
  const field = findField(path);
  if (field === null) return allowedRows(path);
  switch (field.kind) {
    case 'quantity':
      return `Allowed is ${sayRange(field.hard, field.dimension, system, unit)}.`;
    case 'count':
      return `Allowed is a whole number from ${field.hard[0]} to ${field.hard[1]}.`;
    case 'flag':
      return 'Allowed is true or false.';
    case 'choice':
      return `Allowed is ${field.options.map((option) => `"${option}" (${labelOfOption(option)})`).join(', ')}.`;
    case 'text':
      return `Allowed is a text of at most ${field.longest} characters.`;
  }
}

const lists = [
  'positions',
  'parts',
  'fan.curve',
  'moreFans',
  'moreFans[].curve',
  'extras',
  'extras[].points',
  'spreads',
  'readings.temperatures',
  'readings.pressures',
  'readings.flows',
  'readings.voltages',
  'readings.sounds',
];

function allowedRows(path: Path): string {
  if (!lists.includes(patternOf(path))) return '';
  const { least, most } = rowLimits(path);
  return `Allowed is a list of ${least} to ${most} rows.`;
}

/** What was found, short enough to stand in a sentence. */
function show(found: unknown): string {
  if (typeof found === 'string')
    return found.length > 40 ? `a text of ${found.length} characters` : `the text "${found}"`;
  if (typeof found === 'number' || typeof found === 'boolean' || found === null) return String(found);
  if (Array.isArray(found)) return found.length === 1 ? 'a list of 1 row' : `a list of ${found.length} rows`;
  return 'a group of values';
}
