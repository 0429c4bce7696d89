/** New names for what is referred to within a picture: the same name for the same thing. */
export type Names = (thing: string) => string;

/** What all that is painted on one picture shares. */
export interface Paper {
  /** Where its upper left corner is in the window. */
  readonly origin: DOMRect;
  /** What its texts have where they do not say otherwise. */
  readonly font: { readonly 'font-family': string; readonly 'font-size': string };
  readonly names: Names;
}

export function newNames(): Names {
  const names = new Map<string, string>();
  return (thing) => {
    const name = names.get(thing) ?? `p${names.size + 1}`;
    names.set(thing, name);
    return name;
  };
}
