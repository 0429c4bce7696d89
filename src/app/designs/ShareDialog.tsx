import { useEffect, useState } from 'react';
import { useDesign } from '../../ui/bench/DesignContext.ts';
import { Button } from '../../ui/kit/Button.tsx';
import { Dialog } from '../../ui/kit/Dialog.tsx';
import styles from './designs.module.css';

/** Common practice, no source: mail and chat programs tend to cut or break longer addresses. */
const careful_characters = 2000;

/** A link that is the design: whoever opens it needs nothing else, and no server sees it. */
export function ShareDialog({ onClose }: { readonly onClose: () => void }) {
  const design = useDesign(({ solvedDesign }) => solvedDesign);
  const stale = useDesign((state) => state.stale);
  const [link, setLink] = useState('');
  const [told, setTold] = useState('');
  useEffect(() => {
    void import('../../io/shareLink.ts')
      .then(({ designFragment }) => designFragment(design))
      .then((fragment) => setLink(location.href.replace(/#.*$/, '') + fragment));
  }, [design]);
  const copy = async () => {
    try {
      await navigator.clipboard.writeText(link);
      setTold('Copied.');
    } catch {
      setTold('The browser does not let the page copy. Select the link and copy it yourself.');
    }
  };
  return (
    <Dialog title="A link that holds this design" onClose={onClose}>
      <p>
        The design itself stands in the link, after its #. Nothing is sent anywhere by making or opening it.
        {stale && ' It holds the last design that went together, without what is wrong in the fields now.'}
      </p>
      <label className={styles.link}>
        Link, {link.length.toLocaleString('en-GB')} characters
        <textarea readOnly rows={4} value={link} onFocus={(event) => event.currentTarget.select()} />
      </label>
      {link.length > careful_characters && (
        <p className={styles.small}>
          Some mail and chat programs cut addresses as long as this. A file is safer there.
        </p>
      )}
      <div className={styles.choices}>
        <Button onClick={() => void copy()} disabled={link === ''}>
          Copy the link
        </Button>
        <span role="status">{told}</span>
      </div>
    </Dialog>
  );
}
