import { describe, expect, test } from 'vitest';
import { projectFiles } from '../helpers/projectFiles.ts';

/** In pieces, so that this file does not find itself. */
const forbidden = [
  {
    what: 'a path of one machine',
    pattern: new RegExp(`(?<![\\w.~/-])/(?:${['work', 'root', 'tmp', 'home', 'Users'].join('|')})/`),
  },
  {
    what: 'a mark of unfinished work',
    pattern: new RegExp(`\\b(?:${['TO'.concat('DO'), 'FIX'.concat('ME'), 'X'.repeat(3)].join('|')})\\b`),
  },
];

const endings = [
  '.ts',
  '.tsx',
  '.mjs',
  '.cjs',
  '.css',
  '.json',
  '.svg',
  '.html',
  '.md',
  '.csv',
  '.txt',
  '.webmanifest',
];

function findings(path: string, text: string): string[] {
  return text
    .split('\n')
    .flatMap((line, index) =>
      forbidden
        .filter(({ pattern }) => pattern.test(line))
        .map(({ what }) => `${path}:${index + 1} has ${what}: ${line.trim().slice(0, 100)}`),
    );
}

describe('the words of the project', () => {
  test.each(['src', 'tests', 'public'])(
    'in %s name no machine and leave no mark of unfinished work',
    (folder) => {
      const files = projectFiles(folder, endings);
      expect(files.length).toBeGreaterThan(0);
      expect(files.flatMap(({ path, text }) => findings(path, text)).join('\n')).toBe('');
    },
  );

  test.each([
    `read('${'/wo'.concat('rk/main/a.ts')}')`,
    `cd ${'/tm'.concat('p/x')}`,
    `// ${'TO'.concat('DO')}: later`,
  ])('are found out: %s', (line) => {
    expect(findings('a.ts', line)).toHaveLength(1);
  });

  test.each(['src/work/heat.ts', '../root/a.ts', 'https://example.org/home/', 'W/(m·K)'])(
    'may be %s',
    (line) => {
      expect(findings('a.ts', line)).toEqual([]);
    },
  );
});
