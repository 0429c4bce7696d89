import type { Report } from '../../report/types.ts';
import { StepMarkSays } from './StepMark.tsx';

/** Remark and footnotes: how to read the drawing, what is taken for granted, and the sources that the limits number. */
export function SheetFoot({ report }: { readonly report: Report }) {
  const { assumptions, drawing, limits, methods, sources, title } = report;
  const named = new Set(limits.map(({ footnote }) => footnote));
  const granted = assumptions.filter(({ ofModel }) => ofModel);
  return (
    <section className="sheet-notes">
      {title.remark !== '' && (
        <p className="remark">
          <b>Remark.</b> {title.remark}
        </p>
      )}
      <p>
        <b>Drawing.</b> {drawing.caption}
        {granted.length > 0 && (
          <>
            {' '}
            <b>Taken for granted.</b> {granted.map(({ says }) => says).join(' ')}
          </>
        )}
      </p>
      {named.size > 0 && (
        <p>
          <b>Sources of the limits.</b>{' '}
          {sources
            .filter(({ number }) => named.has(number))
            .map(({ key, number, cite }) => (
              <span key={key}>
                <sup>{number}</sup>
                {cite.split(';')[0]}{' '}
              </span>
            ))}
          <span>
            <sup>†</sup>confirm the value for your case.
          </span>{' '}
          Those of {methods.length} methods: with the working. <StepMarkSays />
        </p>
      )}
    </section>
  );
}
