import type { FanChart } from '../../report/types.ts';

export interface CurveRow {
  readonly flow: number;
  readonly fan: number | null;
  readonly box: number | null;
}

/** Both curves in one list, as a chart of lines wants them; the cut end of the box's curve has a flow of its own. */
export function curveRows({ fan, system }: FanChart): CurveRow[] {
  const rows = new Map<number, CurveRow>();
  for (const { flow, dp } of fan) rows.set(flow, { flow, fan: dp, box: null });
  for (const { flow, dp } of system) rows.set(flow, { flow, fan: rows.get(flow)?.fan ?? null, box: dp });
  return [...rows.values()].sort((a, b) => a.flow - b.flow);
}

/** Where a name can stand beside the falling end of the fan's curve, and beside the rising end of the box's. */
export function namePlaces({ fan, system }: FanChart): {
  readonly fan: FanChart['fan'][number];
  readonly box: FanChart['fan'][number];
} {
  const origin = { flow: 0, dp: 0 };
  return { fan: fan[Math.floor(fan.length * 0.86)] ?? origin, box: system.at(-1) ?? origin };
}

/** Number of a tick, short. */
export function tickText(value: number): string {
  return `${Number(value.toPrecision(6))}`.replace('-', '−');
}

export function shortNumber(value: unknown): string {
  return typeof value === 'number' ? tickText(Number(value.toPrecision(3))) : String(value);
}
