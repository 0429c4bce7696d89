import type { Report } from '../../report/types.ts';

/** Assumptions and numbered sources in small print, then the title block with its place for a signature. */
export function SheetFoot({ report: { title, verdict, assumptions, sources } }: { readonly report: Report }) {
  return (
    <footer className="sheet-foot">
      <section className="sheet-small">
        <h2>Taken for granted, and sources</h2>
        <div>
          <p>
            {assumptions
              .filter(({ ofModel }) => ofModel)
              .map(({ says }) => says)
              .join(' ')}{' '}
            What each method takes for granted stands on the screen.
          </p>
          <ol>
            {sources.map(({ number, cite }) => (
              <li key={number} value={number}>
                {shortCite(cite)}
              </li>
            ))}
          </ol>
          <p>† Confirm the value of this limit for your case.</p>
        </div>
      </section>
      <dl className="sheet-title">
        <div className="wide">
          <dt>Title</dt>
          <dd>{title.title}</dd>
        </div>
        <div>
          <dt>Revision</dt>
          <dd>{title.revision}</dd>
        </div>
        <div>
          <dt>Date</dt>
          <dd>{title.date}</dd>
        </div>
        <div className="wide">
          <dt>Verdict</dt>
          <dd>{verdict.word}</dd>
        </div>
        <div className="wide sign">
          <dt>Checked, name and date</dt>
          <dd />
        </div>
        <div>
          <dt>Computed with</dt>
          <dd>Throughfin</dd>
        </div>
      </dl>
    </footer>
  );
}

/** Work and place; how it was seen stands on the screen. */
function shortCite(cite: string): string {
  return cite.split(';')[0] ?? cite;
}
