import { createContext, useContext } from 'react';
import type { Studies } from '../../store/studies.ts';

/** The studies of this page. */
export const StudiesContext = createContext<Studies | null>(null);

export function useStudies(): Studies {
  const studies = useContext(StudiesContext);
  if (studies === null) throw new Error('no studies around this component');
  return studies;
}
