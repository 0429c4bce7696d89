import { startTransition, useEffect, useState } from 'react';

/** The value, once it has stood still for a moment: for what need not follow every key. */
export function useSettled<T>(value: T, delay_ms = 250): T {
  const [settled, setSettled] = useState(value);
  useEffect(() => {
    const timer = setTimeout(() => startTransition(() => setSettled(value)), delay_ms);
    return () => clearTimeout(timer);
  }, [value, delay_ms]);
  return settled;
}
