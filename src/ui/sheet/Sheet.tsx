import { useEffect, useRef, useState } from 'react';
import { createPortal, flushSync } from 'react-dom';
import type { Report } from '../../report/types.ts';
import { roomOnPage, shrink } from './fitPage.ts';
import { type SheetSize, sheetSizes } from './measures.ts';
import './sheet.css';
import { SheetPage } from './SheetPage.tsx';

/** Stands beside the app in the body, unseen on a screen; printing from anywhere prints it and nothing else. */
export function Sheet({ report }: { readonly report: Report }) {
  const page = useRef<HTMLElement>(null);
  const [size, setSize] = useState(sheetSizes[0] as SheetSize);
  useEffect(() => {
    const fit = () => {
      for (const each of sheetSizes) {
        flushSync(() => setSize(each));
        if (page.current && roomOnPage(page.current) >= 1) return;
      }
      if (page.current) shrink(page.current, roomOnPage(page.current));
    };
    window.addEventListener('beforeprint', fit);
    return () => window.removeEventListener('beforeprint', fit);
  }, []);
  return createPortal(<SheetPage report={report} size={size} page={page} />, document.body);
}
