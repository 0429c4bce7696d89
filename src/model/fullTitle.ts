/** Title and variant as one name: "Load bank · narrow slot". */
export function fullTitle({ title, variant }: { readonly title: string; readonly variant: string }): string {
  return variant === '' ? title : `${title} · ${variant}`;
}

/** A short name for one more variant beside those there are: the first letter from B on that is free. */
export function nextVariant(taken: readonly string[]): string {
  const letters = Array.from({ length: 25 }, (_, at) => String.fromCharCode(66 + at));
  return letters.find((letter) => !taken.includes(letter)) ?? `variant ${taken.length + 1}`;
}
