import { largestDesignFile_B, tooLarge } from '../../model/designText.ts';

/** Hands a text to the reader as a file of this name. */
export function saveTextFile(text: string, name: string): void {
  const address = URL.createObjectURL(new Blob([text], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = name;
  link.click();
  // The browser has to have read it before the address goes.
  setTimeout(() => URL.revokeObjectURL(address), 10_000);
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
