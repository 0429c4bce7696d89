import { axisIds } from '../../model/tracing/tracing.ts';
import type { Picture } from '../../store/tracing/tracingStore.ts';
import styles from './Stage.module.css';
import { pathThrough } from './stageGeometry.ts';
import { useTracingReport } from './TracingContext.ts';

/** The curve as it will be computed with, and the line between the two marks of each axis. */
export function Overlay({ picture }: { readonly picture: Picture }) {
  const { marks, curve } = useTracingReport();
  return (
    <svg className={styles.overlay} viewBox={`0 0 ${picture.width} ${picture.height}`} aria-hidden="true">
      {axisIds.map((axis) => {
        const [first, second] = marks[axis];
        return (
          first.at &&
          second.at && (
            <path
              key={axis}
              className={styles.axis}
              data-kind={axis}
              d={pathThrough([first.at, second.at])}
            />
          )
        );
      })}
      {curve.length > 0 && (
        <>
          <path className={styles.halo} d={pathThrough(curve)} />
          <path className={styles.curve} d={pathThrough(curve)} />
        </>
      )}
    </svg>
  );
}
