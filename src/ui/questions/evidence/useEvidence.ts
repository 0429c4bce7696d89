import { useEffect, useState } from 'react';
import type { Evidence } from '../../../report/evidence/openEvidence.ts';
import { keptEvidence, loadEvidence } from './keptEvidence.ts';

interface State {
  readonly evidence: Evidence | null;
  /** It could not be fetched. */
  readonly failed: boolean;
  readonly again: () => void;
}

/** The evidence, fetched as soon as somebody is near it. */
export function useEvidence(isNear: boolean): State {
  const [evidence, setEvidence] = useState(keptEvidence);
  const [failed, setFailed] = useState(false);
  // Once near is enough: what comes above may push the section away again while the list is on its way.
  const [wasNear, setWasNear] = useState(isNear);
  if (isNear && !wasNear) setWasNear(true);
  const wanted = wasNear && evidence === null && !failed;
  useEffect(() => {
    if (!wanted) return;
    let gone = false;
    loadEvidence().then(
      (loaded) => gone || setEvidence(loaded),
      () => gone || setFailed(true),
    );
    return () => {
      gone = true;
    };
  }, [wanted]);
  return { evidence, failed, again: () => setFailed(false) };
}
