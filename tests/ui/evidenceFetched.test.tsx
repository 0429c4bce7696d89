import { render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { expect, test, vi } from 'vitest';
import { WhatIsItCheckedAgainst } from '../../src/ui/questions/WhatIsItCheckedAgainst.tsx';

const { loadChecks } = vi.hoisted(() => ({ loadChecks: vi.fn() }));
vi.mock('../../src/report/evidence/loadChecks.ts', () => ({ loadChecks }));

test('a list that cannot be fetched is said, and asked for again by a press', async () => {
  loadChecks.mockRejectedValueOnce(new Error('no network')).mockResolvedValueOnce([]);
  const user = userEvent.setup();
  render(<WhatIsItCheckedAgainst />);
  expect(screen.getByText('The checks are being fetched …')).toBeVisible();
  const again = await screen.findByRole('button', { name: 'Try again' });
  expect(screen.getByText('The checks could not be fetched.')).toBeVisible();
  await user.click(again);
  expect(await screen.findByText(/^The tests hold 0 numbers/)).toBeVisible();
});
