import type { FanPlot as Plot } from './plots.ts';

export function FanPlot({ plot, title }: { readonly plot: Plot; readonly title: string }) {
  const { frame } = plot;
  const bottom = frame.y + frame.height;
  const right = frame.x + frame.width;
  return (
    <svg className="sheet-plot" viewBox={`0 0 ${plot.width} ${plot.height}`} role="img" aria-label={title}>
      {plot.yTicks.map(({ at, text }) => (
        <g key={text}>
          <line className="grid" x1={frame.x} x2={right} y1={at} y2={at} />
          <text x={frame.x - 1} y={at + 0.7} textAnchor="end">
            {text}
          </text>
        </g>
      ))}
      {plot.xTicks.map(({ at, text }) => (
        <g key={text}>
          <line className="grid" x1={at} x2={at} y1={frame.y} y2={bottom} />
          <text x={at} y={bottom + 2.8} textAnchor="middle">
            {text}
          </text>
        </g>
      ))}
      <rect className="frame" {...frame} />
      {plot.stallX !== null && (
        <line className="stall" x1={plot.stallX} x2={plot.stallX} y1={frame.y} y2={bottom} />
      )}
      <path className="curve fan" d={plot.fan} />
      <path className="curve box" d={plot.box} />
      {plot.marks.map((mark) => (
        <g key={mark.x} className={mark.used ? 'mark used' : 'mark'}>
          <circle className={mark.stable ? 'stable' : 'unstable'} cx={mark.x} cy={mark.y} r={1} />
          <text y={mark.textY} textAnchor={mark.anchor}>
            {mark.lines.map((line, i) => (
              <tspan key={line} x={mark.textX} {...(i > 0 ? { dy: 2.5 } : {})}>
                {line}
              </tspan>
            ))}
          </text>
        </g>
      ))}
      {plot.names.map(({ text, x, y, anchor }) => (
        <text key={text} className="name" x={x} y={y} textAnchor={anchor}>
          {text}
        </text>
      ))}
      <text className="unit" x={frame.x - 1} y={2.4} textAnchor="end">
        {plot.yName}
      </text>
      <text className="unit" x={right} y={bottom + 6} textAnchor="end">
        {plot.xName}
      </text>
    </svg>
  );
}
