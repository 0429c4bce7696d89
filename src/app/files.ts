import { designFileName } from '../io/designFile.ts';
import type { Design } from '../model/design.ts';
import { serialiseDesign } from '../model/serialiseDesign.ts';
import { saveTextFile } from '../ui/kit/textFiles.ts';

/** Hands the design to the reader as a file. */
export function saveDesign(design: Design): void {
  saveTextFile(serialiseDesign(design), designFileName(design));
}
