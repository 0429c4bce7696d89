import { plotType, type Words } from './placeText.ts';

/** Words on a plot, several lines under one another. */
export function PlotWords({ words, kind }: { readonly words: Words; readonly kind: 'name' | 'mark' }) {
  return (
    <text className={kind} y={words.y} textAnchor={words.anchor}>
      {words.lines.map((line, i) => (
        <tspan key={line} x={words.x} {...(i > 0 ? { dy: plotType.line } : {})}>
          {line}
        </tspan>
      ))}
    </text>
  );
}
