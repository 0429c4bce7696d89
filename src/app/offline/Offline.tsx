import { useState } from 'react';
import { createPortal } from 'react-dom';
import { Button } from '../../ui/kit/Button.tsx';
import styles from './Offline.module.css';
import { useVersions } from './useVersions.ts';

interface Props {
  /** Keeps what is typed; a reload waits for it, and does not come where this is false. */
  readonly keep: () => Promise<boolean>;
  /** Where notices float; without it the offer of a newer version stays in the line. */
  readonly notices: HTMLElement | null;
}

/** Empty while developing: only a build has a version. */
const version = document.querySelector<HTMLMetaElement>('meta[name="version"]')?.content ?? '';

/** One line at the foot of the page: whether it needs the network, which version it is, and whether there is a newer one. */
export function Offline({ keep, notices }: Props) {
  const { stored, newer, openNewest } = useVersions(version);
  const [later, setLater] = useState(false);
  const [refused, setRefused] = useState(false);
  const open = async () => {
    if (!refused && !(await keep())) {
      setRefused(true);
      setLater(false);
      return;
    }
    await openNewest();
  };
  if (version === '') return null;
  const offer = <Button onClick={open}>{refused ? 'Open without it' : 'Open the newer version'}</Button>;
  return (
    <div className={styles.line}>
      <span role="status">{stored ? 'Works without network.' : ''}</span>
      <span>Version {version.replace('+', ', build ')}</span>
      {newer && (later || notices === null) && offer}
      {newer &&
        !later &&
        notices !== null &&
        createPortal(
          <div className={styles.notice}>
            <p>
              {refused
                ? 'This browser would not keep what you typed. Save the design as a file first.'
                : 'A newer Throughfin is ready. It opens when you choose; nothing typed is lost.'}
            </p>
            <div className={styles.choices}>
              {offer}
              <Button onClick={() => setLater(true)}>Later</Button>
            </div>
          </div>,
          notices,
        )}
    </div>
  );
}
