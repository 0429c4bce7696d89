import type { Job } from '../../studies/job.ts';
import type { FromWorker, ToWorker } from './messages.ts';

/** Jobs by name, whatever they are about. */
export type JobTable = Readonly<Record<string, SomeJob>>;

interface SomeJob {
  readonly count: (question: never) => number;
  readonly piece: (question: never, index: number) => unknown;
  readonly gather: (question: never, pieces: never) => unknown;
}

type AnyJob = Job<unknown, unknown, unknown>;

interface Asked {
  readonly job: AnyJob;
  readonly question: unknown;
  readonly pieces: unknown[];
}

/**
 * What a worker does with its messages, apart from how they come: the same in a browser's worker, in Node's, and in the page
 * itself where there are none.
 */
export function createMachine(
  jobs: JobTable,
  post: (message: FromWorker, moved: ArrayBuffer[]) => void,
): (message: ToWorker) => void {
  const asked = new Map<number, Asked>();

  const answer = (message: ToWorker, { job, question, pieces }: Asked): FromWorker | null => {
    const { run } = message;
    switch (message.kind) {
      case 'ask':
        return { kind: 'asked', run, count: job.count(question) };
      case 'piece': {
        const { index, isHome } = message;
        const piece = job.piece(question, index);
        if (!isHome) return { kind: 'piece', run, index, piece };
        pieces[index] = piece;
        return { kind: 'piece', run, index };
      }
      case 'keep':
        pieces[message.index] = message.piece;
        return null;
      case 'gather': {
        const { count } = message;
        return { kind: 'result', run, count, result: job.gather(question, pieces.slice(0, count)) };
      }
      case 'drop':
        asked.delete(run);
        return null;
    }
  };

  return (message) => {
    const { run } = message;
    if (message.kind === 'ask') {
      const job = jobs[message.job] as AnyJob | undefined;
      if (job === undefined) return post({ kind: 'fault', run, reason: `no study ${message.job}` }, []);
      asked.set(run, { job, question: message.question, pieces: [] });
    }
    const known = asked.get(run);
    if (known === undefined) return;
    try {
      const reply = answer(message, known);
      if (reply) post(reply, reply.kind === 'piece' ? buffersIn(reply.piece) : []);
    } catch (error) {
      asked.delete(run);
      post({ kind: 'fault', run, reason: error instanceof Error ? error.message : String(error) }, []);
    }
  };
}

/** Buffers of the typed arrays in a piece: they move to the other side instead of being copied. */
export function buffersIn(piece: unknown): ArrayBuffer[] {
  const found = new Set<ArrayBuffer>();
  const look = (value: unknown) => {
    if (ArrayBuffer.isView(value)) {
      if (value.buffer instanceof ArrayBuffer) found.add(value.buffer);
    } else if (typeof value === 'object' && value !== null) {
      for (const inner of Object.values(value)) look(inner);
    }
  };
  look(piece);
  return [...found];
}
