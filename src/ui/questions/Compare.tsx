import { useMemo } from 'react';
import { nextVariant } from '../../model/fullTitle.ts';
import { compareReport } from '../../report/compare/compareReport.ts';
import { useDesign } from '../bench/DesignContext.ts';
import { Button } from '../kit/Button.tsx';
import { useComplete } from '../studies/useComplete.ts';
import { useStudy } from '../studies/useStudy.ts';
import { SameWay } from '../working/SameWay.tsx';
import { CompareChooser } from './compare/CompareChooser.tsx';
import styles from './compare/CompareTable.module.css';
import { CompareTable } from './compare/CompareTable.tsx';
import { useCompared } from './compare/useCompared.ts';
import { useKeptDesigns } from './compare/useKeptDesigns.ts';
import { QuestionSection } from './QuestionSection.tsx';
import { TableTwin } from './TableTwin.tsx';

/** The design on the bench beside its variants and other kept ones. */
export function Compare() {
  const { records, unread, failed, keeper } = useKeptDesigns();
  const compared = useCompared(records);
  const { chosen, others } = compared;
  const design = useDesign((state) => state.solvedDesign);
  const system = useDesign((state) => state.system);
  const identity = useDesign((state) => state.identity);
  const asked = useMemo(
    () => ({ design, others: chosen.map(({ content }) => content.solvedDesign) }),
    [design, chosen],
  );
  const study = useStudy('compare', chosen.length > 0 ? asked : null, { live: true, at: 'compare' });
  const answer = useComplete(study);
  const report = useMemo(
    () => answer && compareReport(answer.question, answer.result, system),
    [answer, system],
  );
  const shown = chosen.length > 0 ? report : null;
  const kin = records.filter(({ family }) => family === identity?.family);
  return (
    <QuestionSection
      id="compare"
      sentence={shown?.sentence ?? nothingYet(failed, others.length, chosen.length, study.fault)}
    >
      {(others.length > 0 || unread.length > 0) && <CompareChooser compared={compared} unread={unread} />}
      {others.length === 0 && keeper !== null && !failed && (
        <Button
          onClick={() =>
            void keeper.makeVariant(nextVariant(kin.map(({ content }) => content.design.variant)))
          }
        >
          Keep this as it is and go on as a variant
        </Button>
      )}
      {shown && (
        <div className={study.fresh ? undefined : styles.stale}>
          <CompareTable report={shown} />
          {shown.tables.map((table) => (
            <TableTwin key={table.id} table={table} />
          ))}
        </div>
      )}
      {shown && <SameWay />}
    </QuestionSection>
  );
}

function nothingYet(failed: boolean, others: number, chosen: number, fault: string | null): string {
  if (chosen > 0) return fault === null ? 'Being computed …' : `This could not be computed: ${fault}.`;
  if (failed) return 'This browser keeps no designs here, so there is none to compare with.';
  return others === 0
    ? 'There is nothing to compare with yet: only what this browser keeps can stand beside the design on the bench.'
    : 'Choose what to compare the design on the bench with.';
}
