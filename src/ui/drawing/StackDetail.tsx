import { useMemo } from 'react';
import type { DrawingModel, PartId } from '../../report/drawing.ts';
import { choosePart } from './choosePart.ts';
import { detailOf, type Layer } from './detail.ts';
import { partNumber } from './partNumbers.ts';
import styles from './StackDetail.module.css';
import { warmthStyle } from './warmthStyle.ts';

const width = 208;
const height = 44;
const top = 16;

interface Props {
  readonly model: DrawingModel;
  readonly selected: PartId;
  readonly onSelect: (part: PartId) => void;
}

/** What no drawing of the whole box can show: the layers between two plates, with their item numbers. */
export function StackDetail({ model, selected, onSelect }: Props) {
  const detail = useMemo(() => detailOf(model, width), [model]);
  if (detail === null) return null;
  return (
    <div className={styles.detail}>
      <svg
        viewBox={`0 0 ${width} ${top + height + 1}`}
        width={width}
        height={top + height + 1}
        aria-hidden="true"
        onClick={(event) => choosePart(event, onSelect)}
      >
        {detail.layers.map((layer) => (
          <LayerArt key={layer.key} layer={layer} chosen={layer.part === selected} />
        ))}
      </svg>
      <p>
        Resistor {detail.resistor}, {detail.enlarged} × life size
        {detail.words !== '' && <>: {detail.words}</>}
      </p>
    </div>
  );
}

function LayerArt({ layer, chosen }: { readonly layer: Layer; readonly chosen: boolean }) {
  const { part, role, x, width: across, warmth } = layer;
  return (
    <g data-chosen={chosen}>
      <rect
        x={x}
        y={top}
        width={across}
        height={height}
        className={styles.layer}
        data-part={part}
        data-role={role}
        style={warmthStyle(warmth)}
      />
      <text x={x + across / 2} y={top - 5} textAnchor="middle" className={styles.number}>
        {partNumber(part)}
      </text>
    </g>
  );
}
