import { describe, expect, test } from 'vitest';
import { type Dimension, dimensionNames, dimensions } from '../../../src/units/dimensions.ts';
import { describeProblem, type ParseProblem, parseQuantity } from '../../../src/units/parseQuantity.ts';

const inMetric = (text: string, dimension: Dimension) =>
  parseQuantity(text, dimension, dimensions[dimension].metric);

function problemOf(text: string, dimension: Dimension = 'length'): ParseProblem {
  const read = inMetric(text, dimension);
  if (read.ok) throw new Error(`${text} was read as ${read.value}`);
  return read;
}

describe('a quantity as people type it', () => {
  const inch = 0.0254;
  test.each<[string, Dimension, number, string]>([
    ['1/16 in', 'length', 0.0015875, 'in'],
    ['1 1/2 in', 'length', 1.5 * inch, 'in'],
    ['1-1/2"', 'length', 1.5 * inch, '"'],
    ['0.0625"', 'length', 0.0015875, '"'],
    ['0.0625″', 'length', 0.0015875, '"'],
    ["0.5''", 'length', 0.5 * inch, '"'],
    ['1.6 mm', 'length', 0.0016, 'mm'],
    ['1,6 mm', 'length', 0.0016, 'mm'],
    ['1.6', 'length', 0.0016, 'mm'],
    ['  1.6mm\u00a0', 'length', 0.0016, 'mm'],
    ['.8 mm', 'length', 0.0008, 'mm'],
    [',8 mm', 'length', 0.0008, 'mm'],
    ['+3. mm', 'length', 0.003, 'mm'],
    ['50 µm', 'length', 50e-6, 'um'],
    ['50 μm', 'length', 50e-6, 'um'],
    ['50 um', 'length', 50e-6, 'um'],
    ['5 thou', 'length', 0.000127, 'mil'],
    ['5 MM', 'length', 0.005, 'mm'],
    ['3 Inches', 'length', 3 * inch, 'in'],
    ['3 in.', 'length', 3 * inch, 'in'],
    ['1e-3 m', 'length', 0.001, 'm'],
    ['3 × 10^-3 m', 'length', 0.003, 'm'],
    ['3·10⁻³ m', 'length', 0.003, 'm'],
    ['½ in', 'length', 0.5 * inch, 'in'],
    ['1½ in', 'length', 1.5 * inch, 'in'],
    ['1 ⅝"', 'length', 1.625 * inch, '"'],
    ['3⁄4 in', 'length', 0.75 * inch, 'in'],
    ["5'", 'length', 60 * inch, "'"],
    ['2 ft 3 in', 'length', 27 * inch, 'in'],
    ['2ft3in', 'length', 27 * inch, 'in'],
    ['2\' 3"', 'length', 27 * inch, '"'],
    ['2\'-3 1/2"', 'length', 27.5 * inch, '"'],
    ['-2 ft 3 in', 'length', -27 * inch, 'in'],
    ['1 000', 'length', 1, 'mm'],
    ['1 000,5', 'length', 1.0005, 'mm'],
    ['1\u202f000.5 mm', 'length', 1.0005, 'mm'],
    ['12 345 678', 'length', 12345.678, 'mm'],
    ['0,062', 'length', 0.000062, 'mm'],
    ['1,0625', 'length', 0.0010625, 'mm'],
    ['1,234.5', 'length', 1.2345, 'mm'],
    ['1.234,5', 'length', 1.2345, 'mm'],
    ['1,234,567', 'length', 1234.567, 'mm'],
    ['1.234.567', 'length', 1234.567, 'mm'],
    ['35 cfm', 'volumeFlow', (35 * 0.3048 ** 3) / 60, 'cfm'],
    ['35 CFM', 'volumeFlow', (35 * 0.3048 ** 3) / 60, 'cfm'],
    ['36 m³/h', 'volumeFlow', 0.01, 'm3/h'],
    ['36 m^3 / h', 'volumeFlow', 0.01, 'm3/h'],
    ['36 m3/h', 'volumeFlow', 0.01, 'm3/h'],
    ['6 L/s', 'volumeFlow', 0.006, 'l/s'],
    ['0.12 inH2O', 'pressure', 0.12 * 25.4 * 9.80665, 'inH2O'],
    ['0.12 in H₂O', 'pressure', 0.12 * 25.4 * 9.80665, 'inH2O'],
    ['0.12" w.g.', 'pressure', 0.12 * 25.4 * 9.80665, 'inH2O'],
    ['3 mmWG', 'pressure', 3 * 9.80665, 'mmH2O'],
    ['104 °F', 'temperature', 313.15, 'degF'],
    ['25 C', 'temperature', 298.15, 'degC'],
    ['25 deg C', 'temperature', 298.15, 'degC'],
    ['25℃', 'temperature', 298.15, 'degC'],
    ['−5 °C', 'temperature', 268.15, 'degC'],
    ['300 K', 'temperature', 300, 'K'],
    ['25 C', 'temperatureDifference', 25, 'degC'],
    ['18 °F', 'temperatureDifference', 10, 'degF'],
    ['10 Ω', 'resistance', 10, 'ohm'],
    ['10 Ω', 'resistance', 10, 'ohm'],
    ['10 ohms', 'resistance', 10, 'ohm'],
    ['10R', 'resistance', 10, 'ohm'],
    ['4k7', 'resistance', 4700, 'kohm'],
    ['4k7 Ω', 'resistance', 4700, 'kohm'],
    ['4R7', 'resistance', 4.7, 'ohm'],
    ['2m2', 'resistance', 0.0022, 'mohm'],
    ['2M2', 'resistance', 2.2e6, 'Mohm'],
    ['10 k', 'resistance', 10e3, 'kohm'],
    ['10 MΩ', 'resistance', 10e6, 'Mohm'],
    ['10 mΩ', 'resistance', 0.01, 'mohm'],
    ['3V3', 'voltage', 3.3, 'V'],
    ['-12 V', 'voltage', -12, 'V'],
    ['250 mW', 'power', 0.25, 'mW'],
    ['5 %', 'ratio', 0.05, '%'],
    ['5', 'ratio', 0.05, '%'],
    ['200 ppm', 'ratio', 0.0002, 'ppm'],
    ['25 ppm/°C', 'temperatureCoefficient', 25e-6, 'ppm/K'],
    ['0.02 ppm/K²', 'squareTemperatureCoefficient', 2e-8, 'ppm/K2'],
    ['0.02', 'squareTemperatureCoefficient', 2e-8, 'ppm/K2'],
    ['2e-8 1/K^2', 'squareTemperatureCoefficient', 2e-8, '1/K2'],
    ['-2·10⁻⁸ K⁻²', 'squareTemperatureCoefficient', -2e-8, '1/K2'],
    ['2.42', 'volumetricHeatCapacity', 2.42e6, 'J/(cm3 K)'],
    ['2.42 J/(cm³·K)', 'volumetricHeatCapacity', 2.42e6, 'J/(cm3 K)'],
    ['2420 kJ/m³K', 'volumetricHeatCapacity', 2.42e6, 'kJ/(m3 K)'],
    ['2420000 J/(m^3 K)', 'volumetricHeatCapacity', 2.42e6, 'J/(m3 K)'],
    // One BTU per pound and °F is 4186.8 J/(kg·K), one pound per cubic foot 0.45359237/0.3048³ kg/m³; both exact.
    ['1 BTU/(ft³·°F)', 'volumetricHeatCapacity', (4186.8 * 0.45359237) / 0.3048 ** 3, 'BTU/(ft3 degF)'],
    ['1013 hPa', 'airPressure', 101_300, 'hPa'],
    ['1013', 'airPressure', 101_300, 'hPa'],
    // Mercury of 13 595.1 kg/m³ at 9.80665 m/s², the conventional values.
    ['30 inHg', 'airPressure', 30 * 0.0254 * 13_595.1 * 9.80665, 'inHg'],
    ['750 mmHg', 'airPressure', 0.75 * 13_595.1 * 9.80665, 'mmHg'],
    ['1.5', 'distance', 1.5, 'm'],
    ['5 ft', 'distance', 1.524, 'ft'],
    ['1 W/mK', 'conductivity', 1, 'W/(m K)'],
    ['1 W/(m·K)', 'conductivity', 1, 'W/(m K)'],
    ['1 W·m⁻¹·K⁻¹', 'conductivity', 1, 'W/(m K)'],
    ['0.5 K·cm²/W', 'contactResistance', 0.5e-4, 'K cm2/W'],
    ['5 mm²K/W', 'contactResistance', 5e-6, 'mm2 K/W'],
    ['1200 1/min', 'rotation', 20, 'rpm'],
    ['1 h 30 min', 'time', 5400, 'min'],
    ['45°', 'angle', Math.PI / 4, 'deg'],
    ['28 dB(A)', 'soundLevel', 28, 'dBA'],
    ['4 Pa/(m/s)', 'pressurePerSpeed', 4, 'Pa s/m'],
  ])('%j as %s is read', (text, dimension, value, unit) => {
    const read = inMetric(text, dimension);
    expect(read).toMatchObject({ ok: true, unit });
    // A few roundings of a double.
    expect(read.ok && Math.abs(read.value - value)).toBeLessThanOrEqual(4e-16 * Math.abs(value));
  });

  test('takes a bare number in the unit of the field', () => {
    expect(parseQuantity('1/16', 'length', 'in')).toEqual({ ok: true, value: 0.0015875, unit: 'in' });
    expect(parseQuantity('50', 'temperature', 'degF')).toEqual({ ok: true, value: 283.15, unit: 'degF' });
  });

  test('is never minus nothing', () => {
    for (const text of ['-0', '−0 mm', '-0,0'])
      expect(inMetric(text, 'length')).toEqual({ ok: true, value: 0, unit: 'mm' });
  });

  test('tells milli from mega by the case alone, and takes neither for the other', () => {
    expect(inMetric('3 mV', 'voltage')).toMatchObject({ value: 0.003 });
    expect(problemOf('3 MV', 'voltage').reason).toBe('unknownUnit');
    expect(problemOf('3 MW', 'power').reason).toBe('unknownUnit');
    expect(inMetric('3 M', 'resistance')).toMatchObject({ value: 3e6 });
    expect(problemOf('3 m', 'resistance').reason).toBe('otherDimension');
  });
});

