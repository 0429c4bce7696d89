import type { Outcome } from '../../core/system/outcome.ts';
import { fileStem } from '../../io/fileStem.ts';
import { tableFile, tablesFile } from '../../io/tableFile.ts';
import { reportJson } from '../../report/reportJson.ts';
import type { Report, TextTable, TitleBlock } from '../../report/types.ts';
import { saveFile } from '../kit/saveFile.ts';
import { pictureOf } from './picture.ts';
import { pngOf } from './png.ts';

/** Everything that is written as a file but the design itself; loaded when somebody asks for one. */

interface Taken {
  readonly id: string;
  readonly caption: string;
  readonly title: TitleBlock;
}

/** Throws where the browser does not draw. */
export async function savePicture(kind: 'SVG' | 'PNG', figure: HTMLElement, what: Taken): Promise<void> {
  const { id, caption, title } = what;
  const picture = pictureOf(figure, { caption, lines: linesOf(title) });
  if (kind === 'SVG') saveFile(textBlob(picture.svg, 'image/svg+xml'), fileName(title, id, 'svg'));
  else saveFile(await pngOf(picture), fileName(title, id, 'png'));
}

export function saveTable(table: TextTable, title: TitleBlock): void {
  saveFile(textBlob(tableFile(table), 'text/csv'), fileName(title, table.id, 'csv'));
}

export function saveTables(tables: readonly TextTable[], title: TitleBlock): void {
  saveFile(textBlob(tablesFile(tables, title), 'text/csv'), fileName(title, 'tables', 'csv'));
}

export function saveReport(report: Report, outcome: Outcome): void {
  const name = fileName(report.title, 'report', 'json');
  saveFile(textBlob(reportJson(report, outcome), 'application/json'), name);
}

/** Whose picture it is: an invented box and an answer that is not of the day stay marked when they leave the page. */
function linesOf({ title, revision, date, invented, stale }: TitleBlock): string[] {
  const whose = [title, revision === '' ? '' : `revision ${revision}`, date];
  return [whose.filter((text) => text !== '').join(', '), invented, stale].filter((text) => text !== '');
}

function fileName(title: TitleBlock, id: string, ending: string): string {
  return `${fileStem(title)}-${id.replace(/[A-Z]/g, (letter) => `-${letter.toLowerCase()}`)}.${ending}`;
}

function textBlob(text: string, type: string): Blob {
  return new Blob([text], { type: `${type};charset=utf-8` });
}
