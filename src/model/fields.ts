import type * as z from 'zod';
import { designSchema, type FieldMeta } from './design.ts';
import { type Path, patternOf } from './path.ts';
import { type Dimension, dimensionOfKey } from './say.ts';

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

/** How few and how many rows a list may have: `positions`, `parts`, `fan.curve`, `extras`, `extras[2].points`. */
export function rowLimits(list: Path): { readonly least: number; readonly most: number } {
  const limits = rowsByPattern.get(patternOf(list));
  if (limits === undefined) throw new Error(`no list ${list}`);
  return limits;
}

function walk(): Walked {
  const fields = new Map<string, Field>();
  const rows = new Map<string, { least: number; most: number }>();
  const visit = (schema: z.core.$ZodType, pattern: string): void => {
    const node = schema as z.ZodType;
    if (isObject(node)) {
      for (const [key, child] of Object.entries(node.shape))
        visit(child, pattern === '' ? key : `${pattern}.${key}`);
    } else if (isArray(node)) {
      rows.set(pattern, rowBounds(node));
      visit(node.element, `${pattern}[]`);
    } else {
      const field = describe(node, pattern);
      if (field !== null) fields.set(pattern, field);
    }
  };
  visit(designSchema, '');
  return { fields, rows };
}

function describe(node: z.ZodType, pattern: string): Field | null {
  const meta = node.meta() as FieldMeta | undefined;
  if (meta === undefined) return null;
  const base = { pattern, label: meta.title, help: meta.description };
  if (isNumber(node)) {
    const bounds = { hard: [node.minValue ?? 0, node.maxValue ?? 0] as const, usual: meta.usual ?? null };
    if (node.format === 'safeint') return { ...base, ...bounds, kind: 'count' };
    return { ...base, ...bounds, kind: 'quantity', dimension: dimensionOfKey(lastKey(pattern)) };
  }
  if (isText(node)) return { ...base, kind: 'text', longest: node.maxLength ?? 0 };
  if (isChoice(node)) return { ...base, kind: 'choice', options: node.options.map(String) };
  return { ...base, kind: 'flag' };
}

function lastKey(pattern: string): string {
  return pattern.slice(pattern.lastIndexOf('.') + 1);
}

function rowBounds(node: z.ZodArray): { least: number; most: number } {
  const bounds = { least: 0, most: Number.POSITIVE_INFINITY };
  for (const check of node.def.checks ?? []) {
    const { def } = check._zod as { def: { check: string; minimum?: number; maximum?: number } };
    if (def.check === 'min_length' && def.minimum !== undefined) bounds.least = def.minimum;
    if (def.check === 'max_length' && def.maximum !== undefined) bounds.most = def.maximum;
  }
  return bounds;
}

function isObject(node: z.ZodType): node is z.ZodObject {
  return node.def.type === 'object';
}

function isArray(node: z.ZodType): node is z.ZodArray {
  return node.def.type === 'array';
}

function isNumber(node: z.ZodType): node is z.ZodNumber {
  return node.def.type === 'number';
}

function isText(node: z.ZodType): node is z.ZodString {
  return node.def.type === 'string';
}

function isChoice(node: z.ZodType): node is z.ZodEnum {
  return node.def.type === 'enum';
}
