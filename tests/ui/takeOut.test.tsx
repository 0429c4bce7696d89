import { render, screen } from '@testing-library/react';
import userEvent from '@testing-library/user-event';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import { readCsv } from '../../src/io/csv.ts';
import { tableFile } from '../../src/io/tableFile.ts';
import { reportJson } from '../../src/report/reportJson.ts';
import { limitsTable, reportTables } from '../../src/report/tables.ts';
import { Questions } from '../../src/ui/questions/Questions.tsx';
import { TableTwin } from '../../src/ui/questions/TableTwin.tsx';
import { WillItHoldMore } from '../../src/ui/questions/WillItHoldMore.tsx';
import { readColour } from '../../src/ui/takeOut/colour.ts';
import { SaveRow } from '../../src/ui/takeOut/SaveRow.tsx';
import { TakeAway } from '../../src/ui/takeOut/TakeAway.tsx';
import { TakeOutContext } from '../../src/ui/takeOut/TakeOutContext.ts';
import { BenchAround } from '../helpers/BenchAround.tsx';
import { sampleExample } from '../helpers/sampleReport.ts';

const { report, outcome } = sampleExample('eightResistors');
const shown = { report, outcome };
let saved: { readonly name: string; readonly text: string; readonly type: string }[] = [];

beforeEach(() => {
  let blob: Blob | null = null;
  URL.createObjectURL ??= () => '';
  URL.revokeObjectURL ??= () => {};
  vi.spyOn(URL, 'createObjectURL').mockImplementation((content) => {
    blob = content as Blob;
    return 'blob:test';
  });
  vi.spyOn(URL, 'revokeObjectURL').mockReturnValue();
  vi.spyOn(HTMLAnchorElement.prototype, 'click').mockImplementation(function (this: HTMLAnchorElement) {
    const name = this.download;
    const { type } = blob ?? { type: '' };
    const reader = new FileReader();
    // As bytes, for reading as text takes a byte order mark away.
    reader.onload = () => {
      const text = new TextDecoder('utf-8', { ignoreBOM: true }).decode(reader.result as ArrayBuffer);
      saved.push({ name, text, type });
    };
    if (blob) reader.readAsArrayBuffer(blob);
  });
});
afterEach(() => {
  saved = [];
  vi.restoreAllMocks();
});

async function savedBy(name: string) {
  await userEvent.click(screen.getByRole('button', { name }));
  await vi.waitFor(() => expect(saved).toHaveLength(1));
  return saved[0];
}

describe('a table', () => {
  test('is saved under the title of the design and its own name, as bare numbers', async () => {
    const table = limitsTable(report);
    render(
      <TakeOutContext value={shown}>
        <TableTwin table={table} open />
      </TakeOutContext>,
    );
    const file = await savedBy(`Save as CSV: ${table.caption}`);
    expect(file?.name).toBe('eight-in-a-row-b-limits.csv');
    expect(file?.type).toBe('text/csv;charset=utf-8');
    expect(file?.text).toBe(tableFile(table));
    const read = readCsv(file?.text ?? '');
    expect(read.ok && read.table.rows.length).toBe(table.rows.length + 1);
  });

  test('shows no way to save it where there is nothing to take out of', () => {
    render(<TableTwin table={limitsTable(report)} open />);
    expect(screen.queryByRole('button', { name: /^Save/ })).toBeNull();
  });

  test('is offered wherever it is shown, each once, and every figure as a picture', () => {
    const { container } = render(
      <TakeOutContext value={shown}>
        <WillItHoldMore report={report} />
        <Questions report={report} />
      </TakeOutContext>,
      { wrapper: BenchAround },
    );
    const labels = [...container.querySelectorAll('section > table')].map(
      (table) => table.parentElement?.getAttribute('aria-label') ?? '',
    );
    expect(labels.length).toBeGreaterThan(15);
    const rows = [...container.querySelectorAll('section + [data-unpainted] > button')];
    expect(rows.map((button) => button.getAttribute('aria-label'))).toEqual(
      labels.map((label) => `Save as CSV: ${label}`),
    );
    const figures = [...container.querySelectorAll('figure')];
    expect(figures.length).toBeGreaterThan(6);
    for (const figure of figures) {
      const kinds = [...figure.querySelectorAll('button:not([data-figure])')].map(
        ({ textContent }) => textContent,
      );
      // Panels are many in one table.
      const isPanel = figure.textContent?.includes('measures in') ?? false;
      expect(kinds).toEqual(isPanel ? ['SVG', 'PNG'] : ['SVG', 'PNG', 'CSV']);
    }
  });
});

describe('the whole report', () => {
  test('is saved as the JSON that the terminal prints', async () => {
    render(
      <TakeOutContext value={shown}>
        <TakeAway />
      </TakeOutContext>,
    );
    const file = await savedBy('Report as JSON');
    expect(file?.name).toBe('eight-in-a-row-b-report.json');
    expect(file?.text).toBe(reportJson(report, outcome));
  });

  test('is saved as one file of all tables', async () => {
    render(
      <TakeOutContext value={shown}>
        <TakeAway />
      </TakeOutContext>,
    );
    const file = await savedBy('All tables as CSV');
    expect(file?.name).toBe('eight-in-a-row-b-tables.csv');
    for (const table of reportTables(report)) expect(file?.text).toContain(tableFile(table).slice(1));
  });
});

test('a picture that the browser does not draw is told in a sentence', async () => {
  render(
    <TakeOutContext value={shown}>
      <figure>
        <SaveRow id="limits" caption="Limits" picture />
      </figure>
    </TakeOutContext>,
  );
  vi.spyOn(XMLSerializer.prototype, 'serializeToString').mockImplementation(() => {
    throw new Error('refused');
  });
  await userEvent.click(screen.getByRole('button', { name: 'Save as SVG: Limits' }));
  await screen.findByText('This browser could not draw the picture.');
  await userEvent.click(screen.getByRole('button', { name: 'Save as PNG: Limits' }));
  await screen.findByText('This browser could not paint the PNG. The SVG shows the same.');
  expect(saved).toEqual([]);
});

describe('a colour of a style sheet', () => {
  test.each([
    ['rgb(29, 109, 146)', '#1d6d92', 1],
    ['rgba(0, 0, 0, 0)', '#000000', 0],
    ['transparent', '#000000', 0],
    ['rgb(255 255 255 / 0.5)', '#ffffff', 0.5],
    ['color(srgb 1 0.5 0)', '#ff8000', 1],
    // White, red, green and blue in Oklab, from memory; the pictures are compared with the browser's own painting.
    ['oklab(1 0 0)', '#ffffff', 1],
    ['oklab(0.627955 0.224863 0.125846)', '#ff0000', 1],
    ['oklab(0.51975 -0.1403 0.10768)', '#008000', 1],
    ['oklab(0.452014 -0.032457 -0.311528 / 0.25)', '#0000ff', 0.25],
  ])('%s is %s', (css, hex, alpha) => {
    expect(readColour(css)).toEqual({ hex, alpha });
  });

  test.each(['', 'var(--ink)', 'light-dark(#fff, #000)'])('is not %j', (css) => {
    expect(() => readColour(css)).toThrow('is no colour');
  });
});
