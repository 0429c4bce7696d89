import type { Report } from '../../report/types.ts';
import { FanPlot } from './FanPlot.tsx';
import { LadderPlot } from './LadderPlot.tsx';
import { LinesPlot } from './LinesPlot.tsx';
import { sheetMeasures } from './measures.ts';
import { plotFan } from './plotFan.ts';
import { plotLadder } from './plotLadder.ts';
import { plotLines } from './plotLines.ts';

const { plotWidth, ladderWidth } = sheetMeasures;

interface Props {
  readonly report: Report;
  readonly height: number;
}

/**
 * Where fan and box meet, and what the box may carry in another room: the two that a maker reads off. Of the time after a
 * stop of the fan a maker needs one number, which stands on top.
 */
export function SheetCharts({ report: { air, derating }, height }: Props) {
  const chart = air?.chart;
  const room = derating?.overAmbient;
  return (
    <div className="sheet-plots sheet-part">
      {chart && (
        <figure>
          <h2>Fan against box</h2>
          <FanPlot plot={plotFan(chart, plotWidth, height)} title={chart.spoken} />
        </figure>
      )}
      {room && (
        <figure>
          <h2>{room.caption}</h2>
          <LinesPlot plot={plotLines(room, plotWidth, height)} title={room.spoken} />
        </figure>
      )}
    </div>
  );
}

/** From the room to the hottest film, step by step. */
export function SheetLadder({ report: { heat }, height }: Props) {
  if (!heat) return null;
  return (
    <figure className="sheet-ladder">
      <h2>From room to hottest film</h2>
      <LadderPlot plot={plotLadder(heat.ladder, ladderWidth, height)} title={heat.ladder.spoken} />
    </figure>
  );
}
