import {
  cautionsTable,
  cutTables,
  driftTable,
  fanStopTable,
  fansTable,
  inputsTable,
  intersectionsTable,
  ladderTable,
  limitsTable,
  lineChartTable,
  loadTable,
  positionsTable,
  ratingsTable,
  reachedTable,
  sharesTable,
  sinksTable,
  stagesTable,
} from './tables.ts';
import type { Report, TextTable } from './types.ts';

const width = 100;

/** The report for a terminal of about a hundred columns: the same words, no colour, no control characters. */
export function reportText(report: Report): string {
  const { title, verdict, ratings, notes, air, heat, load, sources } = report;
  const head = [title.title, title.revision === '' ? '' : `revision ${title.revision}`, title.date]
    .filter((text) => text !== '')
    .join(', ');
  const blocks: string[] = [
    [
      head,
      '='.repeat(Math.min(width, [...head].length)),
      title.subject,
      title.invented,
      checksumLine(title.checksum),
    ]
      .filter((text) => text !== '')
      .join('\n'),
    [verdict.sentence, ...verdict.reasons, ratings?.sentence ?? '']
      .filter((text) => text !== '')
      .map((text) => wrap(text, width))
      .join('\n'),
    textTable(withoutLast(limitsTable(report))),
    notes.length > 0
      ? ['Notes', ...notes.map((note) => wrap(`- ${note.severityWord}: ${note.text}`, width, '  '))].join(
          '\n',
        )
      : '',
    load ? section(load.sentence, [loadTable(report)]) : '',
    air ? section(air.sentence, [sharesTable(report), stagesTable(report), intersectionsTable(report)]) : '',
    air && air.sound !== '' ? section(air.sound, [fansTable(report)]) : '',
    heat ? section(heat.sentence, [ladderTable(report), positionsTable(report), sinksTable(report)]) : '',
    report.drift ? section(`${report.drift.sentence} ${report.drift.warmUp}`, [driftTable(report)]) : '',
    report.pulse ? section(report.pulse.sentence, []) : '',
    section(
      [report.fanStop.sentence, report.fanStop.label, ...report.fanStop.notes.map(({ text }) => text)]
        .filter((text) => text !== '')
        .join(' '),
      [ratingsTable(report), reachedTable(report), fanStopTable(report)],
    ),
    report.derating
      ? section(
          report.derating.sentence,
          [report.derating.overAmbient, report.derating.overAltitude, report.derating.overSupply].map(
            lineChartTable,
          ),
        )
      : '',
    cutText(report),
    textTable(inputsTable(report)),
    [
      cautionsTable(report).caption,
      ...report.cautions.map((c) => wrap(`- ${c.title}. ${c.text}`, width, '  ')),
    ].join('\n'),
    sources.length > 0
      ? [
          'Sources',
          ...sources.map((s) => wrap(`${s.number}. ${s.cite} (${s.standingWord})`, width, '   ')),
        ].join('\n')
      : '',
  ];
  return `${blocks.filter((block) => block !== '').join('\n\n')}\n`;
}

function checksumLine(checksum: string): string {
  return checksum === '' ? '' : `Checksum ${checksum}, as on the printed sheet of the same design`;
}

/** A sentence and the tables under it. */
export function section(sentence: string, tables: readonly TextTable[]): string {
  return [wrap(sentence, width), ...tables.map(textTable)].filter((text) => text !== '').join('\n\n');
}

/** The tables, then what their sizes rest on and what stands in the way. */
function cutText(report: Report): string {
  const { cut } = report;
  const says = [...cut.faults.slice(1), ...cut.joints, ...cut.fits, ...cut.remarks];
  const [list, ...tables] = cutTables(report);
  const warns = cut.cautions.map(({ title, text }) => `${title}. ${text}`);
  return [
    section(cut.sentence, list === undefined ? [] : [withoutLast(list), ...tables]),
    [...says, ...warns].map((text) => wrap(`- ${text}`, width, '  ')).join('\n'),
  ].join('\n\n');
}

/** Sources stand at the end of the page, purposes are plain from names; a line in a terminal is short. */
function withoutLast(made: TextTable): TextTable {
  return {
    ...made,
    columns: made.columns.slice(0, -1),
    rows: made.rows.map((row) => row.slice(0, -1)),
    amounts: made.amounts.map((row) => row.slice(0, -1)),
  };
}

export function textTable({ caption, columns, rows }: TextTable): string {
  if (rows.length === 0) return '';
  const widths = columns.map((column, i) =>
    Math.max(length(column.head), ...rows.map((row) => length(row[i] ?? ''))),
  );
  const line = (cells: readonly string[]) =>
    columns
      .map((column, i) => pad(cells[i] ?? '', widths[i] ?? 0, column.align))
      .join('  ')
      .trimEnd();
  return [
    caption,
    line(columns.map((column) => column.head)),
    widths.map((w) => '-'.repeat(w)).join('  '),
    ...rows.map(line),
  ].join('\n');
}

function length(text: string): number {
  return [...text].length;
}

function pad(text: string, columns: number, align: 'start' | 'end'): string {
  const blank = ' '.repeat(Math.max(0, columns - length(text)));
  return align === 'end' ? blank + text : text + blank;
}

/** Broken between words into lines of so many columns. */
export function wrap(text: string, columns: number, indent = ''): string {
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    if (line !== '' && length(line) + 1 + length(word) > columns) {
      lines.push(line);
      line = indent + word;
    } else {
      line = line === '' ? word : `${line} ${word}`;
    }
  }
  return [...lines, line].join('\n');
}
