import { startTransition, useEffect, useState } from 'react';
import { flushSync } from 'react-dom';

/** The value, once it has stood still for a moment: for what need not follow every key. */
export function useSettled<T>(value: T, delay_ms = 250): T {
  const [settled, setSettled] = useState(value);
  useEffect(() => {
    const timer = setTimeout(() => startTransition(() => setSettled(value)), delay_ms);
    return () => clearTimeout(timer);
  }, [value, delay_ms]);
  useEffect(() => {
    // What is printed has to be the present answer. Captured, so that it stands before anybody measures the sheet.
    const settle = () => flushSync(() => setSettled(value));
    window.addEventListener('beforeprint', settle, { capture: true });
    return () => window.removeEventListener('beforeprint', settle, { capture: true });
  }, [value]);
  return settled;
}
