import '@testing-library/jest-dom/vitest';
import { cleanup, configure } from '@testing-library/react';
import { afterEach } from 'vitest';

// What comes a moment later comes much later on a busy machine; what never comes is still missed.
configure({ asyncUtilTimeout: 10_000 });
afterEach(cleanup);
