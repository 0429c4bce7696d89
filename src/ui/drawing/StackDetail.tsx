import { type ComponentProps, lazy, Suspense } from 'react';
import styles from './StackDetail.module.css';

const StackLayers = lazy(async () => ({ default: (await import('./StackLayers.tsx')).StackLayers }));

/** What no drawing of the whole box can show, in room that is kept until it is there. */
export function StackDetail(props: ComponentProps<typeof StackLayers>) {
  return (
    <div className={styles.detail}>
      <Suspense fallback={null}>
        <StackLayers {...props} />
      </Suspense>
    </div>
  );
}
