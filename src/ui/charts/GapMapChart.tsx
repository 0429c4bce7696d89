import { useRef } from 'react';
import type { GapMapPicture } from '../../report/gaps/gapMapPicture.ts';
import { useWidth } from '../drawing/useWidth.ts';
import { depthStyle } from './depthStyle.ts';
import styles from './GapMapChart.module.css';
import { mapGeometry, pathOf, placedNames } from './gapMapGeometry.ts';
import { tickText } from './rows.ts';

const hatch = 'gap-map-hatch';

/** A map over two gaps: tints and named lines as of a terrain, hatched where the box does not hold, a dot for the design. */
export default function GapMapChart({ picture }: { readonly picture: GapMapPicture }) {
  const place = useRef<HTMLDivElement>(null);
  const geometry = mapGeometry(picture, useWidth(place, 560));
  const { width, height, left, right, top, bottom, x, y } = geometry;
  return (
    <div ref={place} className={styles.map}>
      <svg viewBox={`0 0 ${width} ${height}`} role="img" aria-label={picture.spoken}>
        <defs>
          <pattern
            id={hatch}
            width="7"
            height="7"
            patternUnits="userSpaceOnUse"
            patternTransform="rotate(45)"
          >
            <path d="M0 0V7" className={styles.hatch} />
          </pattern>
        </defs>
        {picture.bands.map(({ depth, polygons }) => (
          <path
            key={depth}
            d={pathOf(polygons, geometry, true)}
            className={styles.band}
            style={depthStyle(depth)}
          />
        ))}
        {picture.isolines.map(({ label, lines }) => (
          <path key={label} d={pathOf(lines, geometry, false)} className={styles.isoline} />
        ))}
        <path d={pathOf(picture.failArea, geometry, true)} fill={`url(#${hatch})`} />
        <path d={pathOf(picture.littleLines, geometry, false)} className={styles.little} />
        <path d={pathOf(picture.failLines, geometry, false)} className={styles.fails} />
        <Axes picture={picture} geometry={geometry} />
        {placedNames(picture, geometry).map(({ label, x: left, y: top }) => (
          <text key={`${label} ${left} ${top}`} x={left} y={top} dy="0.35em" className={styles.name}>
            {label}
          </text>
        ))}
        {picture.present && (
          <>
            <circle cx={x(picture.present.x)} cy={y(picture.present.y)} r={5} className={styles.present} />
            <text
              x={x(picture.present.x)}
              y={y(picture.present.y)}
              dx={x(picture.present.x) > (left + right) / 2 ? -9 : 9}
              dy={y(picture.present.y) > (top + bottom) / 2 ? -8 : 18}
              textAnchor={x(picture.present.x) > (left + right) / 2 ? 'end' : 'start'}
              className={styles.now}
            >
              now
            </text>
          </>
        )}
      </svg>
      <ul className={styles.key}>
        {picture.key.map((line) => (
          <li key={line}>{line}</li>
        ))}
      </ul>
    </div>
  );
}

function Axes({
  picture,
  geometry: { left, right, top, bottom, height, x, y },
}: {
  readonly picture: GapMapPicture;
  readonly geometry: ReturnType<typeof mapGeometry>;
}) {
  return (
    <g className={styles.axes}>
      <rect x={left} y={top} width={right - left} height={bottom - top} />
      {picture.xTicks.map((tick) => (
        <g key={tick}>
          <path d={`M${x(tick)} ${bottom}v5`} />
          <text x={x(tick)} y={bottom + 18} textAnchor="middle">
            {tickText(tick)}
          </text>
        </g>
      ))}
      {picture.yTicks.map((tick) => (
        <g key={tick}>
          <path d={`M${left} ${y(tick)}h-5`} />
          <text x={left - 8} y={y(tick)} dy="0.35em" textAnchor="end">
            {tickText(tick)}
          </text>
        </g>
      ))}
      <text x={(left + right) / 2} y={height - 6} textAnchor="middle">
        {picture.xLabel}, {picture.unit}
      </text>
      <text x={4} y={14}>
        {picture.yLabel}, {picture.unit}
      </text>
    </g>
  );
}
