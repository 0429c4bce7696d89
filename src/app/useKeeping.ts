import { useEffect } from 'react';
import type { Keeper } from '../store/keeping/keeper.ts';

/** Whoever leaves the page, or puts it behind another, finds it again as it was. */
export function useKeeping(coming: Promise<Keeper>) {
  useEffect(() => {
    let keeper: Keeper | null = null;
    void coming.then((come) => {
      keeper = come;
    });
    const leave = () => keeper?.leave();
    const hide = () => {
      if (document.visibilityState === 'hidden') leave();
    };
    window.addEventListener('pagehide', leave);
    document.addEventListener('visibilitychange', hide);
    return () => {
      window.removeEventListener('pagehide', leave);
      document.removeEventListener('visibilitychange', hide);
    };
  }, [coming]);
}
