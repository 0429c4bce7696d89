import { describe, expect, test } from 'vitest';
import { readHead } from '../../../src/io/columnHead.ts';
import { readColumns, withUnit } from '../../../src/io/columns.ts';

const columnsOf = (text: string) => {
  const read = readColumns(text);
  if (!read.ok) throw new Error(read.reason);
  return read.columns;
};
const reasonFor = (text: string) => {
  const read = readColumns(text);
  return read.ok ? 'read' : read.reason;
};

describe('the head of a column', () => {
  test.each([
    ['Q (m³/h)', 'Q', 'm³/h'],
    ['flow [cfm]', 'flow', 'cfm'],
    ['flow {l/s}', 'flow', 'l/s'],
    ['static pressure / Pa', 'static pressure', 'Pa'],
    ['p/Pa', 'p', 'Pa'],
    ['Q/(m³/h)', 'Q', 'm³/h'],
    ['Q / m³/h', 'Q', 'm³/h'],
    ['p in mmH2O', 'p', 'mmH2O'],
    ['p in H2O', 'p', 'in H2O'],
    ['p [in H2O]', 'p', 'in H2O'],
    ['p (in Pa)', 'p', 'Pa'],
    ['Flow, l/s', 'Flow', 'l/s'],
    ['Pressure: Pa', 'Pressure', 'Pa'],
    ['Airflow – m³/h', 'Airflow', 'm³/h'],
    ['flow m3/h', 'flow', 'm3/h'],
    ['flow cu ft/min', 'flow', 'cu ft/min'],
    ['T_film_°C', 'T_film', '°C'],
    ['dp_Pa', 'dp', 'Pa'],
    ['R (kΩ)', 'R', 'kΩ'],
    ['R, Ω', 'R', 'Ω'],
    ['gap (in)', 'gap', 'in'],
    ['time [min]', 'time', 'min'],
    ['k [W/(m·K)]', 'k', 'W/(m·K)'],
    ['k W/(m·K)', 'k', 'W/(m·K)'],
    ['slope Pa/(m/s)', 'slope', 'Pa/(m/s)'],
    ['power [W] at 12 V', 'power at 12 V', 'W'],
    ['p ("H2O)', 'p', '"H2O'],
    ['p (static) [Pa]', 'p (static)', 'Pa'],
    ['  n\n (1/min) ', 'n', '1/min'],
    ['m³/h', 'm³/h', 'm³/h'],
    ['[Pa]', 'Pa', 'Pa'],
  ])('%j is %j in %j', (written, name, unit) => {
    expect(readHead(written)).toMatchObject({ name, unit });
  });

  test.each([
    'T_in',
    'gap in',
    'Time min',
    'Resistor R',
    'Thermocouple K',
    'film_K',
    'V',
    'b, c',
    'p, total',
    'p [mmWS]',
    'Q [m³/h] (cfm)',
    'plain',
    '',
    '('.repeat(300),
  ])('%j names no unit for certain', (written) => {
    expect(readHead(written)).toEqual({ name: written, unit: null, written });
  });
});

describe('a cell with the unit of its column', () => {
  test.each([
    ['12,5', 'm³/h', '12,5 m³/h'],
    ['−3', 'Pa', '−3 Pa'],
    ['1/16', 'in', '1/16 in'],
    ['2e-3', 'Pa', '2e-3 Pa'],
    ['1,234', 'Pa', '1,234 Pa'],
    ['12.5 cfm', 'm³/h', '12.5 cfm'],
    ['4k7', 'Ω', '4k7'],
    ['sixty', 'Pa', 'sixty'],
    ['', 'Pa', ''],
    ['60', null, '60'],
  ])('%j under %j is %j', (cell, unit, whole) => {
    expect(withUnit(cell, unit)).toBe(whole);
  });
});

describe('columns', () => {
  test('have names and units, and every row its line', () => {
    expect(columnsOf('# c\nQ [m³/h];p;\n\n0;60;\n"1\n0";40;\n30;0;')).toEqual({
      head: [
        { name: 'Q', unit: 'm³/h', written: 'Q [m³/h]' },
        { name: 'p', unit: null, written: 'p' },
      ],
      rows: [
        ['0', '60'],
        ['1\n0', '40'],
        ['30', '0'],
      ],
      lines: [4, 5, 7],
      separator: ';',
      decimal: null,
    });
  });

  test('take a line of units under their names, and keep a unit that a name has itself', () => {
    const { head, lines } = columnsOf('Q\tp [Pa]\tn\n(m³/h)\t\t–\n0\t60\t1');
    expect(head?.map(({ unit }) => unit)).toEqual(['m³/h', 'Pa', null]);
    expect(lines).toEqual([3]);
  });

  test('have no head where the first line holds a value, or none below does', () => {
    expect(columnsOf('0 m³/h;60\n1;5').head).toBeNull();
    expect(columnsOf('Part A;yes\nPart B;no').head).toBeNull();
  });

  test('do without what stands above them', () => {
    expect(columnsOf('Fan A, 80 mm\n12 V\nQ;p\n0;60').rows).toEqual([['0', '60']]);
  });

  test('settle a number that could be two by the others', () => {
    expect(columnsOf('1,234\t0,5\n1.234\t2').rows[0]).toEqual(['1.234', '0,5']);
    expect(columnsOf('1,234\t0.5').rows[0]).toEqual(['1234', '0.5']);
    expect(columnsOf('1.234;0,5').rows[0]).toEqual(['1234', '0,5']);
    expect(columnsOf('1,234\t5').rows[0]).toEqual(['1,234', '5']);
    expect(columnsOf('1,234\t0.5\t0,5').rows[0]).toEqual(['1,234', '0.5', '0,5']);
    expect(columnsOf("1'234.5\t2").rows[0]).toEqual(['1234.5', '2']);
  });

  test('are refused where a line does not fit them, with its number', () => {
    expect(reasonFor('Q;p\n\n0;60\n1;2;3')).toBe('Line 4 has 3 cells, and the head 2.');
    expect(reasonFor('0 60\n1 5\n2')).toBe('Line 3 has one cell, and the first line 2.');
    expect(reasonFor('Q m3/h p Pa\n0 60\n1 5')).toBe('Line 2 has 2 cells, and the head 4.');
    expect(reasonFor('Q;p\n0;60;;\n1;5')).toBe('read');
  });
});
