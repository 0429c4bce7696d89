import type { Design } from '../model/design.ts';

export const designFileEnding = '.throughfin.json';

/** A file name from the title: letters and digits of any script, the rest as hyphens. */
export function designFileName(design: Design): string {
  const stem = `${design.title} ${design.revision}`
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 60);
  return `${stem === '' ? 'fan-box' : stem}${designFileEnding}`;
}
