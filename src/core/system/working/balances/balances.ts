import type { Balance } from '../balance.ts';
import { airBalances } from './airBalances.ts';
import { contactBalances } from './contactBalances.ts';
import { fanBalances } from './fanBalances.ts';
import { heatBalances } from './heatBalances.ts';
import { limitBalances } from './limitBalances.ts';
import { loadBalances } from './loadBalances.ts';
import { pathBalances } from './pathBalances.ts';
import { shellBalances } from './shellBalances.ts';
import { sinkBalances } from './sinkBalances.ts';
import { timeBalances } from './timeBalances.ts';

/** Every equation of an answer that is nobody's method. */
export const balances: readonly Balance[] = [
  ...loadBalances,
  ...airBalances,
  ...fanBalances,
  ...pathBalances,
  ...sinkBalances,
  ...contactBalances,
  ...shellBalances,
  ...heatBalances,
  ...limitBalances,
  ...timeBalances,
];
