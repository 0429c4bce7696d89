import { PlotAxes } from './PlotAxes.tsx';
import { PlotWords } from './PlotWords.tsx';
import type { LinesPlot as Plot } from './plotLines.ts';

/** Lines told apart by their dashes and by the name at their beginning. */
export function LinesPlot({ plot, title }: { readonly plot: Plot; readonly title: string }) {
  return (
    <PlotAxes plot={plot} title={title}>
      {plot.lines.map(({ key, style, d }) => (
        <path key={key} className={`curve ${style}`} d={d} />
      ))}
      {plot.names.map((words) => (
        <PlotWords key={words.lines[0]} words={words} kind="name" />
      ))}
      {plot.marks.map(({ x, y, words }) => (
        <g key={x} className="used">
          <circle cx={x} cy={y} r={1} />
          {words && <PlotWords words={words} kind="mark" />}
        </g>
      ))}
    </PlotAxes>
  );
}
