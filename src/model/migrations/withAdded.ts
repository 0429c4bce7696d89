export type Raw = Readonly<Record<string, unknown>>;

/** A group with what it could not say before, under what it says. Whatever is no group of values stays as it is, for the schema to refuse. */
export function withAdded(group: unknown, added: Raw): unknown {
  return typeof group === 'object' && group !== null && !Array.isArray(group)
    ? { ...added, ...group }
    : group;
}
