import type { RefObject } from 'react';
import type { AirReport, Report } from '../../report/types.ts';
import { drawSheet } from './drawSheet.ts';
import { FanPlot } from './FanPlot.tsx';
import { LadderPlot } from './LadderPlot.tsx';
import { sheetMeasures } from './measures.ts';
import { plotFan, plotLadder } from './plots.ts';
import { SheetDrawing } from './SheetDrawing.tsx';
import { SheetFoot } from './SheetFoot.tsx';
import { SheetInputs } from './SheetInputs.tsx';
import { SheetLimits } from './SheetLimits.tsx';

/** The whole design on one page, A4 or US Letter: verdict, drawing, curves, limits, inputs, sources, cautions, signature. */
export function SheetPage({
  report,
  page,
}: {
  readonly report: Report;
  readonly page?: RefObject<HTMLElement | null>;
}) {
  const { title, verdict, ratings, air, heat, drawing, figures, fanStop } = report;
  const art = drawSheet(drawing, sheetMeasures.width, sheetMeasures.drawingHeight);
  return (
    <article ref={page ?? null} className="sheet" aria-label={`Summary sheet of ${title.title}`}>
      <header className={`sheet-head ${verdict.state}`}>
        <div className="sheet-verdict">
          <strong>{verdict.word}</strong>
          {title.stale !== '' && <span>{title.stale}</span>}
          {title.invented !== '' && <span>{title.invented}</span>}
        </div>
        <div className="sheet-says">
          <h1>{title.title}</h1>
          <p className="subject">{title.subject}</p>
          <p>{verdict.sentence}</p>
          {ratings && <p>{ratings.sentence}</p>}
        </div>
      </header>
      <dl className="sheet-figures">
        {[...figures, ...fanStop.figures].map(({ key, label, value }) => (
          <div key={key}>
            <dt>{label}</dt>
            <dd>{value}</dd>
          </div>
        ))}
      </dl>
      <figure className="sheet-box">
        <SheetDrawing art={art} title="Section along the row, and the row from above" />
        <figcaption>
          Scale {art.scale}. {drawing.caption} {air ? airCaption(air) : ''}
        </figcaption>
      </figure>
      <div className="sheet-body">
        <div>
          <SheetLimits report={report} />
          <div className="sheet-plots">
            {air?.chart && (
              <figure>
                <h2>Fan against box</h2>
                <FanPlot
                  plot={plotFan(air.chart, sheetMeasures.plotWidth, sheetMeasures.plotHeight)}
                  title={air.chart.spoken}
                />
              </figure>
            )}
            {heat && (
              <figure>
                <h2>From room to hottest film</h2>
                <LadderPlot
                  plot={plotLadder(heat.ladder, sheetMeasures.plotWidth, sheetMeasures.plotHeight)}
                  title={heat.ladder.spoken}
                />
              </figure>
            )}
          </div>
        </div>
        <section className="sheet-cautions">
          <h2>Cautions</h2>
          {report.cautions.map(({ key, title: what, text }) => (
            <p key={key}>
              <b>{what}.</b> {text}
            </p>
          ))}
        </section>
      </div>
      <SheetInputs inputs={report.inputs} remark={title.remark} />
      <SheetFoot report={report} />
    </article>
  );
}

function airCaption({ shares }: AirReport): string {
  return `Air in proportion: ${shares.map(({ label, percent }) => `${label} ${percent}`).join(', ')}.`;
}
