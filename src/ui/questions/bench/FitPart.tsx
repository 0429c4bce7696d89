import { useMemo, useState } from 'react';
import type { Design } from '../../../model/design.ts';
import type { UnitSystem } from '../../../model/say.ts';
import { fitEdit } from '../../../report/bench/fitEdit.ts';
import { fitReport } from '../../../report/bench/fitReport.ts';
import type { Unknown } from '../../../studies/bench/types.ts';
import { Button } from '../../kit/Button.tsx';
import { StudyRun } from '../../studies/StudyRun.tsx';
import { useComplete } from '../../studies/useComplete.ts';
import { useStudy } from '../../studies/useStudy.ts';
import { useTryChange } from '../changes/useTryChange.ts';
import styles from './Bench.module.css';
import { FitAnswer } from './FitAnswer.tsx';
import { UnknownChooser } from './UnknownChooser.tsx';

interface Props {
  readonly design: Design;
  readonly system: UnitSystem;
  readonly chosen: readonly Unknown[];
  readonly onChoose: (chosen: readonly Unknown[]) => void;
}

/** Which of a few things explains the difference best, and the way to keep it. */
export function FitPart({ design, system, chosen, onChoose }: Props) {
  const question = useMemo(() => (chosen.length > 0 ? { design, unknowns: chosen } : null), [design, chosen]);
  const study = useStudy('benchFit', question, { live: false });
  const held = useComplete(study);
  // What to add is asked only where the readings did not tell.
  const isOpen = study.fresh && held?.result.refused != null;
  const advice = useStudy('benchAdvice', isOpen ? question : null, { live: true });
  const told = advice.fresh ? advice.result : null;
  const report = useMemo(
    () => held && fitReport(held.question, held.result, system, told),
    [held, system, told],
  );
  const hindered =
    chosen.length === 0 ? 'Choose one thing at least.' : study.fresh ? 'Fitted to these readings.' : null;
  return (
    <section className={styles.part} aria-labelledby="bench-fit">
      <h3 id="bench-fit">What explains the difference?</h3>
      <UnknownChooser design={design} chosen={chosen} onChoose={onChoose} />
      <StudyRun does="Fit to the readings" study={study} hindered={hindered} />
      {report && held && (
        <div aria-busy={!study.fresh}>
          {!study.fresh && !study.running && (
            <p className={styles.standing}>What follows is of the readings, or the design, before.</p>
          )}
          <p>{report.sentence}</p>
          {!report.isRefused && (
            <>
              <Keep
                fresh={study.fresh}
                made={fitEdit(held.question.design, held.result)}
                count={held.result.readings.length}
              />
              <FitAnswer report={report} />
            </>
          )}
        </div>
      )}
    </section>
  );
}

/** The fit as a variant of its own, or in the design on the bench. */
function Keep({
  fresh,
  made,
  count,
}: {
  readonly fresh: boolean;
  readonly made: ReturnType<typeof fitEdit>;
  readonly count: number;
}) {
  const { tryIt, asVariant } = useTryChange();
  const [told, setTold] = useState('');
  const keep = async () => {
    const name = await asVariant?.(made);
    setTold(`Kept as the variant “${name}”, which stands on the bench now, fitted to ${count} readings.`);
  };
  return (
    <p className={styles.ways}>
      {asVariant && (
        <Button disabled={!fresh} onClick={() => void keep()}>
          Keep the fitted design as a variant
        </Button>
      )}
      <Button
        disabled={!fresh}
        onClick={() => {
          tryIt(made);
          setTold('Put into the design. Undo takes it out.');
        }}
      >
        Put the fit into this design
      </Button>
      <span role="status">{told}</span>
    </p>
  );
}
