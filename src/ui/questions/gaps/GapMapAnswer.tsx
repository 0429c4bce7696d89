import { memo, useState } from 'react';
import type { GapMapReport } from '../../../report/gaps/gapMapReport.ts';
import { ChartFrame } from '../../charts/ChartFrame.tsx';
import { GapMapChart } from '../../charts/lazy.ts';
import { Select } from '../../kit/Select.tsx';
import { TableTwin } from '../TableTwin.tsx';
import { GapCells } from './GapCells.tsx';
import { Remarks } from './Remarks.tsx';
import type { TakeGap } from './useTakeGap.ts';
import styles from './WhichGap.module.css';

interface Props {
  readonly report: GapMapReport;
  readonly onTake: TakeGap;
}

/** Two gaps: a map of the film's margin or of the load, and every pair as a table. */
export const GapMapAnswer = memo(function GapMapAnswer({ report, onTake }: Props) {
  const { pictures, tables, remarks } = report;
  const [chosen, setChosen] = useState<string>('filmMargin_K');
  const picture = pictures.find(({ shade }) => shade === chosen) ?? pictures[0];
  return (
    <>
      {picture && tables[0] && (
        <div className={styles.mapRow}>
          <div className={styles.other}>
            <div className={styles.choice}>
              <Select
                aria-label="Tinted by"
                value={picture.shade}
                options={pictures.map(({ shade, caption, shadeUnit }) => ({
                  value: shade,
                  label: `${caption}, ${shadeUnit}`,
                }))}
                onChoose={setChosen}
              />
            </div>
            <ChartFrame caption={`${picture.caption}, ${picture.shadeUnit}`} table={tables[0]} ownHeight>
              <GapMapChart picture={picture} />
            </ChartFrame>
          </div>
          <div>
            <Remarks remarks={remarks} />
          </div>
        </div>
      )}
      <GapCells report={report} onTake={onTake} />
      {tables[1] && <TableTwin table={tables[1]} />}
    </>
  );
});
