import { useState } from 'react';
import { isTable, tooLarge } from '../../store/paste/tableSize.ts';
import { refused, type Told } from '../../store/paste/told.ts';
import { useActions } from '../bench/DesignContext.ts';

/** Takes tables from texts and files, and says what became of the last one. */
export interface TableTaking {
  readonly told: string;
  readonly tell: (words: string) => void;
  readonly fromText: (text: string) => Promise<Told>;
  readonly fromFile: (file: File) => Promise<Told>;
  /** What was pasted into a cell. @returns false where it is no table and belongs into the cell as it is */
  readonly fromCell: (text: string) => boolean;
}

const trouble = 'This table could not be read. Open the page again; the design is kept.';

/** @param take reads a text and lays it over the design; `file` is the name of the file it came from */
export function useTableTaking(take: (text: string, file?: string) => Promise<Told>): TableTaking {
  const [told, tell] = useState('');
  const { tell: tellPage } = useActions();
  const saying = async (work: () => Promise<Told>) => {
    const result = await work().catch(() => refused(trouble));
    tell(result.words);
    return result;
  };
  const fromText = (text: string) => saying(() => take(text));
  return {
    told,
    tell,
    fromText,
    fromFile: (file) => saying(() => takeFile(file, take)),
    fromCell: (text) => {
      if (!isTable(text)) return false;
      // Far from the cell nobody would see it.
      void fromText(text).then(({ ok, words }) => ok || tellPage(words));
      return true;
    },
  };
}

/** One that is far too large is not even read. */
async function takeFile(file: File, take: (text: string, file?: string) => Promise<Told>): Promise<Told> {
  const tooMuch = tooLarge(file);
  if (tooMuch !== null) return refused(tooMuch);
  const { tableText } = await import('../../io/tableBytes.ts');
  const read = tableText(new Uint8Array(await file.arrayBuffer()));
  return read.ok ? take(read.text, file.name) : refused(read.reason);
}
