import type { Design } from '../model/design.ts';
import { fullTitle } from '../model/fullTitle.ts';
import { fileStem } from './fileStem.ts';

export const designFileEnding = '.throughfin.json';

/** A file name from the title: letters and digits of any script, the rest as hyphens. */
export function designFileName(design: Design): string {
  return `${fileStem({ title: fullTitle(design), revision: design.revision })}${designFileEnding}`;
}
