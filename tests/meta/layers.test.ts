import { posix } from 'node:path';
import { describe, expect, test } from 'vitest';
import { importsOf } from '../helpers/importsOf.ts';
import { judgeImport } from '../helpers/layers.ts';
import { projectFiles } from '../helpers/projectFiles.ts';

describe('the rooms of src', () => {
  test('import only in the one direction', () => {
    const files = projectFiles('src', ['.ts', '.tsx', '.mjs']);
    const wrong = files.flatMap(({ path, text }) =>
      // A module without imports still has to stand in a room.
      [...importsOf(path, text), `./${posix.basename(path)}`].map((specifier) =>
        judgeImport(path, specifier),
      ),
    );
    expect(files.length).toBeGreaterThan(0);
    expect(wrong.filter((sentence) => sentence !== null).join('\n')).toBe('');
  });
});

describe('the judge of imports', () => {
  test.each([
    ['src/core/air/density.ts', './prandtl.ts'],
    ['src/core/fan/fanCurve.ts', '../solve/pchip.ts'],
    ['src/store/designStore.ts', '../io/designFile.ts'],
    ['src/model/design.ts', 'zod/mini'],
    ['src/cli/solve.ts', 'node:fs/promises'],
    ['src/main.tsx', './app/App.tsx'],
    ['src/main.tsx', 'react-dom/client'],
  ])('lets %s import %s', (path, specifier) => {
    expect(judgeImport(path, specifier)).toBe(null);
  });

  test.each([
    ['src/core/air/density.ts', '../../model/design.ts', 'core may not know model'],
    ['src/io/csv.ts', '../workers/sweep.ts', 'io may not know workers'],
    ['src/ui/Field.tsx', '../app/App.tsx', 'ui may not know app'],
    ['src/main.tsx', './ui/Field.tsx', 'may import app only'],
    ['src/lib/thing.ts', '../core/card.ts', 'is in no room'],
    ['src/core/card.ts', '../lib/thing.ts', 'which is in no room'],
    ['src/core/card.ts', '../../tests/helpers/layers.ts', 'which is in no room'],
    ['src/stray.ts', './core/card.ts', 'is in no room'],
    ['src/core/card.ts', 'zod', 'only model'],
    ['src/model/design.ts', 'react', 'only ui, app'],
    ['src/io/csv.ts', 'node:fs', 'only src/cli'],
    ['src/ui/Field.tsx', 'left-over', 'no room is known to use'],
  ])('stops %s from importing %s', (path, specifier, reason) => {
    expect(judgeImport(path, specifier)).toContain(reason);
  });
});

describe('the reader of imports', () => {
  test.each([
    ["import { a } from './a.ts';"],
    ["import type { A } from './a.ts';"],
    ["import './a.ts';"],
    ["export * from './a.ts';"],
    ["const later = () => import('./a.ts');"],
    ["let a: import('./a.ts').A;"],
    ["new Worker(new URL('./a.ts', import.meta.url), { type: 'module' });"],
  ])('sees %s', (text) => {
    expect(importsOf('src/core/x.tsx', text)).toEqual(['./a.ts']);
  });

  test('does not see comments and texts', () => {
    expect(
      importsOf(
        'x.ts',
        `// import './a.ts';\nconst text = "import './b.ts'";\nnew URL('../', import.meta.url);`,
      ),
    ).toEqual([]);
  });
});
