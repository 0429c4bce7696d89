import { useMemo, useState } from 'react';
import { toleranceReport } from '../../report/tolerance/toleranceReport.ts';
import { askedTolerance, firstToleranceForm } from '../../store/toleranceForm.ts';
import { useDesign } from '../bench/DesignContext.ts';
import { StudyRun } from '../studies/StudyRun.tsx';
import { useHeldWhile } from '../studies/useHeldWhile.ts';
import { useStudy } from '../studies/useStudy.ts';
import { SameWay } from '../working/SameWay.tsx';
import { QuestionSection } from './QuestionSection.tsx';
import { DrawForm } from './tolerance/DrawForm.tsx';
import { SpreadList } from './tolerance/SpreadList.tsx';
import { ToleranceAnswer } from './tolerance/ToleranceAnswer.tsx';
import { useOfThisBox } from './tolerance/useOfThisBox.ts';
import styles from './tolerance/WhatIfPartsVary.module.css';

const idle =
  'No two boxes come out alike. Draw some thousand as they may come out, and see how many of them hold and which spread matters most.';

/** Boxes drawn as they may come out; on demand, for it takes seconds. */
export function WhatIfPartsVary() {
  const design = useDesign((state) => state.solvedDesign);
  const system = useDesign((state) => state.system);
  const [form, setForm] = useState(firstToleranceForm);
  const asked = useMemo(() => askedTolerance(form, design), [form, design]);
  const study = useStudy('tolerance', asked.question, { live: false });
  const { result, question, fresh, running } = study;
  const isOfThisBox = useOfThisBox(question);
  const report = useMemo(
    () => (result && question && isOfThisBox ? toleranceReport(question.design, result, system) : null),
    [result, question, isOfThisBox, system],
  );
  const chart = useHeldWhile(report?.chart ?? null, running, question);
  const hindered =
    asked.question === null ? 'Something above does not read.' : fresh ? 'All boxes drawn.' : null;
  return (
    <QuestionSection id="what-if-parts-vary" sentence={report?.sentence ?? idle}>
      <DrawForm form={form} asked={asked} onForm={setForm} />
      <StudyRun does={report ? 'Draw again' : 'Draw boxes'} study={study} hindered={hindered} />
      {report && !fresh && (
        <p className={styles.standing}>
          {running
            ? 'What stands here is the estimate so far.'
            : 'What stands here is out of date, or was stopped on the way.'}
        </p>
      )}
      {report && (
        <div className={styles.answer} data-fresh={fresh || running}>
          <ToleranceAnswer report={report} chart={chart} />
        </div>
      )}
      <SpreadList />
      <SameWay />
    </QuestionSection>
  );
}
