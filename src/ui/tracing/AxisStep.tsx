import type { FormEvent } from 'react';
import type { AxisId } from '../../model/tracing/tracing.ts';
import { unitChoices } from '../../report/tracing/tracingReport.ts';
import { FieldFrame, noteIdOf } from '../kit/FieldFrame.tsx';
import { Select } from '../kit/Select.tsx';
import { Switch } from '../kit/Switch.tsx';
import { TextBox } from '../kit/TextBox.tsx';
import { crossId, valueId } from './handles.ts';
import styles from './Steps.module.css';
import { useTracing, useTracingActions, useTracingReport } from './TracingContext.ts';

/** The two marks of an axis and what is printed at them. */
export function AxisStep({ axis }: { readonly axis: AxisId }) {
  const { marks, fault, scales, steps } = useTracingReport();
  const { log, unit } = useTracing(({ tracing }) => tracing.axes[axis]);
  const { setText, setUnit, setLog, endEdit, goTo } = useTracingActions();
  const done = (event: FormEvent) => {
    event.preventDefault();
    if (steps.find(({ id }) => id === axis)?.isDone) goTo(axis === 'flow' ? 'pressure' : 'points');
    document.getElementById(crossId)?.focus({ preventScroll: true });
  };
  return (
    <form className={styles.marks} onSubmit={done}>
      {([0, 1] as const).map((index) => {
        const { name, text, unit: symbol, problem, at } = marks[axis][index];
        const id = valueId(axis, index);
        return (
          <FieldFrame
            key={id}
            id={id}
            label={`Printed at ${name.toLowerCase()}`}
            unit={symbol}
            help={at === null ? 'Not yet in the picture.' : 'As printed, with its unit or without.'}
            problem={problem}
          >
            <TextBox
              id={id}
              aria-describedby={noteIdOf(id)}
              value={text}
              unit={/[\d.,]\s*$/.test(text) || text === '' ? symbol : ''}
              invalid={problem !== null}
              onText={(typed) => setText(axis, index, typed)}
              onBlur={endEdit}
            />
          </FieldFrame>
        );
      })}
      <FieldFrame
        id={`trace-unit-${axis}`}
        label="Unit of the axis"
        help="Of numbers that stand without one."
        problem={null}
      >
        <Select
          id={`trace-unit-${axis}`}
          aria-describedby={noteIdOf(`trace-unit-${axis}`)}
          value={unit}
          options={unitChoices(axis)}
          onChoose={(key) => setUnit(axis, key)}
        />
      </FieldFrame>
      <FieldFrame
        id={`trace-log-${axis}`}
        label="Logarithmic"
        help="Where equal ways are equal ratios: 1, 10, 100."
        problem={null}
        shape="tick"
      >
        <Switch
          id={`trace-log-${axis}`}
          checked={log}
          describedBy={noteIdOf(`trace-log-${axis}`)}
          onSwitch={(on) => setLog(axis, on)}
        />
      </FieldFrame>
      {fault !== null && (
        <p className={styles.wrong} role="alert">
          {fault}
        </p>
      )}
      {scales.map((sentence) => (
        <p key={sentence} className={styles.note}>
          {sentence}
        </p>
      ))}
      <button type="submit" hidden />
    </form>
  );
}
