import { useMemo, useState } from 'react';
import type { EvidenceChoice } from '../../report/evidence/evidenceReport.ts';
import { Button } from '../kit/Button.tsx';
import { useIsNear } from '../studies/useIsNear.ts';
import { EvidenceAnswer } from './evidence/EvidenceAnswer.tsx';
import { useEvidence } from './evidence/useEvidence.ts';
import { QuestionSection } from './QuestionSection.tsx';

/** Every number of the program that the tests hold against a published one, as the last run of them left it. */
export function WhatIsItCheckedAgainst() {
  const { evidence, failed, again } = useEvidence(useIsNear('what-is-it-checked-against'));
  const [choice, setChoice] = useState<EvidenceChoice>({ kind: 'all', subject: 'all' });
  const report = useMemo(() => evidence?.reportOf(choice), [evidence, choice]);
  const waiting = failed ? 'The checks could not be fetched.' : 'The checks are being fetched …';
  return (
    <QuestionSection id="what-is-it-checked-against" sentence={report?.sentence ?? waiting}>
      {failed && <Button onClick={again}>Try again</Button>}
      {report && <EvidenceAnswer report={report} choice={choice} onChoose={setChoice} />}
    </QuestionSection>
  );
}
