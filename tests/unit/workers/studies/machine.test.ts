import { describe, expect, test } from 'vitest';
import { buffersIn, createMachine } from '../../../../src/workers/studies/machine.ts';
import type { FromWorker } from '../../../../src/workers/studies/messages.ts';

const table = {
  halves: {
    count: (question: number) => question,
    piece: (_: number, index: number) => ({ half: index / 2 }),
    gather: (_: number, pieces: readonly { half: number }[]) => pieces.map(({ half }) => half),
  },
};

function machine() {
  const posted: FromWorker[] = [];
  return { posted, hear: createMachine(table, (message) => posted.push(message)) };
}

describe('what a worker does with its messages', () => {
  test('it tells the count, hands over pieces, and keeps those of its own runs', () => {
    const { posted, hear } = machine();
    hear({ kind: 'ask', run: 1, job: 'halves', question: 3 });
    hear({ kind: 'piece', run: 1, index: 0, isHome: true });
    hear({ kind: 'piece', run: 1, index: 1, isHome: false });
    hear({ kind: 'keep', run: 1, index: 1, piece: { half: 7 } });
    hear({ kind: 'gather', run: 1, count: 2 });
    expect(posted).toEqual([
      { kind: 'asked', run: 1, count: 3 },
      { kind: 'piece', run: 1, index: 0 },
      { kind: 'piece', run: 1, index: 1, piece: { half: 0.5 } },
      { kind: 'result', run: 1, count: 2, result: [0, 7] },
    ]);
  });

  test('it forgets what is dropped', () => {
    const { posted, hear } = machine();
    hear({ kind: 'ask', run: 1, job: 'halves', question: 3 });
    hear({ kind: 'drop', run: 1 });
    hear({ kind: 'piece', run: 1, index: 0, isHome: true });
    expect(posted).toHaveLength(1);
  });

  test('it says that it knows no such study', () => {
    const { posted, hear } = machine();
    hear({ kind: 'ask', run: 1, job: 'thirds', question: 3 });
    expect(posted).toEqual([{ kind: 'fault', run: 1, reason: 'no study thirds' }]);
  });
});

describe('the buffers of a piece', () => {
  test('are found wherever its arrays stand, each once', () => {
    const shared = new Float64Array(4);
    const piece = { columns: [shared, shared.subarray(2)], more: { index: new Uint16Array(2) }, text: 'a' };
    expect(buffersIn(piece)).toEqual([shared.buffer, piece.more.index.buffer]);
    expect(buffersIn(undefined)).toEqual([]);
  });
});
