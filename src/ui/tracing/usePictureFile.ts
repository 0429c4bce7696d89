import { useCallback, useEffect, useState } from 'react';
import type { TracingStore } from '../../store/tracing/tracingStore.ts';
import { readPictureFile } from './readPictureFile.ts';

/** Takes pictures from files and from the clipboard for as long as it is shown. @param owner what they are laid out for */
export function usePictureFile(store: TracingStore, owner: string) {
  const [refusal, setRefusal] = useState<string | null>(null);
  const take = useCallback(
    async (file: File) => {
      const read = await readPictureFile(file);
      setRefusal(read.ok ? null : read.reason);
      if (read.ok) store.getState().setPicture({ ...read.picture, owner });
      else store.getState().goTo('picture');
    },
    [store, owner],
  );
  useEffect(() => {
    const paste = (event: ClipboardEvent) => {
      const file = event.clipboardData?.files[0];
      if (file === undefined) return;
      event.preventDefault();
      void take(file);
    };
    document.addEventListener('paste', paste);
    return () => document.removeEventListener('paste', paste);
  }, [take]);
  return { take: (file: File) => void take(file), refusal };
}
