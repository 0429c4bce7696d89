import { createMachine } from './machine.ts';
import type { ToWorker } from './messages.ts';
import { createPool, type Hand, type Pool, type StartHand } from './pool.ts';

/** More workers than these would wait for the same memory. */
const mostWorkers = 8;

/** A worker on every core of this machine; none is started before the first question. */
export function browserPool(): Pool {
  const cores = typeof Worker === 'undefined' ? 1 : navigator.hardwareConcurrency || 2;
  return createPool(startHand, Math.min(mostWorkers, cores));
}

const startHand: StartHand = (onMessage, onFault) => {
  try {
    const worker = new Worker(new URL('./studyWorker.ts', import.meta.url), { type: 'module' });
    worker.addEventListener('message', (event) => onMessage(event.data));
    worker.addEventListener('error', (event) => onFault(event.message || 'a worker could not be loaded'));
    return { send: (message, moved) => worker.postMessage(message, moved), stop: () => worker.terminate() };
  } catch {
    // A browser without workers, or one that allows none here: slower, but the same answers.
    return handInPage(onMessage);
  }
};

/** Computes between two turns of the page, a piece at a time. */
function handInPage(onMessage: Parameters<StartHand>[0]): Hand {
  const machine = import('./jobs.ts').then(({ jobs }) => createMachine(jobs, onMessage));
  let isStopped = false;
  const later = (message: ToWorker) => setTimeout(() => machine.then((hear) => isStopped || hear(message)));
  return {
    send: later,
    stop: () => {
      isStopped = true;
    },
  };
}
