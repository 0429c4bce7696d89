import { spawnSync } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { bundle } from '../../src/cli/bundle.mjs';
import { ensureInstalled, root } from '../../src/cli/prepare.mjs';

/**
 * `npm run bench [-- part of a name]`: bundles each benchmark of the core as the terminal program is bundled, and runs
 * it; one that drives a browser is run as it stands.
 */
const wanted = process.argv[2] ?? '';
const folder = 'tests/bench';
const programs = readdirSync(`${root}/${folder}`).filter(
  (name) => /\.bench\.(ts|mjs)$/.test(name) && name.includes(wanted),
);
if (programs.length === 0) {
  console.error(`No benchmark in ${folder} has «${wanted}» in its name.`);
  process.exitCode = 2;
} else if (ensureInstalled()) {
  for (const name of programs) {
    const file = name.endsWith('.mjs')
      ? `${root}/${folder}/${name}`
      : await bundle(`${folder}/${name}`, `dist-cli/${name.replace(/ts$/, 'mjs')}`);
    const { status } = spawnSync(process.execPath, [file], { stdio: 'inherit' });
    if (status !== 0) process.exitCode = 1;
  }
}
