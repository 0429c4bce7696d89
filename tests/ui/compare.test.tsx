import { render, screen, waitFor, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, test, vi } from 'vitest';
import { Compare } from '../../src/ui/questions/Compare.tsx';
import { BenchAround } from '../helpers/BenchAround.tsx';
import { fakeBrowser } from '../helpers/fakeBrowser.ts';
import { promptPool } from '../helpers/pools.ts';

const question = () => screen.getByRole('region', { name: 'Which of these designs?' });
const table = () => within(question()).findByRole('region', { name: 'Designs side by side' });

/** A browser that keeps a family of variants, each with another side clearance. */
async function family(variants: readonly string[], browser = fakeBrowser()) {
  const tab = browser.openTab();
  for (const [i, variant] of variants.entries()) {
    await tab.keeper.makeVariant(variant);
    tab.act.setText('baffle.sideClearance_m', `${1 + i / 10} mm`);
    await tab.keeper.flush();
  }
  const open = vi.fn();
  render(
    <BenchAround store={tab.store} pool={promptPool} keeper={tab.keeper} open={open}>
      <Compare />
    </BenchAround>,
  );
  return { ...tab, ...browser, open, user: userEvent.setup() };
}

describe('designs side by side', () => {
  test('are none where nothing is kept, but one press makes a second', async () => {
    const { user, store } = await family([]);
    expect(question()).toHaveTextContent('There is nothing to compare with yet');
    await user.click(await screen.findByRole('button', { name: /go on as a variant/ }));
    await waitFor(() => expect(store.getState().design.variant).toBe('B'));
    expect(await table()).toHaveTextContent('Eight in a row · B');
    expect(question()).toHaveTextContent('No input differs between them');
  });

  test('are the variants of the one on the bench, which stands first', async () => {
    await family(['B', 'C']);
    const heads = within(await table()).getAllByRole('columnheader');
    expect(heads.map((head) => head.textContent)).toEqual([
      'A Eight in a row · C',
      'B Eight in a row · B',
      'C Eight in a row',
    ]);
    const row = within(await table()).getByRole('row', { name: /^Baffle: side clearance/ });
    expect(row).toHaveTextContent(/1\.1\smm1\smm0\.8\smm/);
    expect(await table()).toHaveTextContent(/coolest/);
    expect(await table()).toHaveTextContent(/hottest/);
    expect(question().children[1]?.textContent).toMatch(/^(B and C are|C is) coolest: .* below A/);
  });

  test('are chosen and left out, never more than six', async () => {
    const { user } = await family(['B', 'C', 'D', 'E', 'F', 'G', 'H']);
    const sideBySide = await table();
    const heads = () => within(sideBySide).getAllByRole('columnheader');
    expect(heads()).toHaveLength(6);
    const boxes = within(question()).getAllByRole('checkbox');
    expect(boxes.filter((box) => (box as HTMLInputElement).checked)).toHaveLength(6);
    expect(boxes.at(-1)).toBeDisabled();
    await user.click(screen.getByRole('checkbox', { name: /Eight in a row · D/ }));
    await waitFor(() => expect(heads()).toHaveLength(5));
    expect(boxes.at(-1)).toBeEnabled();
  });

  test('are opened from here', async () => {
    const { user, open } = await family(['B']);
    await user.click(await screen.findByRole('button', { name: 'Open Eight in a row' }));
    expect(open).toHaveBeenCalledWith(expect.any(String), 'Eight in a row');
  });

  test('that cannot be read are told, with the reason', async () => {
    const browser = fakeBrowser();
    browser.strange.push({
      id: 'x',
      content: { solvedDesign: { format: 'throughfin-design', version: 99, title: 'Of next year' } },
    });
    await family(['B'], browser);
    expect(await within(question()).findByText(/“Of next year” cannot be read/)).toHaveTextContent(/version/);
  });

  test('are none where the browser refuses', async () => {
    const browser = fakeBrowser();
    browser.setTrouble(new Error('no'));
    await family([], browser);
    expect(await within(question()).findByText(/keeps no designs here/)).toBeInTheDocument();
  });
});
