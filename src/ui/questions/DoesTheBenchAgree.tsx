import { useMemo, useState } from 'react';
import { readingCount } from '../../model/readings.ts';
import { checkReport } from '../../report/bench/checkReport.ts';
import { nothingRead } from '../../report/bench/checkSentence.ts';
import type { Unknown } from '../../studies/bench/types.ts';
import { useDesign } from '../bench/DesignContext.ts';
import { useComplete } from '../studies/useComplete.ts';
import { useStudy } from '../studies/useStudy.ts';
import { AdvicePart } from './bench/AdvicePart.tsx';
import { CheckAnswer } from './bench/CheckAnswer.tsx';
import { FitPart } from './bench/FitPart.tsx';
import { FittedState } from './bench/FittedState.tsx';
import { ReadingsEditor } from './bench/ReadingsEditor.tsx';
import { StudyProgress } from './gaps/StudyProgress.tsx';
import { QuestionSection } from './QuestionSection.tsx';

/** Readings of a prototype beside what is computed, what explains the difference, and what to read next. */
export function DoesTheBenchAgree() {
  const design = useDesign((state) => state.solvedDesign);
  const system = useDesign((state) => state.system);
  const [chosen, setChosen] = useState<readonly Unknown[]>(['bond']);
  const count = readingCount(design);
  const question = useMemo(() => (count > 0 ? { design } : null), [design, count]);
  const study = useStudy('benchCheck', question, { live: true, at: 'does-the-bench-agree' });
  const held = useComplete(study);
  const isTimed = design.readings.temperatures.some(({ settled }) => !settled);
  const warmUp = useStudy('benchCourse', isTimed ? question : null, {
    live: true,
    at: 'does-the-bench-agree',
  });
  const course = warmUp.question?.design === held?.question.design ? warmUp.result : null;
  const report = useMemo(
    () => (held && count > 0 ? checkReport(held.question, held.result, system, course) : null),
    [held, count, system, course],
  );
  const waiting =
    study.fault === null ? 'Being held against the model …' : `This went wrong: ${study.fault}.`;
  return (
    <QuestionSection
      id="does-the-bench-agree"
      sentence={count === 0 ? nothingRead : (report?.sentence ?? waiting)}
    >
      {design.fitted.readings > 0 && <FittedState />}
      <ReadingsEditor />
      {count > 0 && (
        <>
          <StudyProgress study={study} isAsked />
          {report && <CheckAnswer report={report} fresh={study.fresh} />}
          <FitPart design={design} system={system} chosen={chosen} onChoose={setChosen} />
        </>
      )}
      <AdvicePart design={design} system={system} chosen={chosen} />
    </QuestionSection>
  );
}
