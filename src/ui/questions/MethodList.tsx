import type { MethodRow } from '../../report/types.ts';
import { Equation } from '../working/Equation.tsx';
import styles from './HowIsItComputed.module.css';

/** Every method of an answer by its title; unfolded, its equation and how far it may be trusted. */
export function MethodList({ methods }: { readonly methods: readonly MethodRow[] }) {
  return (
    <ol className={styles.methods}>
      {methods.map((method) => (
        <li key={method.id}>
          <details>
            <summary>
              {method.title} <small>[{method.footnote}]</small>
            </summary>
            <Equation text={method.equation} />
            <dl>
              <dt>Source</dt>
              <dd>{method.source}</dd>
              <dt>Range</dt>
              <dd>{method.range}</dd>
              <dt>Here</dt>
              <dd>{method.here}</dd>
              <dt>Scatter, 1σ</dt>
              <dd>{method.scatter}</dd>
            </dl>
          </details>
        </li>
      ))}
    </ol>
  );
}
