import { useActions, useDesign } from '../bench/DesignContext.ts';
import { Button } from '../kit/Button.tsx';
import { Disclosure } from '../kit/Disclosure.tsx';
import { CurveEditor } from './CurveEditor.tsx';
import { Field } from './Field.tsx';
import { fieldId } from './fieldId.ts';
import { extraFields } from './rowFields.ts';

/** Anything else in the way of the air: a duct, a second screen, a bend. */
export function ExtrasEditor() {
  const count = useDesign(({ design }) => design.extras.length);
  const { addExtra } = useActions();
  return (
    <>
      {Array.from({ length: count }, (_, index) => (
        <Extra key={fieldId(`extras[${index}]`)} index={index} />
      ))}
      <Button onClick={addExtra}>Add a loss</Button>
    </>
  );
}

function Extra({ index }: { readonly index: number }) {
  const name = useDesign(({ design }) => design.extras[index]?.name ?? '');
  const hasPoints = useDesign(({ design }) => (design.extras[index]?.points.length ?? 0) > 0);
  const { removeExtra } = useActions();
  const place = `extras[${index}]`;
  return (
    <Disclosure summary={name || `Loss ${index + 1}`} open>
      {extraFields.map((key) => (
        <Field key={key} path={`${place}.${key}`} idle={hasPoints && (key === 'loss' || key === 'area_m2')} />
      ))}
      <CurveEditor
        list={`${place}.points`}
        heading="Measured points"
        help="Pressure lost over flow; they replace the coefficient."
      />
      <Button onClick={() => removeExtra(index)}>Remove this loss</Button>
    </Disclosure>
  );
}
