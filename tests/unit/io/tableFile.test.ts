import { describe, expect, test } from 'vitest';
import { readCsv } from '../../../src/io/csv.ts';
import { tableFile, tablesFile } from '../../../src/io/tableFile.ts';
import { limitsTable, reportTables } from '../../../src/report/tables.ts';
import { sampleExample } from '../../helpers/sampleReport.ts';

const { report } = sampleExample('eightResistors');
const rowsOf = (text: string) => {
  const read = readCsv(text);
  return read.ok ? read.table.rows : [];
};

describe('the file of one table', () => {
  test('begins with a byte order mark and the heads, and has a line for every row', () => {
    const table = limitsTable(report);
    const text = tableFile(table);
    expect(text.startsWith('\ufeffLimit,Where,Value,"Value, unit",Allowed')).toBe(true);
    expect(rowsOf(text)).toHaveLength(table.rows.length + 1);
  });

  test.each(reportTables(report).map((table) => [table.id, table] as const))(
    'is read back with equally many cells in every line: %s',
    (_, table) => {
      const rows = rowsOf(tableFile(table));
      expect(new Set(rows.map(({ length }) => length)).size).toBe(1);
      expect(rows).toHaveLength(table.rows.length + 1);
    },
  );
});

describe('the file of all tables', () => {
  const tables = reportTables(report);
  const lines = tablesFile(tables, report.title).slice(1).split('\r\n');

  test('says first whose they are, and that an example is invented', () => {
    expect(lines.slice(0, 4)).toEqual([
      report.title.title,
      report.title.revision,
      report.title.date,
      '"Invented example, not a built box"'.replaceAll('"', lines[3]?.startsWith('"') ? '"' : ''),
    ]);
  });

  test('has every table under its caption, after an empty line', () => {
    for (const { caption } of tables) {
      const at = lines.findIndex((line) => line.replaceAll('"', '') === caption);
      expect([caption, lines[at - 1]]).toEqual([caption, '']);
    }
    expect(lines.filter((line) => line === '')).toHaveLength(tables.length + 1);
  });
});
