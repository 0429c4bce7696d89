import { useDesign } from '../bench/DesignContext.ts';
import { Disclosure } from '../kit/Disclosure.tsx';
import { CurveEditor } from './CurveEditor.tsx';
import { ExtrasEditor } from './ExtrasEditor.tsx';
import { Field } from './Field.tsx';
import { groupOf } from './groups.ts';
import styles from './PartPanel.module.css';
import { PartsEditor } from './PartsEditor.tsx';
import { PositionsEditor } from './PositionsEditor.tsx';
import { RemarkField } from './RemarkField.tsx';

/** All inputs of the chosen part, and the title block below them. */
export function PartPanel() {
  const { title, fields, lists } = groupOf(useDesign(({ selectedPart }) => selectedPart));
  const design = useDesign((state) => state.design);
  return (
    <section className={styles.panel} aria-labelledby="part-heading">
      <h2 id="part-heading" tabIndex={-1}>
        {title}
      </h2>
      {fields.map(({ path, when }) => (
        <Field key={path} path={path} idle={when !== undefined && !when(design)} />
      ))}
      {lists.includes('positions') && <PositionsEditor />}
      {lists.includes('parts') && <PartsEditor />}
      {lists.includes('fan.curve') && (
        <CurveEditor
          list="fan.curve"
          heading="Fan curve"
          help="At rated voltage, from shut-off to free delivery. A table may be pasted into any cell."
        />
      )}
      {lists.includes('extras') && <ExtrasEditor />}
      <div className={styles.title}>
        <Disclosure summary="Title block">
          <Field path="title" />
          <Field path="revision" />
          <RemarkField path="remark" />
          <Field path="invented" />
        </Disclosure>
      </div>
    </section>
  );
}
