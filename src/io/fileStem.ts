/** What the names of all files of a design begin with: letters and digits of any script, the rest as hyphens. */
export function fileStem({ title, revision }: { readonly title: string; readonly revision: string }): string {
  const stem = `${title} ${revision}`
    .toLowerCase()
    .replace(/[^\p{L}\p{N}]+/gu, '-')
    .replace(/^-+|-+$/g, '')
    .slice(0, 60);
  return stem === '' ? 'fan-box' : stem;
}
