import type { ResidualChart } from '../../report/bench/residualChart.ts';
import type { TitleBlock } from '../../report/types.ts';
import { sheetMeasures } from './measures.ts';
import { plotResiduals } from './plotResiduals.ts';
import { PageHead } from './TablePages.tsx';

interface Props {
  readonly label: string;
  readonly title: TitleBlock;
  readonly charts: readonly ResidualChart[];
  /** Number of the first page, and of all. */
  readonly first: number;
  readonly pages: number;
}

/** Height of US Letter inside the margins, less the heads of the page. */
const room_mm = 225;

/** A page for every chart of readings. */
export function ResidualPages({ label, title, charts, first, pages }: Props) {
  return charts.map((chart, at) => {
    const number = first + at;
    return (
      <section key={chart.id} className="sheet-further" aria-label={`${label}, page ${number} of ${pages}`}>
        <PageHead label={label} title={title} number={number} pages={pages} />
        <figure className="sheet-residuals">
          <figcaption>{chart.caption}</figcaption>
          <Plot chart={chart} />
          <p className="key">
            {chart.isFitted ? 'Ring: before the fit. Diamond: after it. ' : ''}Shaded: within the instrument.
          </p>
        </figure>
      </section>
    );
  });
}

function Plot({ chart }: { readonly chart: ResidualChart }) {
  const { width, height, frame, ticks, band, middle, lines } = plotResiduals(
    chart,
    sheetMeasures.width,
    room_mm,
  );
  const bottom = frame.y + frame.height;
  return (
    <svg className="sheet-plot" viewBox={`0 0 ${width} ${height}`} role="img" aria-label={chart.spoken}>
      <rect className="band" {...band} />
      {ticks.map(({ at, text }) => (
        <g key={text}>
          <line className="grid" x1={at} x2={at} y1={frame.y} y2={bottom} />
          <text x={at} y={bottom + 3} textAnchor="middle">
            {text}
          </text>
        </g>
      ))}
      <line className="middle" x1={middle} x2={middle} y1={frame.y} y2={bottom} />
      <rect className="frame" {...frame} />
      {lines.map(({ key, label, y, before, after }) => (
        <g key={key}>
          <text x={frame.x - 1.5} y={y + 0.8} textAnchor="end">
            {label}
          </text>
          <circle className="before" cx={before} cy={y} r={1.1} />
          {after !== null && <path className="after" d={`M${after} ${y - 1.5}l1.5 1.5-1.5 1.5-1.5-1.5z`} />}
        </g>
      ))}
      <text className="unit" x={frame.x + frame.width} y={bottom + 6.4} textAnchor="end">
        {chart.xLabel}
      </text>
    </svg>
  );
}
