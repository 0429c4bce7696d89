import { createContext } from 'react';
import type { Outcome } from '../../core/system/outcome.ts';
import type { Report } from '../../report/types.ts';

/** What is shown, as far as files are made from it; `null` where nothing can be taken out. */
export const TakeOutContext = createContext<{
  readonly report: Report;
  readonly outcome: Outcome;
} | null>(null);
