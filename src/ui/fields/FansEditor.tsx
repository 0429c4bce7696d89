import { useActions, useDesign } from '../bench/DesignContext.ts';
import { Button } from '../kit/Button.tsx';
import { Disclosure } from '../kit/Disclosure.tsx';
import { CurveEditor } from './CurveEditor.tsx';
import { Field } from './Field.tsx';
import { fieldId } from './fieldId.ts';
import { otherFanFields } from './rowFields.ts';
import styles from './rows.module.css';

/** Fans of other kinds than the first, each with its own curve. */
export function FansEditor() {
  const count = useDesign(({ design }) => design.moreFans.length);
  const { addFan } = useActions();
  return (
    <section aria-labelledby="fans-heading">
      <h3 id="fans-heading" className={styles.heading}>
        Fans of other kinds
      </h3>
      {Array.from({ length: count }, (_, index) => (
        <OtherFan key={fieldId(`moreFans[${index}]`)} index={index} alone={count === 1} />
      ))}
      <Button onClick={addFan}>Add a fan of another kind</Button>
    </section>
  );
}

function OtherFan({ index, alone }: { readonly index: number; readonly alone: boolean }) {
  const name = useDesign(({ design }) => design.moreFans[index]?.name ?? '');
  const isWrong = useDesign(({ problems }) =>
    problems.some(({ path }) => path.startsWith(`moreFans[${index}].`)),
  );
  const { removeFan } = useActions();
  const place = `moreFans[${index}]`;
  const called = name || `Fan ${index + 2}`;
  return (
    <Disclosure summary={called} open={alone || isWrong}>
      {otherFanFields.map((key) => (
        <Field key={key} path={`${place}.${key}`} />
      ))}
      <CurveEditor
        list={`${place}.curve`}
        heading={`Curve of ${called}`}
        help="At its rated voltage, from shut-off to free delivery."
        owner={called}
      />
      <Button onClick={() => removeFan(index)}>Remove this fan</Button>
    </Disclosure>
  );
}
