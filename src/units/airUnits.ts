import { type DimensionInfo, unit } from './unit.ts';

/** Conventional inch of water: 25.4 mm at 9.80665 Pa each (1000 kg/m³, standard gravity). */
const inchOfWater_Pa = 249.08891;
/** Conventional millimetre of mercury: 13 595.1 kg/m³ at standard gravity. */
const mmOfMercury_Pa = 133.322387415;
/** One pound-force, 4.4482216152605 N, on a square inch. */
const psi_Pa = 6894.757293168361;
const cubicFoot_m3 = 0.028316846592;
const pound_kg = 0.45359237;

const pressures = [
  unit('Pa', 'Pa', 'pascal|pascals'),
  unit('hPa', 'hPa', '', { times: 100 }),
  unit('kPa', 'kPa', '', { times: 1000 }),
  unit('mbar', 'mbar', 'MBAR|millibar', { times: 100 }, { exactCase: true }),
  unit('bar', 'bar', '', { times: 1e5 }),
  unit('psi', 'psi', 'lbf/in2', { times: psi_Pa }),
];

export const airUnits = {
  volumeFlow: {
    noun: 'a flow',
    units: [
      unit('m3/s', 'm³/s', 'cms'),
      unit('m3/min', 'm³/min', 'cmm', { over: 60 }),
      unit('m3/h', 'm³/h', 'm3/hr|cmh', { over: 3600 }),
      unit('l/s', 'l/s', 'lps', { over: 1000 }),
      unit('l/min', 'l/min', 'lpm', { over: 60e3 }),
      unit('cfm', 'cfm', 'ft3/min|cu ft/min', { times: cubicFoot_m3, over: 60 }),
    ],
    metric: 'm3/h',
    inch: 'cfm',
    digits: 3,
    examples: ['60 m³/h', '35 cfm'],
  },
  massFlow: {
    noun: 'a mass flow',
    units: [
      unit('kg/s', 'kg/s'),
      unit('kg/h', 'kg/h', 'kg/hr', { over: 3600 }),
      unit('g/s', 'g/s', '', { over: 1000 }),
      unit('lb/min', 'lb/min', 'lbs/min', { times: pound_kg, over: 60 }),
      unit('lb/h', 'lb/h', 'lb/hr|lbs/h|lbs/hr', { times: pound_kg, over: 3600 }),
    ],
    metric: 'g/s',
    inch: 'lb/h',
    digits: 3,
    examples: ['12 g/s', '95 lb/h'],
  },
  pressure: {
    noun: 'a pressure',
    units: [
      ...pressures,
      unit('mmH2O', 'mmH₂O', 'mm H2O|mmWG|mm WG|mmWC|mm WC|mmAq|mm Aq', { times: 980665, over: 1e5 }),
      unit(
        'inH2O',
        'inH₂O',
        'in H2O|inch H2O|inches H2O|inWC|in WC|inWG|in WG|"H2O|" H2O|"WC|" WC|"WG|" WG',
        { times: inchOfWater_Pa },
      ),
    ],
    metric: 'Pa',
    inch: 'inH2O',
    digits: 3,
    examples: ['30 Pa', '0.12 inH2O'],
  },
  airPressure: {
    noun: 'an air pressure',
    units: [
      ...pressures,
      unit('mmHg', 'mmHg', 'mm Hg|torr', { times: mmOfMercury_Pa }),
      unit('inHg', 'inHg', 'in Hg|inches Hg', { times: 25.4 * mmOfMercury_Pa }),
    ],
    metric: 'hPa',
    inch: 'inHg',
    digits: 5,
    examples: ['1013 hPa', '29.9 inHg'],
  },
  speed: {
    noun: 'a speed',
    units: [
      unit('m/s', 'm/s', 'mps'),
      unit('km/h', 'km/h', 'kph', { over: 3.6 }),
      unit('ft/min', 'ft/min', 'fpm|lfm', { times: 127, over: 25e3 }),
      unit('ft/s', 'ft/s', 'fps', { times: 381, over: 1250 }),
    ],
    metric: 'm/s',
    inch: 'ft/min',
    digits: 3,
    examples: ['2.5 m/s', '500 ft/min'],
  },
  rotation: {
    noun: 'a speed of rotation',
    units: [
      unit('rpm', 'rpm', '1/min|r/min|rev/min|min-1', { over: 60 }),
      unit('r/s', 'r/s', '1/s|rev/s|rps|s-1'),
    ],
    metric: 'rpm',
    inch: 'rpm',
    digits: 4,
    examples: ['2400 rpm', '40 r/s'],
  },
  density: {
    noun: 'a density',
    units: [
      unit('kg/m3', 'kg/m³'),
      unit('g/cm3', 'g/cm³', 'g/cc', { times: 1000 }),
      unit('lb/ft3', 'lb/ft³', 'lb/cu ft', { times: pound_kg, over: cubicFoot_m3 }),
    ],
    metric: 'kg/m3',
    inch: 'lb/ft3',
    digits: 4,
    examples: ['1.2 kg/m³', '0.075 lb/ft³'],
  },
  viscosity: {
    noun: 'a viscosity',
    units: [
      unit('Pa s', 'Pa·s', 'Pas'),
      unit('mPa s', 'mPa·s', 'mPas|cP', { over: 1000 }, { exactCase: true }),
      unit('uPa s', 'µPa·s', 'uPas', { over: 1e6 }),
    ],
    metric: 'uPa s',
    inch: 'uPa s',
    digits: 4,
    examples: ['18.4 µPa·s', '0.0184 cP'],
  },
  diffusivity: {
    noun: 'a diffusivity or kinematic viscosity',
    units: [
      unit('m2/s', 'm²/s'),
      unit('mm2/s', 'mm²/s', 'cSt', { over: 1e6 }),
      unit('ft2/h', 'ft²/h', 'ft2/hr', { times: 0.09290304, over: 3600 }),
    ],
    metric: 'mm2/s',
    inch: 'ft2/h',
    digits: 4,
    examples: ['15.5 mm²/s', '0.6 ft²/h'],
  },
  pressurePerSpeed: {
    noun: 'a pressure per air speed',
    units: [
      unit('Pa s/m', 'Pa·s/m', 'Pas/m|Pa/(m/s)'),
      unit('inH2O/(ft/min)', 'inH₂O/(ft/min)', 'inH2O/fpm', { times: inchOfWater_Pa * 25e3, over: 127 }),
    ],
    metric: 'Pa s/m',
    inch: 'inH2O/(ft/min)',
    digits: 3,
    examples: ['4 Pa·s/m', '0.0001 inH2O/fpm'],
  },
  pressurePerSpeedSquared: {
    noun: 'a pressure per square of air speed',
    units: [
      unit('Pa s2/m2', 'Pa·s²/m²', 'Pas2/m2|Pa/(m/s)2|Pa/(m2/s2)'),
      unit('inH2O/(ft/min)2', 'inH₂O/(ft/min)²', 'inH2O/fpm2', {
        times: inchOfWater_Pa * 625e6,
        over: 16129,
      }),
    ],
    metric: 'Pa s2/m2',
    inch: 'inH2O/(ft/min)2',
    digits: 3,
    examples: ['1 Pa·s²/m²', '1e-7 inH2O/fpm²'],
  },
  soundLevel: {
    noun: 'a sound level',
    units: [unit('dBA', 'dB(A)', 'dB')],
    metric: 'dBA',
    inch: 'dBA',
    digits: 3,
    examples: ['32 dB(A)', '28.5 dBA'],
  },
} as const satisfies Record<string, DimensionInfo>;
