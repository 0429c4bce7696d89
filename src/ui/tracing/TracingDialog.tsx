import { useStore } from 'zustand';
import { Dialog } from '../kit/Dialog.tsx';
import { TracingBench } from './TracingBench.tsx';
import { type LaidOut, useLaid } from './useLaid.ts';

interface Props {
  /** `fan.curve`, `moreFans[0].curve` or `extras[0].points`. */
  readonly list: string;
  /** As the editor of the points is headed. */
  readonly heading: string;
  readonly onClose: () => void;
}

/** The picture of a data sheet becomes the points of a curve. Shows when what was kept of it is here. */
export default function TracingDialog(props: Props) {
  const { laid, keeping } = useLaid(props.list);
  return laid && <Open {...props} laid={laid} keeping={keeping} />;
}

interface OpenProps extends Props {
  readonly laid: NonNullable<LaidOut['laid']>;
  readonly keeping: LaidOut['keeping'];
}

function Open({ list, heading, onClose, laid: { store }, keeping }: OpenProps) {
  const hasPicture = useStore(store, ({ picture }) => picture !== null);
  return (
    <Dialog title={`${heading} from a picture`} large={hasPicture} wide={!hasPicture} onClose={onClose}>
      <TracingBench store={store} list={list} keeping={keeping} />
    </Dialog>
  );
}
