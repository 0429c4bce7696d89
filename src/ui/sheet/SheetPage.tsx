import type { RefObject } from 'react';
import type { Report } from '../../report/types.ts';
import { drawSheet } from './drawSheet.ts';
import { type SheetSize, sheetMeasures, sheetSizes } from './measures.ts';
import { SheetBand } from './SheetBand.tsx';
import { SheetCharts, SheetLadder } from './SheetCharts.tsx';
import { SheetDrawing } from './SheetDrawing.tsx';
import { SheetFoot } from './SheetFoot.tsx';
import { SheetInputs } from './SheetInputs.tsx';
import { SheetLimits } from './SheetLimits.tsx';
import { StepMark } from './StepMark.tsx';
import { TitleBlock } from './TitleBlock.tsx';

interface Props {
  readonly report: Report;
  readonly size?: SheetSize;
  /** How many pages are printed in all, this one among them. */
  readonly pages?: number;
  /** What the bench says, in a line; empty where nothing was read or fitted. */
  readonly bench?: string;
  readonly page?: RefObject<HTMLElement | null>;
}

/** The whole design on one page, A4 or US Letter: verdict, ratings, drawing, limits, charts, cautions, inputs, sources, title block. */
export function SheetPage({ report, size = sheetSizes[0] as SheetSize, pages = 1, bench = '', page }: Props) {
  const { title, drawing, figures, cautions } = report;
  const art = drawSheet(drawing, sheetMeasures.width, size.drawing);
  return (
    <article ref={page ?? null} className="sheet" aria-label={`Summary sheet of ${title.title}`}>
      <SheetBand report={report} bench={bench} />
      <dl className="sheet-figures">
        {figures.map(({ key, label, value, amount }) => (
          <div key={key}>
            <dt>{label}</dt>
            <dd>
              {value}
              <StepMark figure={amount.figure} />
            </dd>
          </div>
        ))}
      </dl>
      <figure className="sheet-box">
        <SheetDrawing art={art} title="Section along the row, and the row from above" />
      </figure>
      <div className="sheet-body">
        <div>
          <SheetLimits report={report} notes={size.notes} />
          <SheetCharts report={report} height={size.plot} />
          <SheetInputs report={report} parts={size.parts} />
        </div>
        <div>
          <SheetLadder report={report} height={size.plot} />
          <section className="sheet-cautions">
            <h2>Cautions</h2>
            {cautions.map(({ key, title: what, text }) => (
              <p key={key}>
                <b>{what}.</b> {text}
              </p>
            ))}
          </section>
        </div>
      </div>
      <SheetFoot report={report} />
      <TitleBlock title={title} scale={art.scale} page={1} pages={pages} />
    </article>
  );
}
