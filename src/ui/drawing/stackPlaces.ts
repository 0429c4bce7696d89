import type { Measure } from '../../report/drawing.ts';
import type { StackMeasures } from '../../report/drawingMeasures.ts';
import type { Detail, Layer } from './detail.ts';
import { pathOf, round } from './geometry.ts';
import { standInRow, type Wish } from './lanes.ts';
import type { Tag } from './measures.ts';

/** Pixels: a row of tags above, the layers, a row of tags below. */
export const stackHeights = { tags: 24, lead: 6, layers: 32 } as const;
export const stackHeight = 2 * (stackHeights.tags + stackHeights.lead) + stackHeights.layers;
/** So much of the fins is shown behind each plate. */
export const finsShown = 40;

export interface Stub {
  readonly key: string;
  readonly x: number;
  readonly y: number;
  readonly height: number;
}

/** Fins behind the outer plates, two of a kind so that their gap is seen; drawn closer than they are. */
export function finStubs({ layers }: Detail, finShare: number): Stub[] {
  const top = stackHeights.tags + stackHeights.lead;
  const pitch = stackHeights.layers / (1 + finShare);
  const ends: readonly [string, number | undefined][] = [
    ['left', layers[0]?.role === 'plate' ? 0 : undefined],
    ['right', layers.at(-1)?.role === 'plate' ? endOf(layers.at(-1)) + finsShown : undefined],
  ];
  return ends.flatMap(([key, x]) =>
    x === undefined
      ? []
      : [0, 1].map((row) => ({
          key: `${key}-${row}`,
          x: round(x),
          y: round(top + row * pitch),
          height: round(Math.max(1.5, finShare * pitch)),
        })),
  );
}

function endOf(layer: Layer | undefined): number {
  return layer === undefined ? 0 : layer.x + layer.width;
}

/** Tags of the fins above, of the layers below, and what leads from one to the other. */
export function stackTags(
  { layers }: Detail,
  stubs: readonly Stub[],
  measures: StackMeasures,
  width: number,
): { readonly tags: readonly Tag[]; readonly leaders: string } {
  const top = stackHeights.tags + stackHeights.lead;
  const bottom = top + stackHeights.layers;
  const middle = (role: string) => {
    const layer = layers.find((each) => each.role === role);
    return layer === undefined ? null : { x: finsShown + layer.x + layer.width / 2, y: bottom };
  };
  const [upper, lower] = stubs;
  const above =
    upper && lower
      ? [
          { measure: measures.fin, spot: { x: upper.x + 10, y: upper.y + upper.height / 2 } },
          { measure: measures.finGap, spot: { x: upper.x + 26, y: (upper.y + upper.height + lower.y) / 2 } },
        ]
      : [];
  const below = (
    [
      [measures.plate, middle('plate')],
      [measures.bond, middle('bond')],
      [measures.chip, middle('chip')],
      [measures.tab, middle('tab')],
    ] as const
  ).flatMap(([measure, spot]) => (measure === null || spot === null ? [] : [{ measure, spot }]));
  const row = (
    all: readonly { readonly measure: Measure; readonly spot: { readonly x: number; readonly y: number } }[],
    y: number,
    edge: number,
  ) => {
    const wishes = all.map(({ measure, spot }): Wish => ({ words: measure.words, at: spot.x, spare: false }));
    return standInRow(wishes, 0, width).flatMap((stand, index) => {
      const own = all[index];
      if (stand === null || own === undefined) return [];
      const { measure, spot } = own;
      const { words, at: x } = stand;
      const half = Math.max(0, stand.width / 2 - 6);
      const end = { x: Math.min(x + half, Math.max(x - half, spot.x)), y: edge };
      return [
        {
          tag: { measure, words, x, y, width: stand.width, set: 'middle' } satisfies Tag,
          leader: pathOf([spot, end]),
        },
      ];
    });
  };
  const placed = [
    ...row(above, stackHeights.tags / 2, stackHeights.tags - 3),
    ...row(below, stackHeight - stackHeights.tags / 2, stackHeight - stackHeights.tags + 3),
  ];
  return { tags: placed.map(({ tag }) => tag), leaders: placed.map(({ leader }) => leader).join('') };
}
