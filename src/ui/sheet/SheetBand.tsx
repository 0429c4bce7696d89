import type { Report } from '../../report/types.ts';
import { StepMark } from './StepMark.tsx';

/** Read first and second: the verdict from across the room, then what may stand on the label. */
export function SheetBand({ report, bench }: { readonly report: Report; readonly bench: string }) {
  const { title, verdict, fanStop } = report;
  return (
    <header className={`sheet-head ${verdict.state}`}>
      <div className="sheet-name">
        <h1>{title.title}</h1>
        <p>{title.subject}</p>
        {title.invented !== '' && <strong>{title.invented}</strong>}
      </div>
      {title.stale !== '' && <p className="sheet-stale">{title.stale}</p>}
      <p className="sheet-verdict">
        <span>{verdict.word}</span>
      </p>
      <dl className="sheet-ratings">
        {fanStop.figures.map(({ key, label, value, amount, note }) => (
          <div key={key}>
            <dt>{label}</dt>
            <dd className="value">
              {value}
              <StepMark figure={amount.figure} />
            </dd>
            <dd className="note">{note}</dd>
          </div>
        ))}
      </dl>
      <p className="sheet-says">{verdict.sentence}</p>
      <p className="sheet-says">{verdict.state === 'noAnswer' ? verdict.reasons.join(' ') : fanStop.basis}</p>
      {bench !== '' && <p className="sheet-says">{bench}</p>}
    </header>
  );
}
