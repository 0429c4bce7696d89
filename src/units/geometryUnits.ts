import { type DimensionInfo, unit } from './unit.ts';

// The international inch, foot and pound are exact by the agreement of 1959.
const lengths = [
  unit('m', 'm', 'metre|metres|meter|meters'),
  unit('cm', 'cm', 'centimetre|centimetres|centimeter|centimeters', { over: 100 }),
  unit('mm', 'mm', 'millimetre|millimetres|millimeter|millimeters', { over: 1000 }),
  unit('um', 'µm', 'micron|microns|micrometre|micrometres|micrometer|micrometers', { over: 1e6 }),
  unit('in', 'in', 'inch|inches', { times: 127, over: 5000 }),
  unit('"', '"', '', { times: 127, over: 5000 }, { attached: true }),
  unit('ft', 'ft', 'foot|feet', { times: 381, over: 1250 }),
  unit("'", "'", '', { times: 381, over: 1250 }, { attached: true }),
  unit('mil', 'mil', 'mils|thou', { times: 127, over: 5e6 }),
];

const feetAndInches = [
  ['ft', "'"],
  ['in', '"'],
];

export const geometryUnits = {
  length: {
    noun: 'a length',
    units: lengths,
    metric: 'mm',
    inch: 'in',
    digits: 4,
    examples: ['1.6 mm', '1/16 in'],
    compound: feetAndInches,
  },
  distance: {
    noun: 'a distance',
    units: lengths,
    metric: 'm',
    inch: 'ft',
    digits: 4,
    examples: ['1.5 m', '5 ft'],
    compound: feetAndInches,
  },
  altitude: {
    noun: 'an altitude',
    units: [
      unit('m', 'm', 'metre|metres|meter|meters'),
      unit('km', 'km', 'kilometre|kilometres|kilometer|kilometers', { times: 1000 }),
      unit('ft', 'ft', 'foot|feet', { times: 381, over: 1250 }),
      unit("'", "'", '', { times: 381, over: 1250 }, { attached: true }),
    ],
    metric: 'm',
    inch: 'ft',
    digits: 4,
    examples: ['1500 m', '5000 ft'],
  },
  area: {
    noun: 'an area',
    units: [
      unit('m2', 'm²', 'sq m|sqm'),
      unit('cm2', 'cm²', 'sq cm|sqcm', { over: 1e4 }),
      unit('mm2', 'mm²', 'sq mm|sqmm', { over: 1e6 }),
      unit('in2', 'in²', 'sq in|sqin|square inch|square inches', { times: 16129, over: 25e6 }),
      unit('ft2', 'ft²', 'sq ft|sqft|square foot|square feet', { times: 145161, over: 1562500 }),
    ],
    metric: 'cm2',
    inch: 'in2',
    digits: 4,
    examples: ['16 cm²', '2.5 in²'],
  },
  volume: {
    noun: 'a volume',
    units: [
      unit('m3', 'm³', 'cu m'),
      unit('l', 'l', 'litre|litres|liter|liters', { over: 1000 }),
      unit('cm3', 'cm³', 'cc|ml|cu cm', { over: 1e6 }),
      unit('mm3', 'mm³', 'cu mm', { over: 1e9 }),
      unit('in3', 'in³', 'cu in|cuin', { times: 2048383, over: 125e9 }),
      unit('ft3', 'ft³', 'cu ft|cuft', { times: 0.028316846592 }),
    ],
    metric: 'cm3',
    inch: 'in3',
    digits: 4,
    examples: ['250 cm³', '15 in³'],
  },
  angle: {
    noun: 'an angle',
    units: [
      unit('rad', 'rad', 'radian|radians'),
      unit('deg', '°', 'degree|degrees', { times: Math.PI, over: 180 }, { attached: true }),
    ],
    metric: 'deg',
    inch: 'deg',
    digits: 3,
    examples: ['45°', '0.8 rad'],
  },
  reciprocalLength: {
    noun: 'a reciprocal length',
    units: [
      unit('1/m', '1/m', '/m|m-1'),
      unit('1/mm', '1/mm', '/mm|mm-1', { times: 1000 }),
      unit('1/in', '1/in', '/in|in-1', { times: 5000, over: 127 }),
    ],
    metric: '1/mm',
    inch: '1/in',
    digits: 4,
    examples: ['0.4 1/mm', '10 1/in'],
  },
} as const satisfies Record<string, DimensionInfo>;
