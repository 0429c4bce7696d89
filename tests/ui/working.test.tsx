import { render, screen, within } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { describe, expect, test, vi } from 'vitest';
import { cards } from '../../src/core/cards.ts';
import type { FigureId } from '../../src/report/working/types.ts';
import { printAsked } from '../../src/ui/sheet/askWhatToPrint.ts';
import { Equation } from '../../src/ui/working/Equation.tsx';
import { FigureFinder } from '../../src/ui/working/FigureFinder.tsx';
import { Told } from '../../src/ui/working/Told.tsx';
import { Worked } from '../../src/ui/working/Worked.tsx';
import { WorkingView } from '../../src/ui/working/WorkingView.tsx';
import { sampleWorking } from '../helpers/sampleWorking.ts';

const raised = '⁰¹²³⁴⁵⁶⁷⁸⁹';

/** What is left of an equation when its marks of writing have become places: powers, lines, roots, indices, brackets. */
function letters(text: string): string {
  return [...text.normalize('NFC')]
    .map((each) =>
      raised.includes(each) ? raised.indexOf(each) : each === '⁻' ? '−' : each === '⁺' ? '+' : each,
    )
    .join('')
    .replaceAll(/[\s/^_√()[\]{}]/g, '')
    .replaceAll(/[₀-₉]/g, (digit) => `${'₀₁₂₃₄₅₆₇₈₉'.indexOf(digit)}`);
}

test.each(cards.map(({ id, equation }) => [id, equation]))(
  'the equation of %s is set whole, in MathML',
  (_, equation) => {
    const { container } = render(<Equation text={equation} />);
    const set = [...container.querySelectorAll('math')];
    expect(set.every(({ namespaceURI }) => namespaceURI?.endsWith('MathML'))).toBe(true);
    expect(letters(set.map(({ textContent }) => textContent).join(''))).toBe(letters(equation));
    expect(set.map((each) => each.getAttribute('alttext')).join('')).toBe(
      equation.normalize('NFC').replaceAll(/\s/g, ''),
    );
  },
);

test('a quotient has a line, a root a roof, and each equation a line of its own', () => {
  const { container } = render(<Equation text="η = tanh(m·H)/(m·H); m = √(2·h/(k·t)); of one fin" />);
  const [first, second, words] = container.querySelectorAll('math');
  expect(first?.querySelector('mfrac')?.textContent).toBe('tanh(m·H)m·H');
  expect(second?.querySelector('msqrt > mfrac')).not.toBeNull();
  expect(words?.parentElement).toBe(second?.parentElement);
  expect(first?.parentElement).not.toBe(second?.parentElement);
});

describe('a number', () => {
  test('is a button that says what it is, and names its figure', () => {
    render(<Worked id="film:3" text="151 °C" of="film of resistor 3" />);
    const button = screen.getByRole('button', { name: '151 °C, film of resistor 3: how is it computed?' });
    expect(button).toHaveTextContent(/^151 °C$/);
    expect(button).toHaveAttribute('data-figure', 'film:3');
  });

  test('without a working is text', () => {
    render(<Worked id={undefined} text="12 L/s" of="air moved" />);
    expect(screen.queryByRole('button')).toBeNull();
    expect(document.body).toHaveTextContent('12 L/s');
  });

  test('in a sentence stands where it stood', () => {
    const number = { text: '77 °C', figure: 'limit:film', of: 'film' };
    const { container } = render(<Told sentence="It reaches 77 °C, 3 K below." number={number} />);
    expect(container).toHaveTextContent('It reaches 77 °C, 3 K below.');
    expect(screen.getByRole('button')).toHaveTextContent(/^77 °C$/);
  });
});

function unfold(item: HTMLElement): void {
  const fold = item.querySelector('details');
  if (fold) fold.open = true;
}

