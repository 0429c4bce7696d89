import { createContext, useContext } from 'react';
import { useStore } from 'zustand';
import type { TracingReport } from '../../report/tracing/tracingReport.ts';
import type { TracingActions, TracingState, TracingStore } from '../../store/tracing/tracingStore.ts';

export interface TracingAround {
  readonly store: TracingStore;
  readonly report: TracingReport;
}

/** What is laid upon the picture, and all that is to be said of it. */
export const TracingContext = createContext<TracingAround | null>(null);

function useAround(): TracingAround {
  const around = useContext(TracingContext);
  if (around === null) throw new Error('no tracing around this component');
  return around;
}

export function useTracing<T>(select: (state: TracingState) => T): T {
  return useStore(useAround().store, select);
}

/** Actions never change, so nobody renders again for them. */
export function useTracingActions(): TracingActions {
  return useAround().store.getState();
}

export function useTracingReport(): TracingReport {
  return useAround().report;
}
