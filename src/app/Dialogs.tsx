import { useDesign } from '../ui/bench/DesignContext.ts';
import { Button } from '../ui/kit/Button.tsx';
import { Dialog } from '../ui/kit/Dialog.tsx';
import styles from './Dialogs.module.css';
import { DropTarget } from './DropTarget.tsx';
import { DesignsDialog } from './designs/DesignsDialog.tsx';
import { PartedDialog } from './designs/PartedDialog.tsx';
import { ShareDialog } from './designs/ShareDialog.tsx';
import type { Designs } from './useDesigns.ts';

/** Everything that stands before the page for a moment: designs, links, questions and refusals about them. */
export function Dialogs({ designs }: { readonly designs: Designs }) {
  const { pending, refused, shown, keep, dismiss, save, show, keeper } = designs;
  const parted = useDesign(({ keeping }) => keeping === 'parted');
  return (
    <>
      <DropTarget onFile={(file) => void designs.open(file)} />
      {shown === 'designs' && keeper !== null && <DesignsDialog designs={designs} keeper={keeper} />}
      {shown === 'share' && <ShareDialog onClose={() => show(null)} />}
      {parted && keeper !== null && pending === null && <PartedDialog keeper={keeper} onSave={save} />}
      {pending !== null && (
        <Dialog title="Replace the design on the bench?" onClose={keep}>
          <p>This browser does not keep it, and no file has it yet. “{pending.name}” would take its place.</p>
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
        <Dialog title={refused.title} onClose={dismiss}>
          <p>Nothing on the bench has changed. What is wrong with “{refused.name}”:</p>
          <ul className={styles.problems}>
            {refused.problems.map(({ path, reason }) => (
              <li key={`${path} ${reason}`}>
                {path !== '' && <code>{path}</code>} {reason}
              </li>
            ))}
          </ul>
        </Dialog>
      )}
    </>
  );
}
