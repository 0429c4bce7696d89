import type { ReactNode } from 'react';
import type { PlotFrame } from './plotFrame.ts';

interface Props {
  readonly plot: PlotFrame;
  readonly title: string;
  readonly children: ReactNode;
}

/** Grid, frame, numbers and units round what is plotted. */
export function PlotAxes({ plot, title, children }: Props) {
  const { frame } = plot;
  const bottom = frame.y + frame.height;
  const right = frame.x + frame.width;
  return (
    <svg className="sheet-plot" viewBox={`0 0 ${plot.width} ${plot.height}`} role="img" aria-label={title}>
      {plot.yTicks.map(({ at, text }) => (
        <g key={text}>
          <line className="grid" x1={frame.x} x2={right} y1={at} y2={at} />
          <text x={frame.x - 1} y={at + 0.8} textAnchor="end">
            {text}
          </text>
        </g>
      ))}
      {plot.xTicks.map(({ at, text }) => (
        <g key={text}>
          <line className="grid" x1={at} x2={at} y1={frame.y} y2={bottom} />
          <text x={at} y={bottom + 3} textAnchor="middle">
            {text}
          </text>
        </g>
      ))}
      <rect className="frame" {...frame} />
      {children}
      <text className="unit" x={frame.x - 1} y={2.4} textAnchor="end">
        {plot.yName}
      </text>
      <text className="unit" x={right} y={bottom + 6.4} textAnchor="end">
        {plot.xName}
      </text>
    </svg>
  );
}
