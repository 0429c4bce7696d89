import { lazy, Suspense } from 'react';
import { useDesign } from '../bench/DesignContext.ts';
import { Disclosure } from '../kit/Disclosure.tsx';
import { Field } from './Field.tsx';
import { groupOf } from './groups.ts';
import styles from './PartPanel.module.css';
import { RemarkField } from './RemarkField.tsx';

// Tables come after the first paint: most parts have none.
const ListEditors = lazy(async () => ({ default: (await import('./ListEditors.tsx')).ListEditors }));

const ChecksumLine = lazy(async () => ({ default: (await import('./ChecksumLine.tsx')).ChecksumLine }));

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
      {lists.length > 0 && (
        <Suspense fallback={null}>
          <ListEditors lists={lists} />
        </Suspense>
      )}
      <div className={styles.title}>
        <Disclosure summary="Title block">
          <Field path="title" />
          <Field path="revision" />
          <RemarkField path="remark" />
          <Field path="invented" />
          <Suspense fallback={null}>
            <ChecksumLine />
          </Suspense>
        </Disclosure>
      </div>
    </section>
  );
}
