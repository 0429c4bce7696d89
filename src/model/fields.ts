import * as z from 'zod/mini';
import { designSchema } from './design.ts';
import { type Path, patternOf } from './path.ts';
import { type Dimension, dimensionOfKey } from './say.ts';
import type { FieldMeta } from './schemaWords.ts';

interface FieldBase {
  /** Place with indices left out: `positions[].power_W`. */
  readonly pattern: string;
  readonly label: string;
  readonly help: string;
}

export interface QuantityField extends FieldBase {
  readonly kind: 'quantity';
  readonly dimension: Dimension;
  readonly hard: readonly [low: number, high: number];
  readonly usual: readonly [low: number, high: number] | null;
}

export interface CountField extends FieldBase {
  readonly kind: 'count';
  readonly hard: readonly [low: number, high: number];
  readonly usual: readonly [low: number, high: number] | null;
}

export interface FlagField extends FieldBase {
  readonly kind: 'flag';
}

export interface ChoiceField extends FieldBase {
  readonly kind: 'choice';
  readonly options: readonly string[];
}

export interface TextField extends FieldBase {
  readonly kind: 'text';
  readonly longest: number;
}

/** What one input is, said by the schema: the form, the messages, the report and the file check all read this. */
export type Field = QuantityField | CountField | FlagField | ChoiceField | TextField;

interface Walked {
  readonly fields: ReadonlyMap<string, Field>;
  readonly rows: ReadonlyMap<string, { readonly least: number; readonly most: number }>;
}

const { fields: byPattern, rows: rowsByPattern } = walk();

/** Every input of a design, in the order of the schema. */
export const fields: readonly Field[] = [...byPattern.values()];

/** @returns `null` for a path that is no input */
export function findField(path: Path): Field | null {
  return byPattern.get(patternOf(path)) ?? null;
}

/** The descriptor of an input that exists; any other path is a programmer's mistake. */
export function fieldAt(path: Path): Field {
  const field = findField(path);
  if (field === null) throw new Error(`no input ${path}`);
  return field;
}

/** How few and how many rows a list may have: `positions`, `parts`, `fan.curve`, `moreFans[1].curve`, `extras[2].points`. */
export function rowLimits(list: Path): { readonly least: number; readonly most: number } {
  const limits = rowsByPattern.get(patternOf(list));
  if (limits === undefined) throw new Error(`no list ${list}`);
  return limits;
}

function walk(): Walked {
  const fields = new Map<string, Field>();
  const rows = new Map<string, { least: number; most: number }>();
  const visit = (schema: z.core.$ZodType, pattern: string): void => {
    const { def } = (schema as z.core.$ZodTypes)._zod;
    if (def.type === 'object') {
      for (const [key, child] of Object.entries(def.shape))
        visit(child, pattern === '' ? key : `${pattern}.${key}`);
    } else if (def.type === 'array') {
      rows.set(pattern, boundsOf(schema));
      visit(def.element, `${pattern}[]`);
    } else {
      const field = describe(schema as z.core.$ZodTypes, pattern);
      if (field !== null) fields.set(pattern, field);
    }
  };
  visit(designSchema, '');
  return { fields, rows };
}

function describe(schema: z.core.$ZodTypes, pattern: string): Field | null {
  const meta = z.globalRegistry.get(schema) as FieldMeta | undefined;
  if (meta === undefined) return null;
  const base = { pattern, label: meta.title, help: meta.description };
  const { def } = schema._zod;
  const bounds = boundsOf(schema);
  switch (def.type) {
    case 'number': {
      const number = { ...base, hard: [bounds.least, bounds.most] as const, usual: meta.usual ?? null };
      if ('format' in def) return { ...number, kind: 'count' };
      return { ...number, kind: 'quantity', dimension: dimensionOfKey(lastKey(pattern)) };
    }
    case 'string':
      return { ...base, kind: 'text', longest: bounds.most };
    case 'enum':
      return { ...base, kind: 'choice', options: Object.values(def.entries).map(String) };
    default:
      return { ...base, kind: 'flag' };
  }
}

function lastKey(pattern: string): string {
  return pattern.slice(pattern.lastIndexOf('.') + 1);
}

/** Least and most of a number, a text's length or a list's rows, as the checks of its schema say. */
function boundsOf(schema: z.core.$ZodType): { least: number; most: number } {
  const bounds = { least: 0, most: Number.POSITIVE_INFINITY };
  for (const { _zod } of schema._zod.def.checks ?? []) {
    const def = _zod.def as { check: string; value?: number; minimum?: number; maximum?: number };
    if (def.check === 'greater_than' || def.check === 'min_length')
      bounds.least = def.value ?? def.minimum ?? 0;
    if (def.check === 'less_than' || def.check === 'max_length') bounds.most = def.value ?? def.maximum ?? 0;
  }
  return bounds;
}
