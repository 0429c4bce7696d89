import { availableParallelism } from 'node:os';
import { parentPort, Worker } from 'node:worker_threads';
import { jobs } from '../workers/studies/jobs.ts';
import { createMachine } from '../workers/studies/machine.ts';
import type { ToWorker } from '../workers/studies/messages.ts';
import { createPool, type Pool } from '../workers/studies/pool.ts';

/** @param program which answers `serveStudies()` where it does not run as the main thread */
export function nodePool(program: URL, workers = availableParallelism()): Pool {
  return createPool((onMessage, onFault) => {
    const worker = new Worker(program);
    worker.on('message', onMessage);
    worker.on('error', (error) => onFault(error.message));
    return {
      send: (message, moved) => worker.postMessage(message, moved),
      stop: () => void worker.terminate(),
    };
  }, workers);
}

/** What a worker of `nodePool` does until it is stopped. */
export function serveStudies(): void {
  const port = parentPort;
  if (port === null) throw new Error('this is the main thread');
  const hear = createMachine(jobs, (message, moved) => port.postMessage(message, moved));
  port.on('message', (message: ToWorker) => hear(message));
}
