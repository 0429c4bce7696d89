import { describe, test } from 'vitest';
import { type Dimension, unitOf } from '../../../src/units/dimensions.ts';
import { parseQuantity } from '../../../src/units/parseQuantity.ts';
import { toSI } from '../../../src/units/unit.ts';
import { published } from '../../helpers/published.ts';

/*
 * NIST Special Publication 811 (2008 edition), Guide for the Use of the International System of Units,
 * Appendix B.8: factors as printed there, typed from memory, the publication not at hand.
 * Tolerance: half a unit of the last printed digit; "exact" where the table prints the factor in bold.
 */
const factors: [dimension: Dimension, unit: string, printed: string, isExact?: 'exact'][] = [
  ['length', 'in', '2.54E-02', 'exact'],
  ['length', '"', '2.54E-02', 'exact'],
  ['length', 'ft', '3.048E-01', 'exact'],
  ['length', 'mil', '2.54E-05', 'exact'],
  ['length', 'um', '1.0E-06', 'exact'],
  ['altitude', 'ft', '3.048E-01', 'exact'],
  ['area', 'in2', '6.4516E-04', 'exact'],
  ['area', 'ft2', '9.290304E-02', 'exact'],
  ['volume', 'in3', '1.638706E-05'],
  ['volume', 'ft3', '2.831685E-02'],
  ['volume', 'l', '1.0E-03', 'exact'],
  ['angle', 'deg', '1.745329E-02'],
  ['volumeFlow', 'cfm', '4.719474E-04'],
  ['volumeFlow', 'l/min', '1.666667E-05'],
  ['volumeFlow', 'm3/h', '2.777778E-04'],
  ['massFlow', 'lb/h', '1.259979E-04'],
  ['massFlow', 'lb/min', '7.559873E-03'],
  // Inch of water, conventional; the inch of water at 39.2 °F (4 °C) is another entry, 2.49082E+02.
  ['pressure', 'inH2O', '2.490889E+02'],
  ['pressure', 'mmH2O', '9.80665E+00', 'exact'],
  ['pressure', 'psi', '6.894757E+03'],
  ['pressure', 'mbar', '1.0E+02', 'exact'],
  ['pressure', 'bar', '1.0E+05', 'exact'],
  ['speed', 'ft/min', '5.08E-03', 'exact'],
  ['speed', 'ft/s', '3.048E-01', 'exact'],
  ['speed', 'km/h', '2.777778E-01'],
  ['density', 'lb/ft3', '1.601846E+01'],
  ['viscosity', 'mPa s', '1.0E-03', 'exact'],
  ['diffusivity', 'mm2/s', '1.0E-06', 'exact'],
  ['diffusivity', 'ft2/h', '2.58064E-05', 'exact'],
  ['temperatureDifference', 'degF', '5.555556E-01'],
  ['conductivity', 'BTU in/(h ft2 degF)', '1.442279E-01'],
  ['conductivity', 'BTU/(h ft degF)', '1.730735E+00'],
  ['thermalResistance', 'degF/W', '5.555556E-01'],
  ['heatTransferCoefficient', 'BTU/(h ft2 degF)', '5.678263E+00'],
  ['heatFlux', 'W/in2', '1.550003E+03'],
  ['energy', 'BTU', '1.055056E+03'],
  ['energy', 'Wh', '3.6E+03', 'exact'],
  ['specificHeat', 'BTU/(lb degF)', '4.1868E+03', 'exact'],
  ['power', 'BTU/h', '2.930711E-01'],
  ['fieldStrength', 'kV/mm', '1.0E+06', 'exact'],
  ['mass', 'lb', '4.535924E-01'],
  ['mass', 'oz', '2.834952E-02'],
  ['acceleration', 'ft/s2', '3.048E-01', 'exact'],
];

describe('NIST SP 811, Appendix B.8 (from memory)', () => {
  const memory = (source: string, where?: string) =>
    published({ source, ...(where === undefined ? {} : { where }), kind: 'from memory' });
  const nist = memory('NIST Special Publication 811 (2008)', 'appendix B.8');

  test.each(factors)('%s in %s is %s SI units', (dimension, unit, printed, isExact) => {
    const step = toSI(1, unitOf(dimension, unit)) - toSI(0, unitOf(dimension, unit));
    const exactly = { within: 1e-15, because: 'printed as exact' };
    nist.says('factor to SI', step, printed, isExact ? exactly : undefined);
  });

  test('a revolution per minute is 1.047198E-01 rad/s', () => {
    nist.says('factor to SI', 2 * Math.PI * toSI(1, unitOf('rotation', 'rpm')), '1.047198E-01');
  });

  // T/K = t/°C + 273.15 and T/K = (t/°F + 459.67)/1.8, both exact by definition.
  test.each([
    ['0 °C', 273.15],
    ['32 °F', 273.15],
    ['212 °F', 373.15],
    ['104 °F', 313.15],
    ['-40 °F', 233.15],
    ['-40 °C', 233.15],
    ['-459.67 °F', 0],
    ['-273.15 °C', 0],
    ['293.15 K', 293.15],
  ])('%s is %d K', (text, kelvins) => {
    const read = parseQuantity(text, 'temperature', 'K');
    const definition = memory('International System of Units', 'definition of the degree Celsius');
    definition.says('temperature [K]', read.ok ? read.value : Number.NaN, String(kelvins), {
      off: 6e-14,
      because: 'half a unit in the last place of a double near 300',
    });
  });

  // The letter in place of the decimal mark.
  test.each([
    ['R47', 0.47],
    ['4R7', 4.7],
    ['47R', 47],
    ['4K7', 4700],
    ['47K', 47e3],
    ['4M7', 4.7e6],
    ['1G5', 1.5e9],
  ])('IEC 60062 (from memory): %s is %d Ω', (text, ohms) => {
    const read = parseQuantity(text, 'resistance', 'ohm');
    const value = read.ok ? read.value : Number.NaN;
    memory('IEC 60062').says('resistance [Ω]', value, String(ohms), { within: 2e-16, because: 'exact' });
  });
});
