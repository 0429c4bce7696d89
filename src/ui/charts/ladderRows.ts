import type { Ladder } from '../../report/types.ts';

export interface LadderRow {
  readonly label: string;
  readonly rise: string;
  readonly said: string;
  readonly span: readonly [number, number];
}

export function ladderRows(ladder: Ladder): LadderRow[] {
  return ladder.rungs
    .filter((rung) => rung.key !== 'room')
    .map(({ label, rise, top, from, to }) => ({
      label,
      rise,
      said: `${rise}, then at ${top}`,
      span: [Math.min(from, to), Math.max(from, to)],
    }));
}
