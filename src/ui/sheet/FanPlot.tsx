import { PlotAxes } from './PlotAxes.tsx';
import { PlotWords } from './PlotWords.tsx';
import type { FanPlot as Plot } from './plotFan.ts';

export function FanPlot({ plot, title }: { readonly plot: Plot; readonly title: string }) {
  const { frame } = plot;
  return (
    <PlotAxes plot={plot} title={title}>
      {plot.stallX !== null && (
        <line className="stall" x1={plot.stallX} x2={plot.stallX} y1={frame.y} y2={frame.y + frame.height} />
      )}
      <path className="curve solid" d={plot.fan} />
      <path className="curve dashed" d={plot.box} />
      {plot.names.map((words) => (
        <PlotWords key={words.lines[0]} words={words} kind="name" />
      ))}
      {plot.marks.map(({ x, y, used, stable, words }) => (
        <g key={x} className={used ? 'used' : undefined}>
          <circle className={stable ? 'stable' : 'unstable'} cx={x} cy={y} r={1} />
          {words && <PlotWords words={words} kind="mark" />}
        </g>
      ))}
    </PlotAxes>
  );
}
