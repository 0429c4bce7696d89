import { amount, plain, quantity, unitOf } from './format.ts';
import type { UnitSystem } from './types.ts';

/** Narrow no-break space between a number and what it counts. */
const thin = '\u202f';

/** A temperature to whole degrees, or to tenths where a whole degree would hide the matter. */
export function temperature(T_K: number, system: UnitSystem, decimals = 0): string {
  return withDecimals(amount(T_K, 'temperature', system), unitOf('temperature', system), decimals);
}

export function kelvins(dT_K: number, system: UnitSystem, decimals = 0): string {
  return withDecimals(
    amount(dT_K, 'temperatureDifference', system),
    unitOf('temperatureDifference', system),
    decimals,
  );
}

function withDecimals(value: number, unit: string, decimals: number): string {
  return `${fixed(value, decimals)}${thin}${unit}`;
}

/** Fixed decimals, a true minus, never "−0". */
export function fixed(value: number, decimals: number): string {
  const text = Math.abs(value).toFixed(decimals);
  return value < 0 && Number(text) !== 0 ? `−${text}` : text;
}

export function percent(share: number): string {
  const value = share * 100;
  return `${fixed(value, Math.abs(value) < 9.95 && value !== 0 ? 1 : 0)}${thin}%`;
}

/** A share that somebody entered, with no more digits than it has. */
export function share(value: number): string {
  return `${plain(value * 100, 3)}${thin}%`;
}

export function times(factor: number): string {
  return factor >= 100 ? `> 100${thin}×` : `${fixed(factor, factor < 9.995 ? 2 : 1)}${thin}×`;
}

export function watts(power_W: number, system: UnitSystem): string {
  return quantity(power_W, 'power', system, 3);
}

export function resistorName(index: number): string {
  return `resistor ${index + 1}`;
}

export function sinkName(index: number): string {
  return `sink ${index + 1}`;
}

export function capital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

export function small(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}

/** "a", "a and b", "a, b and c". */
export function listed(words: readonly string[]): string {
  if (words.length < 2) return words.join('');
  return `${words.slice(0, -1).join(', ')} and ${words[words.length - 1]}`;
}

export function counted(count: number, one: string, many = `${one}s`): string {
  return `${count} ${count === 1 ? one : many}`;
}

/** Three to seven round values that span the range, for an axis. */
export function roundTicks(low: number, high: number): number[] {
  const span = Math.max(high - low, 1e-12);
  const rough = span / 5;
  const decade = 10 ** Math.floor(Math.log10(rough));
  const step = decade * ([1, 2, 2.5, 5, 10].find((s) => s * decade >= rough) ?? 10);
  const first = Math.floor(low / step + 1e-9);
  const last = Math.ceil(high / step - 1e-9);
  return Array.from({ length: last - first + 1 }, (_, i) => Number(((first + i) * step).toPrecision(12)));
}

/** A whole number as digits. */
export function plain0(value: number): string {
  return fixed(value, 0);
}
