import { useRef } from 'react';
import { fieldAt } from '../../../model/fields.ts';
import { labelOfOption } from '../../../model/options.ts';
import { getAt, patternOf } from '../../../model/path.ts';
import { useDesign } from '../../bench/DesignContext.ts';
import type { DrawnPart } from '../drawnParts.ts';
import { groupOf } from '../groups.ts';
import type { LabelPlace, Measure, Words } from './figure.ts';
import { paper } from './figure.ts';
import { figures } from './figures.ts';
import { head, pathsOf, polyline } from './marks.ts';
import styles from './PartFigure.module.css';
import { rowsOf } from './rowsOf.ts';
import { useFieldAtHand } from './useFieldAtHand.ts';

const rowHeight = 13;

/**
 * Which measure is which, in a picture; a click on a measure puts the cursor into its field. It adds nothing to the way
 * of the keyboard, which has the fields themselves.
 */
export function PartFigure({ part }: { readonly part: DrawnPart }) {
  const svg = useRef<SVGSVGElement>(null);
  const { focused, hovered } = useFieldAtHand(svg);
  const design = useDesign((state) => state.design);
  const { shows, shapes, air, measures, remarks = [], kinds } = figures[part](design);
  const idle = new Set(
    groupOf(part)
      .fields.filter(({ when }) => when?.(design) === false)
      .map(({ path }) => path),
  );
  const atHand = [focused, hovered].filter((path) => path !== null).map(patternOf);
  const isAtHand = ({ path, also }: Pick<Measure, 'path' | 'also'>) =>
    atHand.includes(path) || (also !== undefined && atHand.includes(also));
  return (
    <svg
      ref={svg}
      className={styles.figure}
      viewBox={`0 0 ${paper.width} ${paper.height}`}
      role="img"
      aria-label={`${shows}; not to scale`}
    >
      {shapes.map(({ tone, d }) => (
        <path key={`${tone} ${d}`} d={d} className={styles.shape} data-tone={tone} />
      ))}
      {air.map((points) => (
        <AirWay key={polyline(points)} points={points} />
      ))}
      {remarks.map(({ words, spot, ...place }) => (
        <g key={words} className={styles.remark}>
          {spot && <path d={pathsOf(spot).line} className={styles.line} />}
          <Rows rows={[words]} {...place} />
        </g>
      ))}
      {measures
        .filter(({ path }) => !idle.has(path))
        .map((measure) => (
          <MeasureArt key={measure.path} measure={measure} strong={isAtHand(measure)} />
        ))}
      {kinds?.options.map(({ option, ...place }) => (
        <g
          key={option}
          className={styles.measure}
          data-path={kinds.path}
          data-strong={getAt(design, kinds.path) === option}
        >
          <Label words={labelOfOption(option)} place={place} />
        </g>
      ))}
      <text className={styles.scale} x={paper.width} y={paper.height - 4} textAnchor="end">
        not to scale
      </text>
    </svg>
  );
}

function AirWay({ points }: { readonly points: readonly (readonly [number, number])[] }) {
  const [before, tip] = points.slice(-2);
  if (!before || !tip) return null;
  return (
    <g className={styles.air}>
      <path d={polyline(points)} />
      <path d={head(tip, [tip[0] - before[0], tip[1] - before[1]], 1.4)} />
    </g>
  );
}

function MeasureArt({ measure, strong }: { readonly measure: Measure; readonly strong: boolean }) {
  const { path, mark, label } = measure;
  const { witness, line, heads, dot } = pathsOf(mark);
  return (
    <g className={styles.measure} data-path={path} data-strong={strong}>
      {witness !== '' && <path d={witness} className={styles.witness} />}
      <path d={line} className={styles.halo} />
      <path d={line} className={styles.line} />
      {heads !== '' && <path d={heads} className={styles.heads} />}
      {dot !== null && <circle cx={dot[0]} cy={dot[1]} r={2} className={styles.heads} />}
      <Label words={fieldAt(path).label} place={label} />
    </g>
  );
}

function Label({ words, place }: { readonly words: string; readonly place: LabelPlace }) {
  return <Rows rows={rowsOf(words, place.rows)} at={place.at} anchor={place.anchor} />;
}

function Rows({ rows, at: [x, y], anchor }: Words & { readonly rows: readonly string[] }) {
  return (
    <text textAnchor={anchor}>
      {rows.map((row, index) => (
        <tspan key={row} x={x} y={y + index * rowHeight}>
          {row}
        </tspan>
      ))}
    </text>
  );
}
