import type { Design } from '../../model/design.ts';

/** A copy of a design that is written over from draw to draw. */
export interface Draft {
  readonly design: Design;
  /** For each of its parts, which part of the design it was. */
  readonly partOf: readonly number[];
}

/** @param eachPart every position gets a part of its own, so that equal resistors may differ */
export function draftOf(design: Design, eachPart: boolean): Draft {
  // Plain data, every number finite: text takes all of it along.
  const copy = JSON.parse(JSON.stringify(design)) as Design;
  copy.spreads = [];
  if (!eachPart) return { design: copy, partOf: design.parts.map((_, index) => index) };
  copy.parts = design.positions.map(({ part }) => ({ ...(design.parts[part] as Design['parts'][number]) }));
  copy.positions.forEach((position, index) => {
    position.part = index;
  });
  return { design: copy, partOf: design.positions.map(({ part }) => part) };
}
