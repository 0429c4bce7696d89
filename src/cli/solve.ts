import { readFile, stat } from 'node:fs/promises';
import { solveCommand } from './solveCommand.ts';

// A reader that has seen enough, such as `head`, is no fault of ours.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
});

process.exitCode = await solveCommand(process.argv.slice(2), {
  size_B: async (file) => (await stat(file)).size,
  read: (file) => readFile(file, 'utf8'),
  out: (text) => process.stdout.write(text),
  err: (text) => process.stderr.write(text),
});
