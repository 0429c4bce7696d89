import { cutOutsTable, cutTable, millsTable, sheetsTable, slopesTable } from '../../report/tables.ts';
import type { Report } from '../../report/types.ts';
import columns from './columns.module.css';
import { commonScale } from './flatPattern.ts';
import { PanelPicture } from './PanelPicture.tsx';
import { QuestionSection } from './QuestionSection.tsx';
import { TableTwin } from './TableTwin.tsx';
import styles from './WhatToCut.module.css';

/** The panels for the workshop: list, flat patterns to one scale, and what their sizes rest on. */
export function WhatToCut({ report }: { readonly report: Report }) {
  const { cut } = report;
  const scale = commonScale(cut.panels.map(({ pattern }) => pattern));
  return (
    <QuestionSection id="what-has-to-be-cut" sentence={cut.sentence}>
      {cut.faults.length > 1 && <Lines lines={cut.faults.slice(1)} className={styles.faults} />}
      <TableTwin table={cutTable(report)} open />
      <TableTwin table={sheetsTable(report)} open />
      <div className={styles.pictures}>
        {cut.panels.map((panel) => (
          <PanelPicture key={panel.key} panel={panel} unit={cut.unit} scale={scale} />
        ))}
      </div>
      <TableTwin table={cutOutsTable(report)} />
      <TableTwin table={slopesTable(report)} />
      <TableTwin table={millsTable(report)} />
      <div className={columns.columns}>
        <div>
          <h3>How the panels meet</h3>
          <Lines lines={cut.joints} />
          <h3>Mill and fit</h3>
          <Lines lines={cut.fits} />
        </div>
        <div>
          <h3>Before you cut</h3>
          <Lines lines={cut.remarks} />
          <h3>Cautions</h3>
          <ul className={styles.lines}>
            {cut.cautions.map(({ key, title, text }) => (
              <li key={key}>
                <b>{title}.</b> {text}
              </li>
            ))}
          </ul>
        </div>
      </div>
    </QuestionSection>
  );
}

function Lines({
  lines,
  className = styles.lines,
}: {
  readonly lines: readonly string[];
  readonly className?: string | undefined;
}) {
  return (
    <ul className={className}>
      {lines.map((line) => (
        <li key={line}>{line}</li>
      ))}
    </ul>
  );
}
