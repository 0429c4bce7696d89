import type { Said } from './amount.ts';
import { fixed, plain0 } from './words.ts';

const thin = '\u202f';

/** A time as somebody says it: "40 ms", "31 s", "1 min 40 s", "12 min", "2 h 5 min". */
export function duration(time_s: number): string {
  if (time_s < 1e-9) return 'no time';
  if (time_s < 1e-3) return `${fixed(time_s * 1e6, time_s < 1e-5 ? 1 : 0)}${thin}µs`;
  if (time_s < 1) return `${fixed(time_s * 1e3, time_s < 0.01 ? 1 : 0)}${thin}ms`;
  if (time_s < 10) return `${fixed(time_s, 1)}${thin}s`;
  if (time_s < 99.5) return `${plain0(time_s)}${thin}s`;
  const whole_s = time_s < 600 ? Math.round(time_s / 10) * 10 : Math.round(time_s / 60) * 60;
  const hours = Math.floor(whole_s / 3600);
  const minutes = Math.floor((whole_s % 3600) / 60);
  const seconds = whole_s % 60;
  const parts = [
    hours > 0 ? `${hours}${thin}h` : '',
    minutes > 0 ? `${minutes}${thin}min` : '',
    seconds > 0 ? `${seconds}${thin}s` : '',
  ];
  return parts.filter((part) => part !== '').join(' ');
}

/** The same with the seconds behind it. */
export function saidDuration(time_s: number): Said {
  return { text: duration(time_s), value: time_s, unit: 's' };
}
