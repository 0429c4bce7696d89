import type { JobName, QuestionOf, ResultOf } from './jobs.ts';
import { buffersIn } from './machine.ts';
import type { FromWorker, ToWorker } from './messages.ts';

/** One worker, however it is made. */
export interface Hand {
  readonly send: (message: ToWorker, moved: ArrayBuffer[]) => void;
  readonly stop: () => void;
}

/** @param onFault the worker is gone, or cannot be started at all */
export type StartHand = (onMessage: (message: FromWorker) => void, onFault: (reason: string) => void) => Hand;

export interface RunOptions<Result> {
  /** Smaller goes first. */
  readonly rank?: number;
  /** Nobody waits for it with a progress bar: it leaves one worker, and so one core, to whoever types. */
  readonly aside?: boolean;
  readonly onProgress?: (done: number, of: number) => void;
  /** From the pieces there are so far, now and then. */
  readonly onEstimate?: (result: Result) => void;
}

export interface Running<Result> {
  /** Rejects where a study fails by a mistake of ours; never settles once cancelled. */
  readonly result: Promise<Result>;
  readonly cancel: () => void;
}

export interface Pool {
  readonly run: <N extends JobName>(
    name: N,
    question: QuestionOf<N>,
    options?: RunOptions<ResultOf<N>>,
  ) => Running<ResultOf<N>>;
  readonly stop: () => void;
}

interface Run {
  /** Another one after each restart, so that nothing late is taken for new. */
  id: number;
  readonly job: string;
  readonly question: unknown;
  readonly rank: number;
  readonly aside: boolean;
  readonly onProgress: (done: number, of: number) => void;
  readonly onEstimate: ((result: unknown) => void) | null;
  resolve: (result: unknown) => void;
  reject: (error: Error) => void;
  /** Keeps the pieces and puts them together. */
  home: Worker | null;
  count: number | null;
  /** Pieces nobody has begun. */
  waiting: number[];
  readonly done: Set<number>;
  /** Pieces done without a gap from the first on. */
  prefix: number;
  estimated: number;
  estimatedAt_ms: number;
  restarts: number;
}

interface Worker {
  hand: Hand;
  readonly knows: Set<number>;
  busy: { readonly run: number; readonly index: number | null } | null;
}

/** Estimates come no faster than anybody reads them. */
const estimateEvery_ms = 800;
/** A worker that dies takes its pieces along; a run begins again so often. */
const mostRestarts = 2;

/**
 * Shares the pieces of all runs out among some workers. Every worker has one piece at a time, so that whatever is wanted
 * more begins as soon as one piece is done. The answer does not depend on how many workers there are.
 */
