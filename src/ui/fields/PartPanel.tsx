import { Fragment, lazy, Suspense } from 'react';
import { useDesign } from '../bench/DesignContext.ts';
import { Disclosure } from '../kit/Disclosure.tsx';
import { ShelfBar } from '../shelf/lazy.ts';
import { Field } from './Field.tsx';
import { FigurePlace } from './FigurePlace.tsx';
import { groupOf } from './groups.ts';
import styles from './PartPanel.module.css';
import { RemarkField } from './RemarkField.tsx';
import { shelfAt } from './shelfAt.ts';

// Tables and the shelf come after the first paint.
const ListEditors = lazy(async () => ({ default: (await import('./ListEditors.tsx')).ListEditors }));

const ChecksumLine = lazy(async () => ({ default: (await import('./ChecksumLine.tsx')).ChecksumLine }));

/** All inputs of the chosen part, and the title block below them. */
export function PartPanel() {
  const { part, title, fields, lists } = groupOf(useDesign(({ selectedPart }) => selectedPart));
  const design = useDesign((state) => state.design);
  return (
    <section className={styles.panel} aria-labelledby="part-heading">
      <h2 id="part-heading" tabIndex={-1}>
        {title}
      </h2>
      <FigurePlace part={part} />
      {fields.map(({ path, when }) => {
        const idle = when !== undefined && !when(design);
        const kind = shelfAt[path];
        return (
          <Fragment key={path}>
            <Field path={path} idle={idle} />
            {kind && !idle && (
              <Suspense fallback={<div className={styles.shelf} />}>
                <ShelfBar kind={kind} place={path.split('.')[0] ?? ''} />
              </Suspense>
            )}
          </Fragment>
        );
      })}
      {lists.length > 0 && (
        <Suspense fallback={null}>
          <ListEditors lists={lists} />
        </Suspense>
      )}
      <div className={styles.title}>
        <Disclosure summary="Title block">
          <Field path="title" />
          <Field path="variant" />
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
