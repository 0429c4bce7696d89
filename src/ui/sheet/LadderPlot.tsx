import type { LadderPlot as Plot } from './plotLadder.ts';

export function LadderPlot({ plot, title }: { readonly plot: Plot; readonly title: string }) {
  return (
    <svg className="sheet-plot" viewBox={`0 0 ${plot.width} ${plot.height}`} role="img" aria-label={title}>
      {plot.ticks.map(({ at, text }) => (
        <g key={text}>
          <line className="grid" x1={at} x2={at} y1={plot.top} y2={plot.axisY} />
          <text x={at} y={plot.axisY + 2.8} textAnchor="middle">
            {text}
          </text>
        </g>
      ))}
      <line className="frame" x1={plot.roomX} x2={plot.roomX} y1={plot.top} y2={plot.axisY} />
      <text className="name" x={plot.roomX} y={plot.top - 1.2} textAnchor="middle">
        room
      </text>
      {plot.bars.map((bar) => (
        <g key={bar.key}>
          <rect className="bar" x={bar.x} y={bar.y} width={bar.width} height={bar.height} />
          <text x={plot.labelX} y={bar.middle + 0.7} textAnchor="end">
            {bar.label}
          </text>
          <text className="rise" x={bar.riseX} y={bar.middle + 0.7} textAnchor={bar.riseAnchor}>
            {bar.rise}
          </text>
        </g>
      ))}
      <line className="limit" x1={plot.limitX} x2={plot.limitX} y1={plot.top} y2={plot.axisY} />
      <text className="name" x={plot.width} y={plot.top - 1.2} textAnchor="end">
        {plot.limitText}
      </text>
      <text className="unit" x={plot.width} y={plot.axisY + 6} textAnchor="end">
        {plot.unit}
      </text>
    </svg>
  );
}
