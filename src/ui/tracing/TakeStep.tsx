import { useState } from 'react';
import { takeTracing } from '../../store/tracing/takeTracing.ts';
import { useActions, useField } from '../bench/DesignContext.ts';
import { useTyping } from '../fields/useTyping.ts';
import { Button } from '../kit/Button.tsx';
import { FieldFrame, noteIdOf } from '../kit/FieldFrame.tsx';
import { TextBox } from '../kit/TextBox.tsx';
import styles from './Steps.module.css';
import { useTracing, useTracingReport } from './TracingContext.ts';

/** The points go into the design, with the sheet that they are from. */
export function TakeStep({ list }: { readonly list: string }) {
  const { rows } = useTracingReport();
  const { flow, pressure } = useTracing(({ tracing }) => tracing.axes);
  const { apply } = useActions();
  const [told, setTold] = useState({ rows, sentence: '' });
  const take = () => {
    if (rows === null) return;
    const units = { flow: flow.unit, pressure: pressure.unit };
    const refusal = apply((entered) => takeTracing(entered, list, rows, units), 'Curve from a picture');
    const taken = `Taken over: ${rows.length} points. Undo on the page brings back what was there.`;
    setTold({ rows, sentence: refusal ?? taken });
  };
  return (
    <>
      {list.endsWith('.curve') && <SourceBox path={`${list}Source`} />}
      <Button aria-disabled={rows === null} onClick={take}>
        Take the points over
      </Button>
      <p className={styles.taken} role="status">
        {told.rows === rows && told.sentence}
      </p>
    </>
  );
}

/** Which sheet, which volts: the same input as beside the curve. */
function SourceBox({ path }: { readonly path: string }) {
  const view = useField(path);
  return (
    <div className={styles.marks}>
      <FieldFrame id="trace-source" label={view.label} help={view.help} problem={view.problem} shape="tall">
        <TextBox id="trace-source" aria-describedby={noteIdOf('trace-source')} {...useTyping(view)} />
      </FieldFrame>
    </div>
  );
}
