import { jobs } from './jobs.ts';
import { createMachine } from './machine.ts';
import type { ToWorker } from './messages.ts';

declare const self: DedicatedWorkerGlobalScope;

const hear = createMachine(jobs, (message, moved) => self.postMessage(message, moved));

self.addEventListener('message', (event) => hear(event.data as ToWorker));
