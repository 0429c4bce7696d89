import { useEffect, useState } from 'react';

/** Says the sentence to a screen reader once it has stood still for a moment. */
export function Announcer({
  sentence,
  delay_ms = 900,
}: {
  readonly sentence: string;
  readonly delay_ms?: number;
}) {
  const [said, setSaid] = useState('');
  useEffect(() => {
    const timer = setTimeout(() => setSaid(sentence), delay_ms);
    return () => clearTimeout(timer);
  }, [sentence, delay_ms]);
  return (
    <p className="unseen" role="status">
      {said}
    </p>
  );
}
