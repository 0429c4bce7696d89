export type WholeRead =
  | { readonly ok: true; readonly value: number }
  | { readonly ok: false; readonly reason: string };

/** A whole number as typed, or what is allowed. For what is asked of a study and stands in no design. */
export function readWhole(text: string, low: number, high: number): WholeRead {
  const value = /^\s*\d{1,10}\s*$/.test(text) ? Number(text) : Number.NaN;
  if (value >= low && value <= high) return { ok: true, value };
  return { ok: false, reason: `Allowed is a whole number from ${low} to ${high}.` };
}