export function createPool(
  startHand: StartHand,
  workers: number,
  now_ms: () => number = () => performance.now(),
): Pool {
  const runs = new Map<number, Run>();
  const staff: Worker[] = [];
  let lastId = 0;

  const employ = (at: number) => {
    const worker: Worker = { hand: idleHand, knows: new Set(), busy: null };
    staff[at] = worker;
    worker.hand = startHand(
      (message) => {
        if (staff[at] === worker) heard(worker, message);
      },
      (reason) => {
        if (staff[at] === worker) lost(at, worker, reason);
      },
    );
  };

  const send = (worker: Worker, message: ToWorker, moved: ArrayBuffer[] = []) =>
    worker.hand.send(message, moved);

  const introduce = (worker: Worker, { id, job, question }: Run) => {
    if (worker.knows.has(id)) return;
    worker.knows.add(id);
    send(worker, { kind: 'ask', run: id, job, question });
  };

  /** Gives an idle worker the next thing it can do for a run, if there is any. */
  const serve = (worker: Worker, run: Run): void => {
    const { id } = run;
    if (run.count === null) {
      if (run.home !== null) return;
      run.home = worker;
      worker.busy = { run: id, index: null };
      introduce(worker, run);
      return;
    }
    const isHome = run.home === worker;
    if (isHome && run.prefix === run.count) {
      worker.busy = { run: id, index: null };
      send(worker, { kind: 'gather', run: id, count: run.count });
      return;
    }
    if (isHome && isEstimateDue(run, now_ms())) {
      run.estimated = run.prefix;
      worker.busy = { run: id, index: null };
      send(worker, { kind: 'gather', run: id, count: run.prefix });
      return;
    }
    const index = run.waiting.pop();
    if (index === undefined) return;
    worker.busy = { run: id, index };
    introduce(worker, run);
    send(worker, { kind: 'piece', run: id, index, isHome });
  };

  const share = () => {
    const inOrder = [...runs.values()].sort((a, b) => a.rank - b.rank || a.id - b.id);
    for (const [at, worker] of staff.entries()) {
      const isSpare = at > 0 && at === staff.length - 1;
      for (const run of inOrder) {
        if (worker.busy !== null) break;
        if (!(run.aside && isSpare)) serve(worker, run);
      }
    }
  };

  const heard = (worker: Worker, message: FromWorker) => {
    const run = runs.get(message.run);
    // The answer to `ask` comes from every worker that takes part, and only the first one's is waited for.
    const isAwaited = message.kind !== 'asked' || worker.busy?.index === null;
    if (worker.busy?.run === message.run && isAwaited) worker.busy = null;
    if (run) take(run, worker, message);
    share();
  };

  const take = (run: Run, worker: Worker, message: FromWorker) => {
    switch (message.kind) {
      case 'asked':
        if (run.count !== null) return;
        run.count = message.count;
        // Last first, for they are taken from the end.
        run.waiting = Array.from({ length: message.count }, (_, i) => message.count - 1 - i);
        return;
      case 'piece': {
        const { index, piece } = message;
        if (run.home !== worker && run.home)
          send(run.home, { kind: 'keep', run: run.id, index, piece }, buffersIn(piece));
        run.done.add(index);
        while (run.done.has(run.prefix)) run.prefix++;
        run.onProgress(run.done.size, run.count ?? run.done.size);
        return;
      }
      case 'result':
        if (message.count === run.count) {
          forget(run);
          run.resolve(message.result);
        } else {
          run.estimatedAt_ms = now_ms();
          run.onEstimate?.(message.result);
        }
        return;
      case 'fault':
        forget(run);
        run.reject(new Error(message.reason));
    }
  };

  const forget = ({ id }: Run) => {
    runs.delete(id);
    for (const worker of staff) {
      if (worker.knows.delete(id)) send(worker, { kind: 'drop', run: id });
    }
  };

  const lost = (at: number, worker: Worker, reason: string) => {
    for (const run of [...runs.values()]) {
      if (run.home === worker) restart(run, reason);
      else if (worker.busy?.run === run.id && worker.busy.index !== null) run.waiting.push(worker.busy.index);
    }
    employ(at);
    share();
  };

  const restart = (run: Run, reason: string) => {
    forget(run);
    if (++run.restarts > mostRestarts) {
      run.reject(new Error(reason));
      return;
    }
    run.id = ++lastId;
    runs.set(run.id, run);
    run.home = null;
    run.count = null;
    run.waiting = [];
    run.done.clear();
    run.prefix = 0;
    run.estimated = 0;
  };

  return {
    run: (name, question, { rank = 1, aside = false, onProgress = () => {}, onEstimate } = {}) => {
      if (staff.length === 0) for (let at = 0; at < Math.max(1, workers); at++) employ(at);
      const run: Run = {
        id: ++lastId,
        job: name,
        question,
        rank,
        aside,
        onProgress,
        onEstimate: (onEstimate as ((result: unknown) => void) | undefined) ?? null,
        resolve: () => {},
        reject: () => {},
        home: null,
        count: null,
        waiting: [],
        done: new Set(),
        prefix: 0,
        estimated: 0,
        estimatedAt_ms: now_ms(),
        restarts: 0,
      };
      const result = new Promise<ResultOf<typeof name>>((resolve, reject) => {
        run.resolve = resolve as (result: unknown) => void;
        run.reject = reject;
      });
      runs.set(run.id, run);
      share();
      return { result, cancel: () => forget(run) };
    },
    stop: () => {
      for (const run of [...runs.values()]) forget(run);
      for (const { hand } of staff) hand.stop();
      staff.length = 0;
    },
  };
}

const idleHand: Hand = { send: () => {}, stop: () => {} };

function isEstimateDue({ onEstimate, prefix, estimated, estimatedAt_ms }: Run, now_ms: number): boolean {
  return onEstimate !== null && prefix > estimated && now_ms - estimatedAt_ms >= estimateEvery_ms;
}
