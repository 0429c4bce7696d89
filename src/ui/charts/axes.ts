import { palette } from './palette.ts';
import { shortNumber, tickText } from './rows.ts';

/** What every chart of the page has alike; spread into the elements of the chart. */
const tick = { fill: palette.soft, fontSize: 12 } as const;

export const frame = { responsive: true, style: { width: '100%', height: '100%' } } as const;

export const grid = { stroke: palette.line, strokeOpacity: 0.5 } as const;

export const axis = { tick, stroke: palette.line } as const;

/** Name of a horizontal axis, under its numbers. */
export function below(value: string) {
  return { value, position: 'insideBottom', offset: -12, ...tick } as const;
}

/** Vertical axis with its unit over the numbers. */
export function upright(ticks: readonly number[], unit: string) {
  return {
    ...axis,
    type: 'number',
    ticks: [...ticks],
    width: 48,
    tickFormatter: tickText,
    label: { value: unit, position: 'top', offset: 14, ...tick },
  } as const;
}

/** Name of a line across the chart, with a halo of paper so that no curve runs through it. */
export function levelLabel(value: string, position: 'insideTopLeft' | 'insideBottomLeft') {
  return {
    value,
    position,
    ...tick,
    stroke: palette.paper,
    strokeWidth: 4,
    paintOrder: 'stroke',
  } as const;
}

/** What a pointer reads, on the page's own paper. */
export const tooltip = {
  contentStyle: {
    background: palette.paper,
    border: `1px solid ${palette.line}`,
    color: palette.ink,
    fontSize: 13,
  },
  itemStyle: { color: palette.ink },
  labelStyle: { color: palette.ink },
  isAnimationActive: false,
} as const;

/** The same for values in the unit of the vertical axis. */
export function reading(unit: string) {
  return { ...tooltip, formatter: (value: unknown) => `${shortNumber(value)} ${unit}` } as const;
}