describe('a text that is no such quantity', () => {
  test.each<[string, ParseProblem['reason'], Dimension?]>([
    ['', 'empty'],
    [' \t\u00a0\u200b', 'empty'],
    ['long', 'notANumber'],
    ['NaN', 'notANumber'],
    ['Infinity', 'notANumber'],
    ['∞ mm', 'notANumber'],
    ['-', 'notANumber'],
    ['--5', 'notANumber'],
    ['1.2.3', 'notANumber'],
    ['1,2,3', 'notANumber'],
    ['1,23,456', 'notANumber'],
    ['1.234,5,6', 'notANumber'],
    ['5,', 'notANumber'],
    ['0 500', 'notANumber'],
    ['12 34', 'notANumber'],
    ['1.5 1/2', 'notANumber'],
    ['3-5 mm', 'notANumber'],
    ['10 - 3/4 in', 'notANumber'],
    ['2²', 'notANumber'],
    ['3±1 mm', 'notANumber'],
    ['9'.repeat(101), 'notANumber'],
    ['0x10', 'unknownUnit'],
    ['0x1F mm', 'unknownUnit'],
    ['2 mmm', 'unknownUnit'],
    ['5 m m m m', 'severalUnits'],
    ['5 mm mm', 'severalUnits'],
    ['5 mm in', 'severalUnits'],
    ['3 in 2 ft', 'severalUnits'],
    ['2 ft 1,250 in', 'severalUnits'],
    ['2 ft 3', 'unknownUnit'],
    ['5 toString', 'unknownUnit'],
    ['5constructor7', 'unknownUnit', 'resistance'],
    ['mm', 'noNumber'],
    ['1/0 mm', 'divisionByZero'],
    ['1 1/0 mm', 'divisionByZero'],
    ['1e999 mm', 'tooLarge'],
    ['9'.repeat(50).concat('e290'), 'tooLarge'],
    ['1e308 kV', 'tooLarge', 'voltage'],
    ['1e-999 mm', 'tooSmall'],
    ['4e-324 mm', 'tooSmall'],
    ['12 cfm', 'otherDimension'],
    ['25 C', 'otherDimension'],
    ['1,000', 'ambiguous'],
    ['12,500 mm', 'ambiguous'],
    ['-1,250', 'ambiguous'],
    ['4E7', 'ambiguous', 'resistance'],
  ])('%j is refused as %s', (text, reason, dimension) => {
    expect(problemOf(text, dimension).reason).toBe(reason);
  });

  test('says which other quantity it is', () => {
    expect(describeProblem(problemOf('12 cfm'))).toBe(
      '«12 cfm» is a flow; this field takes a length, such as 1.6 mm or 1/16 in.',
    );
    expect(problemOf('25 °C')).toMatchObject({ found: 'temperature' });
    expect(problemOf('30 Pa', 'volumeFlow')).toMatchObject({ found: 'pressure' });
  });

  test('says both readings of a comma, and either of them is read', () => {
    const problem = problemOf('1,250');
    expect(describeProblem(problem)).toBe(
      '«1,250» can be read as 1250 or as 1.250. Write one of these instead.',
    );
    expect(inMetric('1250', 'length')).toMatchObject({ value: 1.25 });
    expect(inMetric('1.250', 'length')).toMatchObject({ value: 0.00125 });
  });

  test('is worded in a sentence that shows it shortly and on one line', () => {
    const long = describeProblem(problemOf(`a\n\u0007b${'c'.repeat(90)}`));
    expect(long).toMatch(/^«a bc{36}…» is not a number; this field takes /);
    for (const text of ['', 'x', '5 x', 'mm', '1/0', '1e999', '1e-999', '5 mm mm']) {
      expect(describeProblem(problemOf(text))).toMatch(
        /^[«N].+; this field takes a length, such as 1\.6 mm or 1\/16 in\.$/,
      );
    }
  });
});

describe('every kind of quantity', () => {
  test.each(dimensionNames)('%s: its own examples are read, in units that are its own', (name) => {
    for (const example of dimensions[name].examples)
      expect(inMetric(example, name)).toMatchObject({ ok: true });
  });

  test('does not take a unit that it does not have', () => {
    expect(() => parseQuantity('5', 'length', 'furlong')).toThrow('length has no unit "furlong"');
  });
});
