import { useState } from 'react';
import { getAt } from '../../model/path.ts';
import type { OwnEntry } from '../../model/shelf/entry.ts';
import { type KindId, kinds } from '../../model/shelf/kinds.ts';
import { presentValues } from '../../model/shelf/standing.ts';
import { newEntryId } from '../../store/ownShelf.ts';
import { useDesignStore } from '../bench/DesignContext.ts';
import { Dialog } from '../kit/Dialog.tsx';
import { EntryForm } from './EntryForm.tsx';
import { ShelfChooser } from './ShelfChooser.tsx';
import { useShelfActions } from './ShelfContext.ts';

interface Props {
  readonly kind: KindId;
  readonly place: string;
  readonly onClose: () => void;
}

/** The shelf of one kind: choosing from it, and writing entries of one's own. */
export function ShelfDialog({ kind, place, onClose }: Props) {
  const store = useDesignStore();
  const { put } = useShelfActions();
  const [writing, setWriting] = useState<OwnEntry | null>(null);
  const [isNew, setIsNew] = useState(false);
  const [chosen, setChosen] = useState<string | null>(null);
  const [told, setTold] = useState('');

  /** An entry to begin with: what stands in the inputs now. */
  const begin = () => {
    const { design } = store.getState();
    const { name } = kinds[kind];
    setIsNew(true);
    setWriting({
      id: newEntryId(),
      kind,
      name: name === null ? '' : String(getAt(design, name)),
      values: presentValues(design, kind, place),
      source: '',
      remark: '',
    });
  };
  if (writing === null)
    return (
      <Dialog title={`On the shelf: ${kinds[kind].title.toLowerCase()}`} wide onClose={onClose}>
        <ShelfChooser
          kind={kind}
          place={place}
          chosen={chosen}
          onChoose={setChosen}
          told={told}
          onTell={setTold}
          onKeepPresent={begin}
          onEdit={(entry) => {
            setIsNew(false);
            setWriting(entry);
          }}
        />
      </Dialog>
    );
  return (
    <Dialog title={isNew ? 'An entry of your own' : `Change “${writing.name}”`} wide onClose={onClose}>
      <EntryForm
        entry={writing}
        place={place}
        isNew={isNew}
        onBack={() => setWriting(null)}
        onDone={async (entry) => {
          // The list is to have it when it shows again.
          await put(entry);
          setChosen(entry.id);
          setTold(isNew ? `“${entry.name}” is on the shelf.` : `“${entry.name}” is changed.`);
          setWriting(null);
        }}
      />
    </Dialog>
  );
}
