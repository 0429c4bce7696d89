/** Stops at a mistake of ours; what a user types never gets here. */
export function invariant(holds: boolean, mistake: string): asserts holds {
  if (!holds) throw new Error(mistake);
}
