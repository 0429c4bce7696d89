import { type DimensionInfo, unit } from './unit.ts';

const pound_kg = 0.45359237;

export const plainUnits = {
  ratio: {
    noun: 'a share',
    units: [
      unit('plain', ''),
      unit('%', '%', 'percent|per cent|pct', { over: 100 }),
      unit('permille', '‰', 'per mille', { over: 1000 }),
      unit('ppm', 'ppm', '', { over: 1e6 }),
    ],
    metric: '%',
    inch: '%',
    digits: 4,
    examples: ['5 %', '200 ppm'],
  },
  number: {
    noun: 'a plain number',
    units: [unit('plain', '')],
    metric: 'plain',
    inch: 'plain',
    digits: 4,
    examples: ['0.8', '1.25'],
  },
  mass: {
    noun: 'a mass',
    units: [
      unit('kg', 'kg', 'kilogram|kilograms'),
      unit('g', 'g', 'gram|grams', { over: 1000 }),
      unit('mg', 'mg', '', { over: 1e6 }, { exactCase: true }),
      unit('lb', 'lb', 'lbs|pound|pounds', { times: pound_kg }),
      unit('oz', 'oz', 'ounce|ounces', { times: pound_kg, over: 16 }),
    ],
    metric: 'g',
    inch: 'oz',
    digits: 4,
    examples: ['35 g', '1.2 oz'],
  },
  time: {
    noun: 'a time',
    units: [
      unit('s', 's', 'sec|secs|second|seconds'),
      unit('ms', 'ms', 'millisecond|milliseconds', { over: 1000 }, { exactCase: true }),
      unit('min', 'min', 'mins|minute|minutes', { times: 60 }),
      unit('h', 'h', 'hr|hrs|hour|hours', { times: 3600 }),
      unit('d', 'd', 'day|days', { times: 86400 }),
    ],
    metric: 's',
    inch: 's',
    digits: 3,
    examples: ['90 s', '5 min'],
    compound: [['d'], ['h'], ['min'], ['s']],
  },
  frequency: {
    noun: 'a frequency',
    units: [
      unit('Hz', 'Hz', 'hertz'),
      unit('kHz', 'kHz', '', { times: 1000 }),
      unit('MHz', 'MHz', '', { times: 1e6 }, { exactCase: true }),
    ],
    metric: 'Hz',
    inch: 'Hz',
    digits: 4,
    examples: ['50 Hz', '1.2 kHz'],
  },
  rate: {
    noun: 'a rate',
    units: [
      unit('1/s', '1/s', '/s|s-1'),
      unit('1/min', '1/min', '/min|min-1', { over: 60 }),
      unit('1/h', '1/h', '/h|1/hr|h-1', { over: 3600 }),
    ],
    metric: '1/s',
    inch: '1/s',
    digits: 3,
    examples: ['0.02 1/s', '1.2 1/min'],
  },
  acceleration: {
    noun: 'an acceleration',
    units: [unit('m/s2', 'm/s²'), unit('ft/s2', 'ft/s²', '', { times: 381, over: 1250 })],
    metric: 'm/s2',
    inch: 'ft/s2',
    digits: 4,
    examples: ['9.81 m/s²', '32.2 ft/s²'],
  },
} as const satisfies Record<string, DimensionInfo>;
