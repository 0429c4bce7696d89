import { Fragment } from 'react';
import type { KindId } from '../../model/shelf/kinds.ts';
import { useActions, useDesign } from '../bench/DesignContext.ts';
import { Button } from '../kit/Button.tsx';
import { Disclosure } from '../kit/Disclosure.tsx';
import { ShelfBar } from '../shelf/lazy.ts';
import { Field } from './Field.tsx';
import { fieldId } from './fieldId.ts';
import { partFields } from './rowFields.ts';
import styles from './rows.module.css';

/** After which of a part's inputs the way to the shelf stands. */
const shelfAfter: Readonly<Record<string, KindId>> = {
  thickness_m: 'chip',
  ceramicHeat_JPerM3K: 'ceramic',
};

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
      {partFields.map((key) => {
        const kind = shelfAfter[key];
        return (
          <Fragment key={key}>
            <Field path={`parts[${index}].${key}`} />
            {kind && <ShelfBar kind={kind} place={`parts[${index}]`} />}
          </Fragment>
        );
      })}
      {!alone && <Button onClick={() => removePart(index)}>Remove this part</Button>}
    </Disclosure>
  );
}
