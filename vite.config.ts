import react from '@vitejs/plugin-react';
import { defineConfig } from 'vitest/config';
import { offlineBuild } from './src/cli/offlineBuild.mjs';

/** The built page may load from its own folder and nowhere else; nothing inline, nothing evaluated. */
const policy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' blob: data:",
  "font-src 'self'",
  "connect-src 'self'",
  "worker-src 'self'",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
].join('; ');

/** Only in the build: the development server needs inline styles and scripts. */
const contentPolicy = {
  name: 'content-policy',
  apply: 'build',
  transformIndexHtml: () => [
    {
      tag: 'meta',
      attrs: { 'http-equiv': 'Content-Security-Policy', content: policy },
      injectTo: 'head-prepend',
    },
  ],
} as const;

const record = /\nexport const card = defineCard\([\s\S]*?\n\}\);\n/;

/**
 * A method and its record stand in one file, and the page needs the method at once but the record's text only with the
 * report. In the build a file's record is a module of its own, so that it can come later.
 */
const recordsLater = {
  name: 'records-later',
  apply: 'build',
  enforce: 'pre',
  transform: (code: string, id: string) => {
    const [file = '', query] = id.split('?');
    if (!/\/src\/(core|report)\/.*\.ts$/.test(file)) return null;
    const apart = code.replace(
      /(import \{[^}]*\bcard as \w+[^}]*\} from '\.[^']*\.ts)'/g,
      (_, before: string) => `${before}?record'`,
    );
    return query === 'record' ? apart : apart.replace(record, '\n');
  },
} as const;

export default defineConfig({
  base: './',
  plugins: [react(), contentPolicy, recordsLater, offlineBuild()],
  build: {
    // The first versions with light-dark(), so that the style sheets stay as written.
    target: ['chrome123', 'edge123', 'firefox120', 'safari17.5'],
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    rolldownOptions: {
      output: {
        comments: false,
        // What the first answer needs is one file; cut up along what later parts share, it would pack worse.
        codeSplitting: { groups: [{ name: 'first', tags: ['$initial'] }] },
      },
    },
  },
  test: {
    reporters: ['default', './tests/helpers/evidence/reporter.ts'],
    projects: [
      {
        test: {
          name: 'core',
          // No module of the core holds anything between tests.
          isolate: false,
          environment: 'node',
          // A busy machine may take long over a law; what never ends is still missed.
          testTimeout: 30_000,
          include: ['tests/{unit,published,property,meta,golden}/**/*.test.ts'],
        },
      },
      {
        extends: true,
        test: {
          name: 'ui',
          environment: 'jsdom',
          include: ['tests/ui/**/*.test.tsx'],
          // A busy machine may take long over a page of jsdom.
          testTimeout: 30_000,
          setupFiles: ['tests/ui/setup.ts'],
          css: { modules: { classNameStrategy: 'non-scoped' } },
        },
      },
      {
        extends: true,
        test: {
          name: 'browser',
          environment: 'node',
          include: ['tests/{browser,print}/**/*.test.ts'],
          globalSetup: ['tests/browser/serveDist.ts'],
          maxWorkers: 2,
          // A busy machine may take longer over a page; what never comes is still missed.
          expect: { poll: { timeout: 15_000 } },
          testTimeout: 60_000,
          hookTimeout: 60_000,
        },
      },
    ],
  },
});
