import { useEffect, useRef, useState } from 'react';
import { defaultDesign } from '../model/defaults.ts';
import type { Design } from '../model/design.ts';
import { parseDesignText } from '../model/designText.ts';
import { eightResistors } from '../model/examples/eightResistors.ts';
import type { ReadProblem } from '../model/readDesign.ts';
import { serialiseDesign } from '../model/serialiseDesign.ts';
import type { Keeper } from '../store/keeping/keeper.ts';
import { useActions, useDesignStore } from '../ui/bench/DesignContext.ts';
import { readTextFile } from '../ui/kit/textFiles.ts';
import { saveDesign } from './files.ts';

/** What waits to take the place of a design that is kept nowhere. */
export interface Pending {
  readonly name: string;
  readonly replace: () => void;
}

export interface Refused {
  /** "This file was not opened", and what was meant to be. */
  readonly title: string;
  readonly name: string;
  readonly problems: readonly ReadProblem[];
}

/** Texts of the designs that a first visit begins with: these can be had again at any time, as any example just opened. */
const untouched = new Set([defaultDesign, eightResistors].map(serialiseDesign));

/** Designs come and go: nothing that is kept nowhere goes without a question, nothing half-read is taken. */
export function useDesigns(coming: Promise<Keeper>) {
  const store = useDesignStore();
  const { openExample, newDesign, openText } = useActions();
  const saved = useRef('');
  const [pending, setPending] = useState<Pending | null>(null);
  const [refused, setRefused] = useState<Refused | null>(null);
  const [keeper, setKeeper] = useState<Keeper | null>(null);
  useEffect(() => void coming.then(setKeeper), [coming]);
  const [shown, setShown] = useState<'designs' | 'share' | null>(null);

  const isInAFile = () => {
    const { design, drafts } = store.getState();
    const text = serialiseDesign(design);
    const isKnown = text === saved.current || untouched.has(text);
    return isKnown && Object.values(drafts).every(({ problem }) => problem === null);
  };
  const offer = async (name: string, replace: () => void) => {
    const run = () => {
      replace();
      setPending(null);
      setShown(null);
    };
    const isKept = await (await coming).flush();
    if (isKept || isInAFile()) run();
    else {
      setShown(null);
      setPending({ name, replace: run });
    }
  };
  const openDesignText = async (text: string, name: string, title: string) => {
    // A text that cannot be opened is no reason to ask about the design that is in its way.
    const result = parseDesignText(text);
    if (!result.ok) {
      setRefused({ title, name, problems: result.problems });
      return;
    }
    await offer(name, () => {
      openText(text);
      saved.current = serialiseDesign(result.design);
    });
  };
  const openLink = async (fragment: string) => {
    const { holdsDesign, readFragment } = await import('../io/shareLink.ts');
    if (!holdsDesign(fragment)) return;
    // A second look at the same address must not bring the first state back over later edits.
    history.replaceState(null, '', location.pathname + location.search);
    const title = 'This link was not opened';
    const read = await readFragment(fragment);
    if (read.ok) await openDesignText(read.text, 'the design in the link', title);
    else setRefused({ title, name: 'the link', problems: [{ path: '', reason: read.reason }] });
  };
  const link = useRef(openLink);
  link.current = openLink;
  useEffect(() => {
    const look = () => {
      if (location.hash.length > 1) void link.current(location.hash);
    };
    look();
    window.addEventListener('hashchange', look);
    return () => window.removeEventListener('hashchange', look);
  }, []);

  return {
    keeper,
    pending,
    refused,
    shown,
    show: setShown,
    /** @returns whether everything typed is kept by the browser now */
    flush: async () => (await coming).flush(),
    keep: () => setPending(null),
    dismiss: () => setRefused(null),
    /** The last design that goes together: a file has to open again. */
    save: () => {
      const { design, solvedDesign } = store.getState();
      saveDesign(solvedDesign);
      if (design === solvedDesign) saved.current = serialiseDesign(design);
    },
    example: (example: Design) =>
      void offer(example.title, () => {
        openExample(example);
        saved.current = serialiseDesign(example);
      }),
    fresh: () => void offer('A new design', newDesign),
    /** One of those the browser keeps. */
    kept: (id: string, name: string) => void offer(name, () => void keeper?.open(id)),
    open: async (file: File) => {
      const title = 'This file was not opened';
      const read = await readTextFile(file);
      if (read.ok) await openDesignText(read.text, file.name, title);
      else setRefused({ title, name: file.name, problems: [{ path: '', reason: read.reason }] });
    },
  };
}

export type Designs = ReturnType<typeof useDesigns>;
