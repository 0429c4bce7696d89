import type { Keeper } from '../../store/keeping/keeper.ts';
import { Button } from '../../ui/kit/Button.tsx';
import { Dialog } from '../../ui/kit/Dialog.tsx';
import styles from '../Dialogs.module.css';

interface Props {
  readonly keeper: Keeper;
  readonly onSave: () => void;
}

/** Two tabs have changed one design. Closing the question keeps both: nothing may go by a slip. */
export function PartedDialog({ keeper, onSave }: Props) {
  const keepBoth = () => void keeper.settle('keepBoth');
  return (
    <Dialog title="Changed in two tabs" onClose={keepBoth}>
      <p>
        Another tab has changed or removed this design since this one last kept it. Neither has been
        overwritten.
      </p>
      <div className={styles.choices}>
        <Button onClick={keepBoth} autoFocus>
          Keep both, mine as a variant
        </Button>
        <Button onClick={() => void keeper.settle('takeTheirs')}>Take the other’s</Button>
        <Button onClick={onSave}>Save mine as a file</Button>
      </div>
    </Dialog>
  );
}
