/** To a worker. A run is one question asked once. */
export type ToWorker =
  /** Always first: what the run is about. Answered with how many pieces it has. */
  | { readonly kind: 'ask'; readonly run: number; readonly job: string; readonly question: unknown }
  /** Compute one piece; the home of a run keeps it, others hand it over. */
  | { readonly kind: 'piece'; readonly run: number; readonly index: number; readonly isHome: boolean }
  /** Keep a piece that another worker computed. */
  | { readonly kind: 'keep'; readonly run: number; readonly index: number; readonly piece: unknown }
  /** Put the first so many pieces together. */
  | { readonly kind: 'gather'; readonly run: number; readonly count: number }
  /** Nobody wants it any more. */
  | { readonly kind: 'drop'; readonly run: number };

export type FromWorker =
  | { readonly kind: 'asked'; readonly run: number; readonly count: number }
  /** `piece` is left out by the home, which has kept it. */
  | { readonly kind: 'piece'; readonly run: number; readonly index: number; readonly piece?: unknown }
  | { readonly kind: 'result'; readonly run: number; readonly count: number; readonly result: unknown }
  /** A mistake of ours, in the words of the exception. */
  | { readonly kind: 'fault'; readonly run: number; readonly reason: string };
