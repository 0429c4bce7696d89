import { fittedParts, fittedSentence } from '../../../report/bench/fittedWords.ts';
import { withoutFit } from '../../../store/readingEdits.ts';
import { useActions, useDesign } from '../../bench/DesignContext.ts';
import { Field } from '../../fields/Field.tsx';
import { Button } from '../../kit/Button.tsx';
import { Disclosure } from '../../kit/Disclosure.tsx';
import styles from './Bench.module.css';

const fields = [
  'readings',
  'bondFactor',
  'bondWithin',
  'slotFactor',
  'slotWithin',
  'fanFactor',
  'fanWithin',
  'emissivityFactor',
  'emissivityWithin',
  'leakWithin_m',
] as const;

/** What an earlier fit has put into this design, the fields that hold it, and the way to handbook values. */
export function FittedState() {
  const design = useDesign((state) => state.design);
  const system = useDesign((state) => state.system);
  const { apply } = useActions();
  const isOfLeak = design.fitted.leakWithin_m > 0;
  return (
    <section className={styles.fitted} aria-labelledby="bench-fitted">
      <h3 id="bench-fitted" className="unseen">
        The fit in this design
      </h3>
      <p>
        <b>{fittedSentence(design, system)}</b>{' '}
        {fittedParts(design, system).length > 0 &&
          'Every figure of the page rests on that, with these uncertainties in place of the methods’.'}
      </p>
      <Button onClick={() => apply(withoutFit, 'Fit taken out')}>Take the fit out again</Button>
      {isOfLeak && (
        <p className={styles.key}>The leak keeps its fitted width, for that is a measure of the box.</p>
      )}
      <Disclosure summary="What was fitted, to be changed">
        <div className={styles.fields}>
          {fields.map((key) => (
            <Field key={key} path={`fitted.${key}`} />
          ))}
        </div>
      </Disclosure>
    </section>
  );
}
