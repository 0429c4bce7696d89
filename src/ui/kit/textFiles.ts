import { largestDesignFile_B, tooLarge } from '../../model/designText.ts';
import { saveFile } from './saveFile.ts';

/** Hands JSON to the reader as a file of this name. */
export function saveTextFile(text: string, name: string): void {
  saveFile(new Blob([text], { type: 'application/json' }), name);
}

export type FileText =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly reason: string };

/** Text of a chosen or dropped file; one that is far too large is not even read. */
export async function readTextFile(file: File): Promise<FileText> {
  if (file.size > largestDesignFile_B) return { ok: false, reason: tooLarge(file.size) };
  try {
    return { ok: true, text: await file.text() };
  } catch {
    return { ok: false, reason: 'The browser could not read this file.' };
  }
}
