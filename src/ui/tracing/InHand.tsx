import { useEffect, useState } from 'react';
import { useTracing, useTracingReport } from './TracingContext.ts';

/** A run of arrow keys is told once, where it ends. */
const rest_ms = 500;

/** Tells who does not see it what the thing in hand says where it now lies. */
export function InHand() {
  const { points, marks, sayPlace } = useTracingReport();
  const { selected, cross } = useTracing((state) => state);
  const label =
    selected === null
      ? sayPlace(cross)
      : selected.kind === 'point'
        ? (points[selected.index]?.label ?? '')
        : marks[selected.axis][selected.index].label;
  const [told, setTold] = useState('');
  useEffect(() => {
    const timer = setTimeout(() => setTold(label), rest_ms);
    return () => clearTimeout(timer);
  }, [label]);
  return (
    <p className="unseen" role="status">
      {told}
    </p>
  );
}
