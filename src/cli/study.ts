import { isMainThread } from 'node:worker_threads';
import { nodePool, serveStudies } from './nodePool.ts';
import { studyCommand } from './studyCommand.ts';
import { thisTerminal } from './terminal.ts';

// The same program, started once more as a worker.
if (isMainThread) {
  const pool = nodePool(new URL(import.meta.url));
  process.exitCode = await studyCommand(process.argv.slice(2), thisTerminal(), pool);
  pool.stop();
} else {
  serveStudies();
}
