import { useDeferredValue } from 'react';
import type { FigureId } from '../../report/working/types.ts';
import { Dialog } from '../kit/Dialog.tsx';
import { useWorking } from './useWorking.ts';
import { WorkingView } from './WorkingView.tsx';

interface Props {
  readonly id: FigureId;
  readonly onChoose: (id: FigureId) => void;
  readonly onClose: () => void;
}

/** One figure of the present answer, down to the equations and numbers it rests on; follows what is on the bench. */
export function WorkingDialog({ id, onChoose, onClose }: Props) {
  const { report, fresh } = useWorking();
  const shown = useDeferredValue(report);
  const figure = shown?.figures.find((each) => each.id === id);
  const title = figure ? `${figure.title}: ${figure.value}` : 'How is it computed?';
  return (
    <Dialog wide title={title} onClose={onClose}>
      {shown === null ? (
        <p role="status">Working it out…</p>
      ) : (
        <WorkingView report={shown} id={id} fresh={fresh} onChoose={onChoose} />
      )}
    </Dialog>
  );
}
