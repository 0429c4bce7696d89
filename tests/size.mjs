import { existsSync, readFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';

/**
 * What a browser loads before the form and the verdict stand: the scripts named in the built page and all that these
 * import statically. Parts loaded later, such as the charts, do not count.
 */
const limit_kB = 150;
const dist = fileURLToPath(new URL('../dist/', import.meta.url));

/** @param {string} text @param {RegExp} pattern */
const captures = (text, pattern) => [...text.matchAll(pattern)].map((match) => match[1] ?? '');

/** @param {string} html */
function scriptsOf(html) {
  const tags = captures(html, /(<(?:script|link)\b[^>]*>)/g);
  const scripts = tags.filter((tag) => tag.startsWith('<script') || /rel="modulepreload"/.test(tag));
  return scripts.flatMap((tag) => captures(tag, /(?:src|href)="([^"]+)"/g)).map((path) => join(dist, path));
}

/** @param {string} file @param {Map<string, string>} found */
function follow(file, found) {
  if (found.has(file) || !existsSync(file)) return;
  const text = readFileSync(file, 'utf8');
  found.set(file, text);
  const imports = captures(text, /\b(?:import|export)(?:[\w$\s{},*]*\bfrom)?\s*["'](\.[^"']+)["']/g);
  for (const path of imports) follow(join(dirname(file), path), found);
}

if (!existsSync(join(dist, 'index.html'))) {
  console.error('There is no dist/index.html: npm run build first.');
  process.exit(1);
}
/** @type {Map<string, string>} */
const initial = new Map();
for (const file of scriptsOf(readFileSync(join(dist, 'index.html'), 'utf8'))) follow(file, initial);

let total_kB = 0;
for (const [file, text] of initial) {
  const size_kB = gzipSync(text, { level: 9 }).length / 1000;
  total_kB += size_kB;
  console.log(`${size_kB.toFixed(1).padStart(7)} kB  ${file.slice(dist.length)}`);
}
console.log(`${total_kB.toFixed(1)} kB of compressed script before the first answer, at most ${limit_kB} kB`);
if (initial.size === 0 || total_kB > limit_kB) process.exitCode = 1;
