import { lazy, Suspense } from 'react';
import type { PartId } from '../../report/drawing.ts';
import { isDrawn } from './drawnParts.ts';
import styles from './FigurePlace.module.css';

const PartFigure = lazy(async () => ({ default: (await import('./figures/PartFigure.tsx')).PartFigure }));

/** Room for the figure of a part; the figure itself comes after the first paint, and nothing moves when it does. */
export function FigurePlace({ part }: { readonly part: PartId }) {
  if (!isDrawn(part)) return null;
  return (
    <div className={styles.place}>
      <Suspense fallback={null}>
        <PartFigure key={part} part={part} />
      </Suspense>
    </div>
  );
}
