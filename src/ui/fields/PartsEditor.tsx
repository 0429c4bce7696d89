import { useActions, useDesign } from '../bench/DesignContext.ts';
import { Button } from '../kit/Button.tsx';
import { Disclosure } from '../kit/Disclosure.tsx';
import { Field } from './Field.tsx';
import { fieldId } from './fieldId.ts';
import { partFields } from './rowFields.ts';
import styles from './rows.module.css';

/** The kinds of resistor that the row draws on. */
export function PartsEditor() {
  const count = useDesign(({ design }) => design.parts.length);
  const { addPart } = useActions();
  return (
    <section aria-labelledby="parts-heading">
      <h3 id="parts-heading" className={styles.heading}>
        Parts used in the row
      </h3>
      {Array.from({ length: count }, (_, index) => (
        <Part key={fieldId(`parts[${index}]`)} index={index} alone={count === 1} />
      ))}
      <Button onClick={addPart}>Add a part</Button>
    </section>
  );
}

function Part({ index, alone }: { readonly index: number; readonly alone: boolean }) {
  const name = useDesign(({ design }) => design.parts[index]?.name ?? '');
  const isWrong = useDesign(({ problems }) =>
    problems.some(({ path }) => path.startsWith(`parts[${index}].`)),
  );
  const { removePart } = useActions();
  return (
    <Disclosure summary={name || `Part ${index + 1}`} open={alone || isWrong}>
      {partFields.map((key) => (
        <Field key={key} path={`parts[${index}].${key}`} />
      ))}
      {!alone && <Button onClick={() => removePart(index)}>Remove this part</Button>}
    </Disclosure>
  );
}
