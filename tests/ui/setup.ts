import '@testing-library/jest-dom/vitest';
import { cleanup, configure } from '@testing-library/react';
import { afterEach, vi } from 'vitest';
import { reportPool } from '../helpers/pools.ts';

// What comes a moment later comes much later on a busy machine; what never comes is still missed.
configure({ asyncUtilTimeout: 10_000 });
afterEach(cleanup);
vi.mock('../../src/workers/studies/browserPool.ts', () => ({ browserPool: () => reportPool }));
