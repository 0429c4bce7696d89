import { useMemo, useState } from 'react';
import { askedSizing, firstSizingForm } from '../../io/sizingForm.ts';
import { sizingReport } from '../../report/sizing/sizingReport.ts';
import { useDesign } from '../bench/DesignContext.ts';
import { useComplete } from '../studies/useComplete.ts';
import { useStudy } from '../studies/useStudy.ts';
import { SameWay } from '../working/SameWay.tsx';
import { QuestionSection } from './QuestionSection.tsx';
import { BestFins } from './sizing/BestFins.tsx';
import { SizeList } from './sizing/SizeList.tsx';
import { SmallestFan } from './sizing/SmallestFan.tsx';
import styles from './sizing/TargetForm.module.css';
import { TargetForm } from './sizing/TargetForm.tsx';
import { useTake, type Whereto } from './sizing/useTake.ts';
import { TableTwin } from './TableTwin.tsx';

/** How far each measure may go for a target, the best fins by the workshop's rules, the smallest fan at hand. */
export function WhatSizeDoINeed() {
  const design = useDesign(({ solvedDesign }) => solvedDesign);
  const system = useDesign((state) => state.system);
  const [form, setForm] = useState(firstSizingForm);
  const [whereto, setWhereto] = useState<Whereto>('design');
  const take = useTake(whereto);
  const asked = useMemo(() => askedSizing(form, design, system), [form, design, system]);
  const { target } = asked;
  const question = useMemo(() => target && { design, target }, [design, target]);
  const study = useStudy('sizing', question, { live: true, at: 'what-size' });
  const held = useComplete(study);
  const report = useMemo(() => held && sizingReport(held.question, held.result, system), [held, system]);
  return (
    <QuestionSection
      id="what-size"
      sentence={report?.sentence ?? 'How far each measure may go is being worked out.'}
    >
      <TargetForm form={form} asked={asked} whereto={whereto} onForm={setForm} onWhereto={setWhereto} />
      {report && (
        <>
          <SizeList rows={report.rows} fresh={study.fresh} onTake={take} />
          {report.tables.map((table) => (
            <TableTwin key={table.id} table={table} />
          ))}
          {report.remarks.map((remark) => (
            <p key={remark} className={styles.remark}>
              {remark}
            </p>
          ))}
        </>
      )}
      <SmallestFan design={design} target={target} system={system} onTake={take} />
      <BestFins design={design} system={system} form={form} asked={asked} onForm={setForm} onTake={take} />
      <SameWay />
    </QuestionSection>
  );
}
