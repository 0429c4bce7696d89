import { useRef, useState } from 'react';
import { defaultDesign } from '../model/defaults.ts';
import { parseDesignText } from '../model/designText.ts';
import { type ExampleId, exampleById, examples } from '../model/examples/examples.ts';
import type { ReadProblem } from '../model/readDesign.ts';
import { serialiseDesign } from '../model/serialiseDesign.ts';
import { useActions, useDesignStore } from '../ui/bench/DesignContext.ts';
import { readTextFile, saveDesign } from './files.ts';

/** What waits to take the place of a design that nobody has saved. */
export interface Pending {
  readonly name: string;
  readonly replace: () => void;
}

export interface Refused {
  readonly name: string;
  readonly problems: readonly ReadProblem[];
}

/** Texts of the designs that can be had again at any time. */
const untouched = new Set([defaultDesign, ...examples.map(({ design }) => design)].map(serialiseDesign));

/** Opening, saving and replacing: nothing unsaved goes without a question, nothing half-read is taken. */
export function useDesignFiles() {
  const store = useDesignStore();
  const { loadExample, newDesign, openText } = useActions();
  const saved = useRef('');
  const [pending, setPending] = useState<Pending | null>(null);
  const [refused, setRefused] = useState<Refused | null>(null);

  const isUnsaved = () => {
    const { design, drafts } = store.getState();
    const text = serialiseDesign(design);
    const isKnown = text === saved.current || untouched.has(text);
    return !isKnown || Object.values(drafts).some(({ problem }) => problem !== null);
  };
  const offer = (name: string, replace: () => void) => {
    const run = () => {
      replace();
      setPending(null);
    };
    if (isUnsaved()) setPending({ name, replace: run });
    else run();
  };
  return {
    pending,
    refused,
    keep: () => setPending(null),
    dismiss: () => setRefused(null),
    /** The last design that goes together: a file has to open again. */
    save: () => {
      const { design, solvedDesign } = store.getState();
      saveDesign(solvedDesign);
      if (design === solvedDesign) saved.current = serialiseDesign(design);
    },
    example: (id: ExampleId) => offer(exampleById(id).title, () => loadExample(id)),
    fresh: () => offer('A new design', newDesign),
    open: async (file: File) => {
      const read = await readTextFile(file);
      if (!read.ok) {
        setRefused({ name: file.name, problems: [{ path: '', reason: read.reason }] });
        return;
      }
      // A file that cannot be opened is no reason to ask about the design that is in its way.
      const result = parseDesignText(read.text);
      if (!result.ok) {
        setRefused({ name: file.name, problems: result.problems });
        return;
      }
      offer(file.name, () => {
        openText(read.text);
        saved.current = serialiseDesign(result.design);
      });
    },
  };
}

export type DesignFiles = ReturnType<typeof useDesignFiles>;
