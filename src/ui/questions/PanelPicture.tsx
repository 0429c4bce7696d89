import type { CutPanel } from '../../report/cut.ts';
import { SaveRow } from '../takeOut/SaveRow.tsx';
import { placePattern } from './flatPattern.ts';
import styles from './PanelPicture.module.css';

interface Props {
  readonly panel: CutPanel;
  readonly unit: string;
  /** Pixels for a metre, the same for all panels of a list. */
  readonly scale: number;
}

/** One panel flat on the bench, to scale, under its mark and how often it is wanted. */
export function PanelPicture({ panel, unit, scale }: Props) {
  const { mark, name, perBox, inAll, sheet, pattern } = panel;
  const { width, height, outline, cutOuts, rules, texts } = placePattern(pattern, scale);
  return (
    <figure className={styles.figure}>
      <figcaption>
        <b>{mark}</b> {name}
        <span className={styles.count}>
          {inAll === perBox ? `${perBox} ×` : `${perBox} × a box, ${inAll} in all`}
        </span>
      </figcaption>
      <svg viewBox={`0 0 ${width} ${height}`} role="img" aria-label={pattern.spoken}>
        <path className={styles.sheet} d={outline} />
        {cutOuts.map(({ key, d, edges, scribed }) => (
          <g key={key} className={scribed ? styles.scribed : styles.cutOut}>
            <path className={edges === null ? undefined : styles.notch} d={d} />
            {edges !== null && <path d={edges} />}
          </g>
        ))}
        <path className={styles.rule} d={rules} />
        {texts.map(({ key, x, y, text, anchor }) => (
          <text key={key} x={x} y={y} textAnchor={anchor}>
            {text}
          </text>
        ))}
      </svg>
      <p className={styles.foot}>
        {sheet}, measures in {unit}
      </p>
      <SaveRow id={`panel-${mark}`} caption={`${mark} ${name}`} picture />
    </figure>
  );
}
