import { useMemo, useState } from 'react';
import { gapMapReport } from '../../report/gaps/gapMapReport.ts';
import { gapReport } from '../../report/gaps/gapReport.ts';
import { askedGaps, firstGapForm } from '../../store/gapForm.ts';
import type { JobName } from '../../workers/studies/jobs.ts';
import { useDesign } from '../bench/DesignContext.ts';
import { useComplete } from '../studies/useComplete.ts';
import { type StudyView, useStudy } from '../studies/useStudy.ts';
import { SameWay } from '../working/SameWay.tsx';
import { GapForm } from './gaps/GapForm.tsx';
import { GapLineAnswer } from './gaps/GapLineAnswer.tsx';
import { GapMapAnswer } from './gaps/GapMapAnswer.tsx';
import { StudyProgress } from './gaps/StudyProgress.tsx';
import { useTakeGap } from './gaps/useTakeGap.ts';
import { QuestionSection } from './QuestionSection.tsx';

/** One or two gaps of the baffle compared over a range or a list; computed again a moment after every edit. */
export function WhichGap() {
  const design = useDesign((state) => state.solvedDesign);
  const system = useDesign((state) => state.system);
  const [form, setForm] = useState(firstGapForm);
  const asked = useMemo(() => askedGaps(form, design, system), [form, design, system]);
  const line = useStudy('gaps', asked.line, { live: true, at: 'which-gap' });
  const map = useStudy('gapMap', asked.map, { live: true, at: 'which-gap' });
  const isMap = form.against !== null;
  const lineAnswer = useComplete(line);
  const mapAnswer = useComplete(map);
  const lineReport = useMemo(
    () => lineAnswer && gapReport(lineAnswer.question, lineAnswer.result, system),
    [lineAnswer, system],
  );
  const mapReport = useMemo(
    () => mapAnswer && gapMapReport(mapAnswer.question, mapAnswer.result, system),
    [mapAnswer, system],
  );
  const take = useTakeGap(setForm);
  const shown = isMap ? map : line;
  const report = isMap ? mapReport : lineReport;
  return (
    <QuestionSection id="which-gap" sentence={report?.sentence ?? waiting(shown)}>
      <GapForm form={form} asked={asked} onForm={setForm} />
      <StudyProgress study={shown} isAsked={(isMap ? asked.map : asked.line) !== null} />
      {isMap
        ? mapReport && <GapMapAnswer report={mapReport} onTake={take} />
        : lineReport && <GapLineAnswer report={lineReport} onTake={take} />}
      <SameWay />
    </QuestionSection>
  );
}

function waiting({ fault }: StudyView<JobName>): string {
  return fault === null ? 'Being computed …' : `This could not be computed: ${fault}.`;
}
