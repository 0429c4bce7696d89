import { readFile, stat } from 'node:fs/promises';

/** What a command touches of the world; replaced in tests. */
export interface Terminal {
  readonly size_B: (file: string) => Promise<number>;
  readonly read: (file: string) => Promise<string>;
  readonly out: (text: string) => void;
  readonly err: (text: string) => void;
}

/** The terminal that this program was started from. */
export function thisTerminal(): Terminal {
  // A reader that has seen enough, such as `head`, is no fault of ours.
  process.stdout.on('error', (error: NodeJS.ErrnoException) => {
    if (error.code !== 'EPIPE') throw error;
  });
  return {
    size_B: async (file) => (await stat(file)).size,
    read: (file) => readFile(file, 'utf8'),
    out: (text) => process.stdout.write(text),
    err: (text) => process.stderr.write(text),
  };
}
