import { describe, expect, test, vi } from 'vitest';
import { createMachine, type JobTable } from '../../../../src/workers/studies/machine.ts';
import type { FromWorker } from '../../../../src/workers/studies/messages.ts';
import { createPool, type Pool, type StartHand } from '../../../../src/workers/studies/pool.ts';

/** Sums squares: pieces of four numbers. The pool takes names of real studies; what stands behind them is ours here. */
const jobs: JobTable = {
  report: {
    count: (question: { readonly upTo: number }) => Math.ceil(question.upTo / 4),
    piece: ({ upTo }: { readonly upTo: number }, index: number) => {
      const from = 4 * index;
      return Float64Array.from({ length: Math.min(4, upTo - from) }, (_, i) => (from + i) ** 2);
    },
    gather: (_: unknown, pieces: readonly Float64Array[]) => pieces.map((piece) => piece.join(' ')).join(' '),
  },
};

/** Workers in this thread, one message at a time; what is posted is cloned as between real ones. */
function hands(table = jobs, deadOn: (started: number, sent: number) => boolean = () => false) {
  const started: { sent: string[] }[] = [];
  const start: StartHand = (onMessage, onFault) => {
    const record = { sent: [] as string[] };
    const number = started.push(record);
    const hear = createMachine(table, (message, moved) => {
      const sent = structuredClone(message, { transfer: moved }) as FromWorker;
      setTimeout(() => onMessage(sent));
    });
    return {
      send: (message, moved) => {
        record.sent.push(message.kind);
        const received = structuredClone(message, { transfer: moved });
        setTimeout(() => {
          if (deadOn(number, record.sent.length)) onFault('gone');
          else hear(received);
        });
      },
      stop: () => {},
    };
  };
  return { start, started };
}

const ask = (pool: Pool, upTo: number, options = {}) =>
  pool.run('report', { upTo } as never, options) as unknown as {
    readonly result: Promise<string>;
    readonly cancel: () => void;
  };

const squares = (upTo: number) => Array.from({ length: upTo }, (_, i) => i * i).join(' ');

describe('a pool of workers', () => {
  test.each([1, 2, 3, 7])('of %i gives the same answer', async (workers) => {
    const { start } = hands();
    await expect(ask(createPool(start, workers), 41).result).resolves.toBe(squares(41));
  });

  test('starts no worker before the first question', () => {
    const { start, started } = hands();
    createPool(start, 2);
    expect(started).toHaveLength(0);
  });

  test('lets every worker take part', async () => {
    const { start, started } = hands();
    await ask(createPool(start, 3), 400).result;
    expect(started.map(({ sent }) => sent.includes('piece'))).toEqual([true, true, true]);
  });

  test('leaves one of its workers to whoever types, where nobody waits for the answer', async () => {
    const { start, started } = hands();
    await expect(ask(createPool(start, 2), 400, { aside: true }).result).resolves.toBe(squares(400));
    expect(started.map(({ sent }) => sent.includes('piece'))).toEqual([true, false]);
    const alone = hands();
    await expect(ask(createPool(alone.start, 1), 40, { aside: true }).result).resolves.toBe(squares(40));
  });

  test('tells its progress, piece by piece', async () => {
    const told: number[] = [];
    const { start } = hands();
    await ask(createPool(start, 2), 20, { onProgress: (done: number) => told.push(done) }).result;
    expect(told).toEqual([1, 2, 3, 4, 5]);
  });

  test('estimates from the first pieces while it goes on', async () => {
    const { start } = hands();
    let now_ms = 0;
    const told: string[] = [];
    const pool = createPool(start, 2, () => (now_ms += 300));
    await ask(pool, 64, { onEstimate: (result: string) => told.push(result) }).result;
    expect(told.length).toBeGreaterThan(1);
    for (const estimate of told) expect(squares(64).startsWith(estimate)).toBe(true);
  });

  test('never answers what was cancelled, and goes on with the rest', async () => {
    const { start } = hands();
    const pool = createPool(start, 2);
    const answered = vi.fn();
    const long = ask(pool, 400);
    long.result.then(answered);
    const short = ask(pool, 8);
    long.cancel();
    await expect(short.result).resolves.toBe(squares(8));
    await new Promise((resolve) => setTimeout(resolve, 20));
    expect(answered).not.toHaveBeenCalled();
  });

  test('serves what is more urgent first', async () => {
    const { start } = hands();
    const pool = createPool(start, 1);
    const order: string[] = [];
    const long = ask(pool, 400, { rank: 2 }).result.then(() => order.push('long'));
    const short = ask(pool, 8, { rank: 0 }).result.then(() => order.push('short'));
    await Promise.all([long, short]);
    expect(order).toEqual(['short', 'long']);
  });

  test('replaces a worker that dies, and loses nothing', async () => {
    const { start, started } = hands(jobs, (number, sent) => number <= 2 && sent > 4);
    await expect(ask(createPool(start, 2), 100).result).resolves.toBe(squares(100));
    expect(started).toHaveLength(4);
  });

  test('gives up where every worker dies', async () => {
    const { start } = hands(jobs, () => true);
    await expect(ask(createPool(start, 2), 8).result).rejects.toThrow('gone');
  });

  test('passes on in words what a study throws', async () => {
    const wrong: JobTable = {
      report: { count: () => 1, piece: () => (1).toFixed(101), gather: () => null },
    };
    const { start } = hands(wrong);
    await expect(ask(createPool(start, 2), 8).result).rejects.toThrow('toFixed');
  });
});
