import { defineCard } from '../card.ts';
import { brentRoot } from '../solve/brentRoot.ts';

/**
 * Contraction of a jet behind a sharp two-dimensional opening, by free-streamline theory: what the classic entrance
 * factors of plate fins follow from. @returns jet over opening; 0.611 for an opening in an endless wall
 */
export function venaContracta(sigma: number): number {
  const found = brentRoot(
    (cc) => {
      const x = cc * sigma;
      const turn = x > 1e-9 ? (2 / Math.PI) * (1 / x - x) * Math.atan(x) : 2 / Math.PI;
      return 1 / cc - 1 - turn;
    },
    0.5,
    1,
    1e-12,
  );
  return found.ok ? found.root : Number(sigma > 0.5);
}

/** Entrance factor of a plate-fin core on its channel velocity. @param momentum 1 with apparent, 1.2 with developed friction */
export function coreEntranceLoss(sigma: number, momentum: number): number {
  const cc = venaContracta(sigma);
  return (1 - 2 * cc + cc * cc * (2 * momentum - 1)) / (cc * cc);
}

export const card = defineCard({
  id: 'coreEntranceLoss',
  title: 'Entrance of a plate-fin core by free-streamline theory',
  equation: 'K = (1 − 2·C_c + C_c²·(2·K_d − 1))/C_c²; 1/C_c = 1 + (2/π)·(1/x − x)·arctan(x); x = C_c·σ',
  result: { name: 'loss coefficient', unit: '1', symbol: 'K' },
  symbols: { sigma: 'σ', momentum: 'K_d' },
  source: { key: 'kaysLondon', where: 'derivation, jet contraction by von Mises' },
  range: { sigma: [0, 0.9] },
  rangeFrom: 'computed',
  scatter: { sigma: 0.1, from: 'memory' },
  assumes: ['uniformInlet'],
  example: {
    given: { sigma: 0.5, momentum: 1 },
    printed: '0.305',
    kind: 'worked again',
    where: 'derivation, recomputed',
  },
  evaluate: ({ sigma, momentum }) => coreEntranceLoss(sigma, momentum),
});
