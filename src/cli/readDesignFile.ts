import type { Design } from '../model/design.ts';
import { largestDesignFile_B, parseDesignText, tooLarge } from '../model/designText.ts';
import type { Terminal } from './terminal.ts';

/** The design in a file; `null` where there is none, the reason told. */
export async function readDesignFile(file: string, terminal: Terminal): Promise<Design | null> {
  const text = await readFile(file, terminal);
  if (text === null) return null;
  const read = parseDesignText(text);
  if (!read.ok) {
    for (const { path, reason } of read.problems)
      terminal.err(`${file}: ${path === '' ? '' : `${path}: `}${reason}\n`);
    return null;
  }
  for (const note of read.notes) terminal.err(`${file}: note: ${note}\n`);
  return read.design;
}

async function readFile(file: string, terminal: Terminal): Promise<string | null> {
  try {
    const size_B = await terminal.size_B(file);
    if (size_B > largestDesignFile_B) {
      terminal.err(`${file}: ${tooLarge(size_B)}\n`);
      return null;
    }
    return await terminal.read(file);
  } catch (error) {
    terminal.err(`${file}: cannot be read: ${error instanceof Error ? error.message : String(error)}\n`);
    return null;
  }
}
