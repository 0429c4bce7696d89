import type { PartId } from '../../report/drawing.ts';
import type { PlacedShape, PlacedView } from './geometry.ts';
import styles from './ViewArt.module.css';
import { warmthStyle } from './warmthStyle.ts';

interface Props {
  readonly view: PlacedView;
  readonly selected: PartId;
  /** Prefix of the ids of the hatches. */
  readonly hatch: string;
}

/** Told from the fins' air by more than colour; the leak and the air past the chips are dashed in the style sheet. */
const hatched: readonly string[] = ['side', 'end'];

/** One view: surfaces, air, parts in the way of the air. */
export function ViewArt({ view, selected, hatch }: Props) {
  const shape = (placed: PlacedShape) => (
    <path
      key={placed.key}
      d={placed.d}
      className={styles.shape}
      data-part={placed.part}
      data-role={placed.role}
      data-chosen={placed.part === selected}
      data-off={placed.off}
      data-warm={placed.warmth !== null}
      style={warmthStyle(placed.warmth)}
      {...(placed.role === 'wall' || placed.role === 'baffle' ? { fill: `url(#${hatch}-cut)` } : {})}
    >
      {placed.hint !== null && <title>{placed.hint}</title>}
    </path>
  );
  const isBack = ({ role }: PlacedShape) => ['plenum', 'neck', 'fins', 'fanOpening'].includes(role);
  return (
    <g>
      {view.shapes.filter(isBack).map(shape)}
      {view.streams.map(({ key, kind, trunk, branch, width, tip }) => (
        <g key={key} className={styles.stream} data-kind={kind}>
          <path d={trunk} strokeWidth={width} className={styles.trunk} />
          <path
            d={branch}
            strokeWidth={width}
            {...(hatched.includes(kind) ? { stroke: `url(#${hatch}-slip)` } : {})}
          />
          {tip !== null && kind !== 'between' && <path d={tip} className={styles.tip} />}
        </g>
      ))}
      {view.shapes.filter((placed) => !isBack(placed)).map(shape)}
    </g>
  );
}
