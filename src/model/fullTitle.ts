/** Title and variant as one name: "Load bank · narrow slot". */
export function fullTitle({ title, variant }: { readonly title: string; readonly variant: string }): string {
  return variant === '' ? title : `${title} · ${variant}`;
}

/** Leaves room for a number behind a name, within what its field takes. */
const mostLetters = 36;

/** A name for a variant that none of these has: the one wanted, or that with a number. */
export function freeVariant(wanted: string, taken: readonly string[]): string {
  let name = wanted;
  for (let number = 2; taken.includes(name); number++)
    name = `${wanted.slice(0, mostLetters).trimEnd()} ${number}`;
  return name;
}

/** A short name for one more variant beside those there are: the first letter from B on that is free. */
export function nextVariant(taken: readonly string[]): string {
  const letters = Array.from({ length: 25 }, (_, at) => String.fromCharCode(66 + at));
  return letters.find((letter) => !taken.includes(letter)) ?? `variant ${taken.length + 1}`;
}
