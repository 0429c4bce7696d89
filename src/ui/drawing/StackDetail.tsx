import { useMemo } from 'react';
import type { DrawingModel, PartId } from '../../report/drawing.ts';
import { type Detail, detailOf } from './detail.ts';
import { partNumber } from './partNumbers.ts';
import styles from './StackDetail.module.css';
import { warmthStyle } from './warmthStyle.ts';

const width = 208;
const height = 44;
const top = 16;

interface Props {
  readonly model: DrawingModel;
  readonly selected: PartId;
}

/** What no drawing of the whole box can show: the layers between two plates, with their item numbers. */
export function StackDetail({ model, selected }: Props) {
  const detail = useMemo(() => detailOf(model, width), [model]);
  if (detail === null) return null;
  return (
    <div className={styles.detail}>
      <svg
        viewBox={`0 0 ${width} ${top + height + 1}`}
        width={width}
        height={top + height + 1}
        aria-hidden="true"
      >
        {detail.layers.map((layer) => (
          <LayerArt key={layer.key} {...layer} chosen={layer.part === selected} />
        ))}
      </svg>
      <p>
        Resistor {detail.resistor}, {detail.enlarged} × life size
        {detail.words !== '' && <>: {detail.words}</>}
      </p>
    </div>
  );
}

function LayerArt({
  part,
  role,
  x,
  width,
  warmth,
  chosen,
}: Detail['layers'][number] & { readonly chosen: boolean }) {
  return (
    <g data-chosen={chosen}>
      <rect
        x={x}
        y={top}
        width={width}
        height={height}
        className={styles.layer}
        data-part={part}
        data-role={role}
        style={warmthStyle(warmth)}
      />
      <text x={x + width / 2} y={top - 5} textAnchor="middle" className={styles.number}>
        {partNumber(part)}
      </text>
    </g>
  );
}
