import { useState } from 'react';

/**
 * The first value for a key, held while it is estimated again and again, and the last one after that: to draw a chart takes
 * longer than a key may wait.
 */
export function useHeldWhile<T>(value: T, isHeld: boolean, key: unknown): T {
  const [held, setHeld] = useState({ value, key });
  if (held.value === value || (isHeld && held.key === key)) return held.value;
  setHeld({ value, key });
  return value;
}
