import { useEffect, useRef } from 'react';
import { createPortal } from 'react-dom';
import type { Report } from '../../report/types.ts';
import { fitPage } from './fitPage.ts';
import './sheet.css';
import { SheetPage } from './SheetPage.tsx';

/** Stands beside the app in the body, unseen on a screen; printing from anywhere prints it and nothing else. */
export function Sheet({ report }: { readonly report: Report }) {
  const page = useRef<HTMLElement>(null);
  useEffect(() => {
    const fit = () => page.current && fitPage(page.current);
    window.addEventListener('beforeprint', fit);
    return () => window.removeEventListener('beforeprint', fit);
  }, []);
  return createPortal(<SheetPage report={report} page={page} />, document.body);
}
