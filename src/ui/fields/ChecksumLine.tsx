import { useDeferredValue, useMemo } from 'react';
import { designChecksum } from '../../model/designChecksum.ts';
import { checksumSays } from '../../report/checksumSays.ts';
import { useDesign } from '../bench/DesignContext.ts';
import styles from './ChecksumLine.module.css';

/** Of the last design that went together: what would be saved and printed. */
export function ChecksumLine() {
  const design = useDeferredValue(useDesign(({ solvedDesign }) => solvedDesign));
  const checksum = useMemo(() => designChecksum(design), [design]);
  return (
    <p className={styles.line}>
      Checksum <code>{checksum}</code>
      <small>{checksumSays}</small>
    </p>
  );
}
