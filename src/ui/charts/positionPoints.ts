import type { HeatReport } from '../../report/types.ts';

export interface PositionPoint {
  readonly number: string;
  readonly film: number;
  readonly joint: number;
  readonly sink: number | null;
}

export function positionPoints({ positions }: HeatReport): PositionPoint[] {
  return positions.map(({ index, chart }) => ({ number: `${index + 1}`, ...chart }));
}
