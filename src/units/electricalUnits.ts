import { type DimensionInfo, unit } from './unit.ts';

const exact = { exactCase: true } as const;

export const electricalUnits = {
  resistance: {
    noun: 'a resistance',
    units: [
      unit('ohm', 'Ω', 'ohms|R'),
      unit('mohm', 'mΩ', 'mOhm|mohms|milliohm|milliohms|mR', { over: 1000 }, exact),
      unit('kohm', 'kΩ', 'k|K|kOhm|KOHM|kohms|Kohm|kilohm|kilohms', { times: 1000 }, exact),
      unit('Mohm', 'MΩ', 'M|MOhm|Mohms|MOHM|megohm|megohms|Meg|meg', { times: 1e6 }, exact),
      unit('Gohm', 'GΩ', 'G|GOhm|Gohms', { times: 1e9 }, exact),
    ],
    metric: 'ohm',
    inch: 'ohm',
    digits: 4,
    examples: ['10 Ω', '4k7'],
    infix: { R: 'ohm', r: 'ohm', m: 'mohm', k: 'kohm', K: 'kohm', M: 'Mohm', G: 'Gohm' },
  },
  voltage: {
    noun: 'a voltage',
    units: [
      unit('V', 'V', 'volt|volts'),
      unit('mV', 'mV', 'mv|millivolt|millivolts', { over: 1000 }, exact),
      unit('kV', 'kV', '', { times: 1000 }),
    ],
    metric: 'V',
    inch: 'V',
    digits: 4,
    examples: ['12 V', '350 mV'],
    infix: { V: 'V' },
  },
  current: {
    noun: 'a current',
    units: [
      unit('A', 'A', 'amp|amps|ampere|amperes'),
      unit('mA', 'mA', 'ma|milliamp|milliamps', { over: 1000 }, exact),
      unit('uA', 'µA', '', { over: 1e6 }),
      unit('kA', 'kA', '', { times: 1000 }),
    ],
    metric: 'A',
    inch: 'A',
    digits: 4,
    examples: ['1.2 A', '350 mA'],
  },
  power: {
    noun: 'a power',
    units: [
      unit('W', 'W', 'watt|watts'),
      unit('mW', 'mW', 'mw|milliwatt|milliwatts', { over: 1000 }, exact),
      unit('kW', 'kW', 'kilowatt|kilowatts', { times: 1000 }),
      unit('BTU/h', 'BTU/h', 'BTU/hr', { times: 1055.05585262, over: 3600 }),
    ],
    metric: 'W',
    inch: 'W',
    digits: 3,
    examples: ['2.5 W', '250 mW'],
  },
  fieldStrength: {
    noun: 'a field strength',
    units: [
      unit('V/m', 'V/m'),
      unit('V/mm', 'V/mm', '', { times: 1000 }),
      unit('kV/mm', 'kV/mm', 'V/um', { times: 1e6 }),
      unit('V/mil', 'V/mil', 'V/thou', { times: 5e6, over: 127 }),
    ],
    metric: 'kV/mm',
    inch: 'V/mil',
    digits: 3,
    examples: ['15 kV/mm', '400 V/mil'],
  },
  temperatureCoefficient: {
    noun: 'a temperature coefficient',
    units: [
      unit('1/K', '1/K', '/K|1/degC|/degC|K-1'),
      unit('%/K', '%/K', '%/degC|%/C', { over: 100 }),
      unit('ppm/K', 'ppm/K', 'ppm|ppm/degC|ppm/C', { over: 1e6 }),
    ],
    metric: 'ppm/K',
    inch: 'ppm/K',
    digits: 4,
    examples: ['25 ppm/K', '0.01 %/K'],
  },
  squareTemperatureCoefficient: {
    noun: 'a square temperature coefficient',
    units: [
      unit('1/K2', '1/K²', '/K2|1/degC2|/degC2|K-2'),
      unit('ppm/K2', 'ppm/K²', 'ppm|ppm/degC2|ppm/C2', { over: 1e6 }),
    ],
    metric: 'ppm/K2',
    inch: 'ppm/K2',
    digits: 4,
    examples: ['0.02 ppm/K²', '2e-8 1/K²'],
  },
} as const satisfies Record<string, DimensionInfo>;
