import type { AssumptionKey } from '../assumptions.ts';

/** What the model of the box itself takes for granted, beyond what the cards of its methods say. */
export const modelAssumptions: readonly AssumptionKey[] = [
  'evenFeed',
  'identicalSinks',
  'evenSeat',
  'noStirring',
  'lyingDraught',
  'sheetAsHotAsSink',
  'shellBesideBank',
];
