import { Dialog } from '../kit/Dialog.tsx';
import { TracingBench } from './TracingBench.tsx';
import { useLaid } from './useLaid.ts';

interface Props {
  /** `fan.curve`, `moreFans[0].curve` or `extras[0].points`. */
  readonly list: string;
  /** As the editor of the points is headed. */
  readonly heading: string;
  readonly onClose: () => void;
}

/** The picture of a data sheet becomes the points of a curve. */
export default function TracingDialog({ list, heading, onClose }: Props) {
  const { laid, keeping } = useLaid(list);
  return (
    <Dialog title={`${heading} from a picture`} large onClose={onClose}>
      {laid && <TracingBench store={laid.store} list={list} keeping={keeping} />}
    </Dialog>
  );
}