describe('the working of a figure', () => {
  const show = (id: FigureId, fresh = true) => {
    const chosen: FigureId[] = [];
    render(
      <WorkingView report={sampleWorking} id={id} fresh={fresh} onChoose={(next) => chosen.push(next)} />,
    );
    return chosen;
  };

  test('begins with the step that gives it; those before it follow in order and unfold', async () => {
    show('film:1');
    const balance = screen.getByRole('article', { name: /^3\. Balance of heat/ });
    expect(balance).toHaveTextContent('A balance: no method of anybody’s');
    const before = within(screen.getByRole('list')).getAllByRole('listitem');
    expect(before.map((step) => step.textContent)).toEqual([
      '1. Density of air 1.16 kg/m³',
      '2. Efficiency of the finssink 1 92 %',
    ]);
    unfold(before[0] as HTMLElement);
    await screen.findByText(/^Sample, A book of air/);
    expect(before[0]?.querySelectorAll('math')[1]).toHaveTextContent('=1.161 kg/m³');
    expect(before[0]).toHaveTextContent('1013 hPa 101300 Pa');
  });

  test('tells in words where a design has left the range', () => {
    show('share:fins');
    expect(screen.getByRole('heading', { name: /outside its range$/ })).toBeInTheDocument();
    expect(screen.getByText(/free share 0.61 – outside/)).toBeInTheDocument();
  });

  test('leads from a value to the step that made it', async () => {
    show('film:1');
    Element.prototype.scrollIntoView = vi.fn();
    await userEvent.click(screen.getByRole('link', { name: 'step 2' }));
    expect(document.getElementById('working-step-2')?.closest('details')).toHaveAttribute('open');
    expect(location.hash).toBe('');
  });

  test('goes on to its neighbours, and to any other figure', async () => {
    const chosen = show('share:fins');
    await userEvent.click(screen.getByRole('button', { name: 'Previous' }));
    await userEvent.click(screen.getByRole('button', { name: 'Next' }));
    await userEvent.selectOptions(screen.getByRole('combobox', { name: 'Figure' }), 'flow');
    expect(chosen).toEqual(['film:1', 'flow', 'flow']);
  });

  test('says that the design has changed while the new answer is on its way', () => {
    show('flow', false);
    expect(screen.getByText(/^The design has changed/)).toBeInTheDocument();
  });

  test('offers others where a number has none', () => {
    show('nowhere:9');
    expect(screen.getByText(/no working for this number/)).toBeInTheDocument();
    expect(screen.getByRole('combobox', { name: 'Figure' })).toHaveDisplayValue('Choose a figure');
  });

  test('is copied as text, and says so; where the browser forbids it, the text stands there to take', async () => {
    const user = userEvent.setup();
    show('film:1');
    await user.click(screen.getByRole('button', { name: 'Copy as text' }));
    expect(await screen.findByText('Copied.')).toBeInTheDocument();
    const copied = await navigator.clipboard.readText();
    expect(copied).toContain('Film of resistor 1');
    vi.spyOn(navigator.clipboard, 'writeText').mockRejectedValue(new Error('no'));
    await user.click(screen.getByRole('button', { name: 'Copy as text' }));
    expect(await screen.findByRole('textbox', { name: 'The working as text' })).toHaveValue(copied);
    expect(screen.getByText(/does not let the page copy/)).toBeInTheDocument();
  });

  test('is printed with its pages ticked', async () => {
    const pages: unknown[] = [];
    const listen = (event: Event) => {
      event.preventDefault();
      pages.push((event as CustomEvent).detail);
    };
    window.addEventListener(printAsked, listen);
    show('flow');
    await userEvent.click(screen.getByRole('button', { name: 'Print…' }));
    window.removeEventListener(printAsked, listen);
    expect(pages).toEqual([['working']]);
  });
});

test('figures are found by the words of their titles and by their values', async () => {
  render(<FigureFinder figures={sampleWorking.figures} />);
  expect(screen.getByText('3 figures')).toBeInTheDocument();
  await userEvent.type(screen.getByRole('searchbox', { name: 'Find a figure' }), 'AIR 71');
  expect(await screen.findByText('1 of 3 figures')).toBeInTheDocument();
  expect(screen.getByRole('button', { name: /^71 %, Air through the fins/ })).toBeInTheDocument();
});
