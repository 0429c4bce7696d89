import type { Dimension } from './dimensions.ts';

interface SuffixInfo {
  /** The SI unit as it is printed. */
  readonly unit: string;
  /** `null`: only constants and inner workings have it, and no field. */
  readonly dimension: Dimension | null;
}

const is = (unit: string, dimension: Dimension | null): SuffixInfo => ({ unit, dimension });

/** The closed list of SI suffixes that end a name: `gap_m`, `k_WPerMK`. A name with another one is a mistake. */
export const suffixes = {
  m: is('m', 'length'),
  m2: is('m²', 'area'),
  m3: is('m³', 'volume'),
  rad: is('rad', 'angle'),
  PerM: is('1/m', 'reciprocalLength'),
  s: is('s', 'time'),
  Hz: is('Hz', 'frequency'),
  PerS: is('1/s', 'rate'),
  kg: is('kg', 'mass'),
  K: is('K', 'temperature'),
  K2: is('K²', null),
  PerK: is('1/K', 'temperatureCoefficient'),
  perK: is('1/K', 'temperatureCoefficient'),
  perK2: is('1/K²', 'squareTemperatureCoefficient'),
  mPerS: is('m/s', 'speed'),
  mPerS2: is('m/s²', 'acceleration'),
  m2PerS: is('m²/s', 'diffusivity'),
  m3PerS: is('m³/s', 'volumeFlow'),
  kgPerS: is('kg/s', 'massFlow'),
  kgPerM3: is('kg/m³', 'density'),
  Pa: is('Pa', 'pressure'),
  PaS: is('Pa·s', 'viscosity'),
  PaSPerM3: is('Pa·s/m³', null),
  PaSPerM: is('Pa·s/m', 'pressurePerSpeed'),
  PaS2PerM2: is('Pa·s²/m²', 'pressurePerSpeedSquared'),
  J: is('J', 'energy'),
  JPerK: is('J/K', 'heatCapacity'),
  JPerKgK: is('J/(kg·K)', 'specificHeat'),
  JPerM3K: is('J/(m³·K)', 'volumetricHeatCapacity'),
  W: is('W', 'power'),
  WPerM: is('W/m', 'heatPerLength'),
  WPerM2: is('W/m²', 'heatFlux'),
  WPerK: is('W/K', 'thermalConductance'),
  WPerMK: is('W/(m·K)', 'conductivity'),
  WPerM2K: is('W/(m²·K)', 'heatTransferCoefficient'),
  WPerM2K4: is('W/(m²·K⁴)', null),
  KPerW: is('K/W', 'thermalResistance'),
  m2KPerW: is('m²·K/W', 'contactResistance'),
  PerM3K: is('1/(m³·K)', null),
  V: is('V', 'voltage'),
  A: is('A', 'current'),
  Ohm: is('Ω', 'resistance'),
  VPerM: is('V/m', 'fieldStrength'),
  dBA: is('dB(A)', 'soundLevel'),
} as const satisfies Record<string, SuffixInfo>;

export type Suffix = keyof typeof suffixes;

/** `k_WPerMK` → `WPerMK`; `null` for a name without a suffix, or with one that is not on the list. */
export function suffixOfName(name: string): Suffix | null {
  const suffix = name.slice(name.lastIndexOf('_') + 1);
  return name.includes('_') && Object.hasOwn(suffixes, suffix) ? (suffix as Suffix) : null;
}

/**
 * What a name, or the last key of a path, measures by its suffix: `sink.gap_m` is a length. Some suffixes need the
 * rest of the name as well: `altitude_m`, the distance of an ear (`listening_m`, `soundAt_m`), the pressure of the room
 * (`pressure_Pa`), a difference of temperatures (`dT_K`, `chainRise_K`, `margin_K`, `within_K`), and turns of a fan
 * (`rotation_PerS`).
 * @returns `null` where there is no suffix: the name alone cannot tell a share from a count
 */
export function dimensionOfName(name: string): Dimension | null {
  const suffix = suffixOfName(name);
  if (suffix === null) return null;
  const stem = name.slice(name.lastIndexOf('.') + 1, name.lastIndexOf('_'));
  if (suffix === 'm' && /altitude$/i.test(stem)) return 'altitude';
  if (suffix === 'm' && /listening$|soundAt$/i.test(stem)) return 'distance';
  if (suffix === 'Pa' && /^pressure$/.test(stem)) return 'airPressure';
  if (suffix === 'K' && /^dT|^margin|^within|(?:^r|R)ise$|Margin$/.test(stem)) return 'temperatureDifference';
  if (suffix === 'PerS' && /rotation$/i.test(stem)) return 'rotation';
  return suffixes[suffix].dimension;
}
