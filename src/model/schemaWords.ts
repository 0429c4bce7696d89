import * as z from 'zod/mini';

// zod probes `new Function` otherwise, which a strict content policy reports as a violation.
z.config({ jitless: true });

/** What a field tells its reader, beside its hard limits: label, help, and the range that is usual in this trade. */
export interface FieldMeta {
  readonly title: string;
  readonly description: string;
  readonly usual?: readonly [low: number, high: number];
}

/** Puts a field's words beside its schema, where the form, the messages and the JSON Schema find them. */
export function say<T extends z.core.$ZodType>(schema: T, meta: FieldMeta): T {
  z.globalRegistry.add(schema, { ...meta });
  return schema;
}

export function rows<T extends z.core.$ZodType>(row: T, least: number, most: number) {
  return z.array(row).check(z.minLength(least), z.maxLength(most));
}

export function number(
  hard: readonly [number, number],
  title: string,
  description: string,
  usual?: readonly [number, number],
) {
  return say(z.number().check(z.minimum(hard[0]), z.maximum(hard[1])), {
    title,
    description,
    ...(usual ? { usual } : {}),
  });
}

export function count(
  hard: readonly [number, number],
  title: string,
  description: string,
  usual?: readonly [number, number],
) {
  return say(z.int().check(z.minimum(hard[0]), z.maximum(hard[1])), {
    title,
    description,
    ...(usual ? { usual } : {}),
  });
}

export function flag(title: string, description: string) {
  return say(z.boolean(), { title, description });
}

export function choice<const T extends readonly [string, ...string[]]>(
  options: T,
  title: string,
  description: string,
) {
  return say(z.enum(options), { title, description });
}

export function text(longest: number, title: string, description: string) {
  return say(z.string().check(z.maxLength(longest)), { title, description });
}
