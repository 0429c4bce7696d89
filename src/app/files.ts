import { designFileName } from '../io/designFile.ts';
import type { Design } from '../model/design.ts';
import { largestDesignFile_B, tooLarge } from '../model/designText.ts';
import { serialiseDesign } from '../model/serialiseDesign.ts';

/** Hands the design to the reader as a file. */
export function saveDesign(design: Design): void {
  const address = URL.createObjectURL(new Blob([serialiseDesign(design)], { type: 'application/json' }));
  const link = document.createElement('a');
  link.href = address;
  link.download = designFileName(design);
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
