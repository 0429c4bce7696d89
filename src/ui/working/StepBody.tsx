import type { WorkingStep, WorkingSymbol } from '../../report/working/types.ts';
import { reachWhileScrolling } from '../questions/DataTable.tsx';
import table from '../questions/TableTwin.module.css';
import { Equation, InlineMath, ValuesPutIn } from './Equation.tsx';
import { goToStep, stepId } from './goToStep.ts';
import styles from './Working.module.css';

/** Number, title and place of a step, for its heading. */
export function StepHead({ step: { number, title, where, inside } }: { readonly step: WorkingStep }) {
  return (
    <>
      {number}. {title}
      {where !== '' && <small>{where}</small>}
      {inside === false && <small className={styles.outside}>outside its range</small>}
    </>
  );
}

/** One equation of a working: what it says, what was put in, what came out, and how far to trust it. */
export function StepBody({ step }: { readonly step: WorkingStep }) {
  const { result, symbols } = step;
  return (
    <div className={styles.body}>
      <Equation text={step.equation} />
      <ValuesPutIn step={step} />
      {symbols.length > 0 && <Values step={step} />}
      <p className={styles.result}>
        {result.says}: <b>{result.value}</b>
      </p>
      <Trust step={step} />
    </div>
  );
}

function Values({ step: { number, symbols } }: { readonly step: WorkingStep }) {
  return (
    <section className={table.scroll} aria-label={`Values put in, step ${number}`} ref={reachWhileScrolling}>
      <table className={`${table.table} ${styles.values}`}>
        <thead>
          <tr>
            <th scope="col">Symbol</th>
            <th scope="col">What it is</th>
            <th scope="col">Value, and as the equation takes it</th>
          </tr>
        </thead>
        <tbody>
          {symbols.map((each) => (
            <tr key={each.symbol}>
              <td>
                <InlineMath text={each.symbol} />
              </td>
              <th scope="row">
                {each.says} <From symbol={each} />
              </th>
              <td>
                {each.value} {each.si !== each.value && <small>{each.si}</small>}
              </td>
            </tr>
          ))}
        </tbody>
      </table>
    </section>
  );
}

const fromWords: Readonly<Record<WorkingSymbol['from'], string>> = {
  input: 'input',
  constant: 'constant',
  step: 'another step',
  settled: 'settled with the rest',
};

function From({ symbol: { from, step } }: { readonly symbol: WorkingSymbol }) {
  return (
    <small>
      {step === null ? (
        fromWords[from]
      ) : (
        <a href={`#${stepId(step)}`} onClick={goToStep}>
          step {step}
        </a>
      )}
    </small>
  );
}

/** Source, range and scatter of the method; a balance is nobody's method and has none. */
function Trust({ step }: { readonly step: WorkingStep }) {
  const { source, footnote, range, here, inside, scatter, assumes } = step;
  if (source === null)
    return <p className={styles.small}>A balance: no method of anybody’s, and no range.</p>;
  return (
    <dl className={styles.trust}>
      <dt>Source</dt>
      <dd>
        {source}
        {footnote === null ? '' : ` [${footnote}]`}
      </dd>
      <dt>Range</dt>
      <dd>{range}</dd>
      {inside !== null && (
        <>
          <dt>Here</dt>
          <dd data-inside={inside} className={styles.here}>
            {here} – {inside ? 'inside' : 'outside'}
          </dd>
        </>
      )}
      <dt>Scatter, 1σ</dt>
      <dd>{scatter}</dd>
      {assumes.length > 0 && (
        <>
          <dt>Assumes</dt>
          <dd>
            <ul>
              {assumes.map(({ title, text }) => (
                <li key={title}>
                  {title} {text}
                </li>
              ))}
            </ul>
          </dd>
        </>
      )}
    </dl>
  );
}
