import '@testing-library/jest-dom/vitest';
import { cleanup, configure } from '@testing-library/react';
import { afterEach, vi } from 'vitest';
import { reportPool } from '../helpers/pools.ts';

// What comes a moment later comes much later on a busy machine; what never comes is still missed.
configure({ asyncUtilTimeout: 10_000 });
afterEach(cleanup);
vi.mock('../../src/workers/studies/browserPool.ts', () => ({ browserPool: () => reportPool }));

// jsdom walks the whole page for every label of the page to tell what labels one control: with hundreds of fields and
// buttons most of the time of these tests. The labels that are meant are those around it and those that name its id.
for (const { prototype } of [HTMLButtonElement, HTMLInputElement, HTMLSelectElement, HTMLTextAreaElement])
  Object.defineProperty(prototype, 'labels', {
    configurable: true,
    get(this: HTMLElement) {
      const around = this.closest('label');
      const naming = this.id === '' ? [] : document.querySelectorAll(`label[for=${JSON.stringify(this.id)}]`);
      return [...new Set([...(around && !around.htmlFor ? [around] : []), ...naming])];
    },
  });
