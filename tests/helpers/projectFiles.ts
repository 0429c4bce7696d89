import { readdirSync, readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../../', import.meta.url));

export interface ProjectFile {
  /** Relative to the project, with `/`. */
  readonly path: string;
  readonly text: string;
}

/** All files below a folder of the project whose names end in one of `endings`. */
export function projectFiles(folder: string, endings: readonly string[]): ProjectFile[] {
  return readdirSync(root + folder, { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && endings.some((ending) => entry.name.endsWith(ending)))
    .map((entry) => `${entry.parentPath}/${entry.name}`.replaceAll('\\', '/'))
    .sort()
    .map((file) => ({ path: file.slice(root.length), text: readFileSync(file, 'utf8') }));
}
