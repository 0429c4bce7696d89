import { type PointerEvent, useRef, useState } from 'react';
import type { EvidenceChart as Chart, EvidencePoint } from '../../report/evidence/evidenceChart.ts';
import { useWidth } from '../drawing/useWidth.ts';
import styles from './EvidenceChart.module.css';
import {
  type EvidenceGeometry,
  evidenceGeometry,
  legendPlaces,
  legendTop,
  markAt,
  marksPath,
  nearestPoint,
  powerText,
} from './evidenceGeometry.ts';
import { tickText } from './rows.ts';

/** Checks as points over the size of the published number, with the line of agreement; a kind has a mark of its own. */
export default function EvidenceChart({ chart }: { readonly chart: Chart }) {
  const place = useRef<HTMLDivElement>(null);
  const width = useWidth(place, 560);
  const [read, setRead] = useState<EvidencePoint | null>(null);
  const legend = legendPlaces(chart, width);
  const geometry = evidenceGeometry(chart, width, (legend.at(-1)?.line ?? 0) + 1);
  const follow = ({ currentTarget, clientX, clientY }: PointerEvent<SVGSVGElement>) => {
    const box = currentTarget.getBoundingClientRect();
    const scale = geometry.width / box.width;
    setRead(
      nearestPoint(chart, geometry, { x: (clientX - box.left) * scale, y: (clientY - box.top) * scale }),
    );
  };
  return (
    <div ref={place} className={styles.chart}>
      <svg
        viewBox={`0 0 ${geometry.width} ${geometry.height}`}
        role="img"
        aria-label={chart.spoken}
        onPointerMove={follow}
        onPointerDown={follow}
        onPointerLeave={() => setRead(null)}
      >
        <Axes chart={chart} geometry={geometry} />
        {chart.series.map(({ kind, points }) => (
          <path key={kind} d={marksPath(kind, points, geometry)} className={styles.marks} data-kind={kind} />
        ))}
        {read && <circle cx={geometry.x(read.x)} cy={geometry.y(read.y)} r={8} className={styles.read} />}
        {legend.map(({ kind, label, x, line }) => (
          <g key={kind}>
            <path
              d={markAt(kind, x + 5, legendTop(geometry, line) - 4)}
              className={styles.marks}
              data-kind={kind}
            />
            <text x={x + 14} y={legendTop(geometry, line)} className={styles.name}>
              {label}
            </text>
          </g>
        ))}
      </svg>
      <p className={styles.reading} aria-hidden="true" data-unpainted>
        {read === null ? 'Point at a mark to read it.' : `${read.name}: ${read.says}`}
      </p>
    </div>
  );
}

function Axes({ chart, geometry }: { readonly chart: Chart; readonly geometry: EvidenceGeometry }) {
  const { left, right, top, bottom, x, y } = geometry;
  const { xTicks, yTicks, upright, yLabel } = chart;
  const isMatch = upright === 'powers';
  return (
    <g className={styles.axes}>
      {xTicks.map((tick) => (
        <g key={tick}>
          <path d={`M${x(tick)} ${top}V${bottom}`} />
          <text x={x(tick)} y={bottom + 16} textAnchor="middle">
            {powerText(tick)}
          </text>
        </g>
      ))}
      {yTicks.map((tick) => (
        <g key={tick}>
          <path d={`M${left} ${y(tick)}H${right}`} />
          <text x={left - 6} y={y(tick)} dy="0.35em" textAnchor="end">
            {isMatch ? powerText(tick) : tickText(tick)}
          </text>
        </g>
      ))}
      <text x={left} y={top - 10} textAnchor={isMatch ? 'start' : 'end'}>
        {yLabel}
      </text>
      <text x={(left + right) / 2} y={bottom + 33} textAnchor="middle">
        published
      </text>
      <path
        className={styles.agreement}
        d={isMatch ? `M${left} ${bottom}L${right} ${top}` : `M${left} ${y(0)}H${right}`}
      />
    </g>
  );
}
