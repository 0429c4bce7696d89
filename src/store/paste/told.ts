/** What became of a table, in words. */
export interface Told {
  readonly ok: boolean;
  readonly words: string;
}

export function refused(words: string): Told {
  return { ok: false, words };
}

export function taken(words: string): Told {
  return { ok: true, words: `${words} Undo brings back what was there.` };
}
