import { Button } from '../ui/kit/Button.tsx';
import { Dialog } from '../ui/kit/Dialog.tsx';
import { DropTarget } from './DropTarget.tsx';
import styles from './FileDialogs.module.css';
import type { DesignFiles } from './useDesignFiles.ts';

/** Questions and refusals about files, and the page as a place to drop one. */
export function FileDialogs({ files }: { readonly files: DesignFiles }) {
  const { pending, refused, keep, dismiss, save, open } = files;
  return (
    <>
      <DropTarget onFile={(file) => void open(file)} />
      {pending !== null && (
        <Dialog title="Replace the design on the bench?" onClose={keep}>
          <p>It has changes that are in no file yet. “{pending.name}” would take its place.</p>
          <div className={styles.choices}>
            <Button
              onClick={() => {
                save();
                pending.replace();
              }}
            >
              Save it, then replace
            </Button>
            <Button onClick={pending.replace}>Replace</Button>
            <Button onClick={keep} autoFocus>
              Keep it
            </Button>
          </div>
        </Dialog>
      )}
      {refused !== null && (
        <Dialog title="This file was not opened" onClose={dismiss}>
          <p>Nothing on the bench has changed. What is wrong with “{refused.name}”:</p>
          <ul className={styles.problems}>
            {refused.problems.map(({ path, reason }) => (
              <li key={`${path} ${reason}`}>
                {path !== '' && <code>{path}</code>} {reason}
              </li>
            ))}
          </ul>
          <div className={styles.choices}>
            <Button onClick={dismiss} autoFocus>
              Close
            </Button>
          </div>
        </Dialog>
      )}
    </>
  );
}
