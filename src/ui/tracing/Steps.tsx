import type { PictureKeeping } from '../../store/tracing/desk.ts';
import { Button } from '../kit/Button.tsx';
import { Glyph } from '../kit/Glyph.tsx';
import { AxisStep } from './AxisStep.tsx';
import { keepingWords } from './keepingWords.ts';
import { PictureStep } from './PictureStep.tsx';
import styles from './Steps.module.css';
import { TakeStep } from './TakeStep.tsx';
import { useTracing, useTracingActions, useTracingReport } from './TracingContext.ts';

interface Props {
  readonly list: string;
  /** Name of the fan or loss that the points are for. */
  readonly owner: string;
  readonly keeping: PictureKeeping;
  /** Why the last file was not taken. */
  readonly refusal: string | null;
  readonly onFile: (file: File) => void;
}

/** The way from a picture to a curve in five steps, with what to do in the one that is open. */
export function Steps({ list, owner, keeping, refusal, onFile }: Props) {
  const { steps } = useTracingReport();
  const here = useTracing(({ step }) => step);
  const picture = useTracing((state) => state.picture);
  const hasPicture = picture !== null;
  const laidFor = picture?.owner ?? owner;
  const { goTo } = useTracingActions();
  const at = steps.findIndex(({ id }) => id === here);
  const [now, next] = [steps[at], steps[at + 1]];
  return (
    <>
      <section className={styles.steps} aria-label="Steps">
        <ol className={styles.list}>
          {steps.map(({ id, title, isDone }, index) => (
            <li key={id}>
              <button
                type="button"
                className={styles.step}
                aria-current={id === here ? 'step' : undefined}
                disabled={!hasPicture && id !== 'picture'}
                onClick={() => goTo(id)}
              >
                <span className={styles.number}>{isDone ? <Glyph name="holds" /> : index + 1}</span>
                <span>{title}</span>
                {isDone && <span className="unseen">, done</span>}
              </button>
            </li>
          ))}
        </ol>
        <p className={styles.sentence} role="status">
          {now?.sentence}
        </p>
        {(keeping === 'full' || keeping === 'refused') && here !== 'picture' && (
          <p className={styles.wrong}>{keepingWords[keeping]}</p>
        )}
        {laidFor !== owner && (
          <p className={styles.note}>
            This picture was laid out for “{laidFor}”; what it lies at is now called “{owner}”.
          </p>
        )}
      </section>
      <section className={styles.body} aria-label={now?.title}>
        {here === 'picture' && <PictureStep keeping={keeping} refusal={refusal} onFile={onFile} />}
        {(here === 'flow' || here === 'pressure') && <AxisStep key={here} axis={here} />}
        {here === 'take' && <TakeStep list={list} />}
        {next !== undefined && hasPicture && (
          <Button onClick={() => goTo(next.id)}>Go on: {next.title.toLowerCase()}</Button>
        )}
      </section>
    </>
  );
}
