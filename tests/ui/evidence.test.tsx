import { render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { beforeAll, describe, expect, test } from 'vitest';
import { loadEvidence } from '../../src/ui/questions/evidence/keptEvidence.ts';
import { WhatIsItCheckedAgainst } from '../../src/ui/questions/WhatIsItCheckedAgainst.tsx';

// Loaded before, so that no test waits for them.
beforeAll(async () => {
  await Promise.all([loadEvidence(), import('../../src/ui/charts/EvidenceChart.tsx')]);
});

describe('What is it checked against?', () => {
  test('says what the checks come to, and what has not been measured', () => {
    render(<WhatIsItCheckedAgainst />);
    expect(screen.getByRole('heading', { level: 2 })).toHaveTextContent('What is it checked against?');
    expect(screen.getByText(/^The tests hold .* numbers that the methods give/)).toBeVisible();
    expect(screen.getByText(/^No box of this kind has been measured/)).toBeVisible();
    const table = screen.getByRole('table');
    expect(
      within(table)
        .getAllByRole('rowheader')
        .map((cell) => cell.textContent),
    ).toEqual([
      'Measured',
      'Handbook',
      'Worked example',
      'Computed elsewhere',
      'Worked again',
      'From memory',
      'All',
    ]);
  });

  test('is narrowed by kind and subject, and opens into single checks', async () => {
    const user = userEvent.setup();
    render(<WhatIsItCheckedAgainst />);
    await user.selectOptions(screen.getByRole('combobox', { name: 'Subject' }), 'Radiation');
    await user.selectOptions(screen.getByRole('combobox', { name: 'Kind' }), 'Worked example');
    expect(screen.getByRole('status')).toHaveTextContent(/^4 checks, .* of 1 source\.$/);
    await user.click(screen.getByText(/^Radiation: \d+ checks/));
    expect(screen.getAllByText(/Lienhard & Lienhard/).length).toBeGreaterThan(0);
    expect(screen.queryByText(/^Free convection:/)).toBe(null);
  });

  test('says when there is no such check', async () => {
    const user = userEvent.setup();
    render(<WhatIsItCheckedAgainst />);
    await user.selectOptions(screen.getByRole('combobox', { name: 'Subject' }), 'Units');
    await user.selectOptions(screen.getByRole('combobox', { name: 'Kind' }), 'Measured');
    expect(screen.getByRole('status')).toHaveTextContent('No check is of this kind and subject.');
  });
});
