import { mkdirSync, renameSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { isStale, root } from './prepare.mjs';

/** What a bundle of the core may depend on. */
const inputs = ['src', 'package-lock.json', 'tsconfig.json'];

/**
 * Bundles a TypeScript program into one file that Node runs as it is, if that file is missing or stale.
 * Written aside and renamed, so that two runs at a time do not read half a file.
 * @param {string} entry program, relative to the project
 * @param {string} made bundle, relative to the project
 * @returns {Promise<string>} absolute path of the bundle
 */
export async function bundle(entry, made) {
  const file = join(root, made);
  if (!isStale(made, [...inputs, entry])) return file;
  const { build } = await import('vite');
  const result = await build({
    root,
    configFile: false,
    logLevel: 'error',
    publicDir: false,
    ssr: { noExternal: true },
    build: {
      ssr: entry,
      write: false,
      target: 'node20',
      rolldownOptions: { output: { format: 'esm', codeSplitting: false } },
    },
  });
  const [chunk] = 'output' in result ? result.output : [];
  if (chunk === undefined) throw new Error(`${entry} gave no bundle`);
  mkdirSync(dirname(file), { recursive: true });
  const aside = `${file}.${process.pid}`;
  writeFileSync(aside, chunk.code);
  renameSync(aside, file);
  return file;
}
