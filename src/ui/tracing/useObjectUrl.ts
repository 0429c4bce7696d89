import { useEffect, useState } from 'react';

/** An address for what lies in memory, given back when nobody shows it any more. `null` for a moment at first. */
export function useObjectUrl(content: Blob | null): string | null {
  const [address, setAddress] = useState<string | null>(null);
  useEffect(() => {
    if (content === null) return;
    const made = URL.createObjectURL(content);
    setAddress(made);
    return () => {
      setAddress(null);
      URL.revokeObjectURL(made);
    };
  }, [content]);
  return address;
}
