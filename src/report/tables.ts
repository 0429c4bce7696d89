import type { Said } from './amount.ts';
import { plain } from './format.ts';
import type { LineChart } from './lineChart.ts';
import { table, told } from './makeTable.ts';
import type { Report, TextTable } from './types.ts';

export function limitsTable({ limits }: Report): TextTable {
  return table(
    'limits',
    'Limits, most urgent first',
    ['Limit', 'Where', '>Value', '>Allowed', '>Margin', '>Load up to', 'Verdict', 'Source'],
    limits.map((r) => [
      r.label,
      r.where,
      ...told(r, 'value', 'limit', 'margin', 'loadFactor'),
      r.stateWord,
      `${r.source}${r.confirm ? ' (to confirm)' : ''}`,
    ]),
  );
}

export function figuresTable({ figures }: Report): TextTable {
  return table(
    'figures',
    'Key figures',
    ['Figure', '>Value'],
    figures.map((r) => [r.label, { text: r.value, ...r.amount }]),
  );
}

export function loadTable({ load }: Report): TextTable {
  return table(
    'load',
    'Watts and volts of every position',
    ['Position', 'Part', 'State', '>Nominal', '>Worst', '>Computed with', '>Volts', '>Volts allowed'],
    (load?.rows ?? []).map((r) => [
      r.label,
      r.part,
      r.on ? 'on' : 'off',
      ...told(r, 'nominal', 'worst', 'computed', 'volts', 'voltLimit'),
    ]),
  );
}

export function sharesTable({ air }: Report): TextTable {
  return table(
    'shares',
    'Where the fan’s air goes',
    ['Way', '>Share', '>Flow'],
    (air?.shares ?? []).map((r) => [r.label, ...told(r, 'percent', 'flow')]),
  );
}

export function curvesTable({ air }: Report): TextTable {
  const chart = air?.chart;
  const flow = chart?.flowUnit ?? '';
  const dp = chart?.pressureUnit ?? '';
  const rows = (chart?.fan ?? []).map((point, i) => [
    number(point.flow),
    number(point.dp),
    systemCell(chart?.system[i], point.flow),
  ]);
  return table(
    'curves',
    'Fan curve and the box’s own curve',
    [`>Flow, ${flow}`, `>Fan, ${dp}`, `>Box, ${dp}`],
    rows,
  );
}

/** A number whose unit stands in the head. */
function number(value: number): Said {
  return { text: plain(value, 3), value, unit: '' };
}

/** The box's curve is cut at the top of the chart; beyond it there is nothing to print. */
function systemCell(point: { readonly flow: number; readonly dp: number } | undefined, flow: number) {
  return point && Math.abs(point.flow - flow) <= 1e-9 * Math.max(flow, 1) ? number(point.dp) : '';
}

export function intersectionsTable({ air }: Report): TextTable {
  return table(
    'intersections',
    'Where fan and box meet',
    [{ head: 'Flow and pressure', align: 'start', parts: ['Flow', 'Pressure'] }, 'Stable', 'Used'],
    (air?.chart?.marks ?? []).map((m) => [
      {
        text: m.label,
        amounts: [
          { value: m.flow, unit: air?.chart?.flowUnit ?? '' },
          { value: m.dp, unit: air?.chart?.pressureUnit ?? '' },
        ],
      },
      m.stable ? 'stable' : 'not stable',
      m.used ? 'used' : '',
    ]),
  );
}

export function stagesTable({ air }: Report): TextTable {
  return table(
    'stages',
    'What takes the fan’s pressure',
    ['Stage', '>Pressure', '>Share', '>Air speed'],
    (air?.stages ?? []).map((r) => [r.label, ...told(r, 'dp', 'percent', 'velocity')]),
  );
}

export function passagesTable({ air }: Report): TextTable {
  return table(
    'passages',
    'Every passage',
    ['Passage', '>Share', '>Flow', '>Air speed', '>Reynolds', '>Area'],
    (air?.passages ?? []).map((r) => [
      r.label,
      ...told(r, 'percent', 'flow', 'velocity', 'reynolds', 'area'),
    ]),
  );
}

export function ladderTable({ heat }: Report): TextTable {
  return table(
    'ladder',
    'From the room to the hottest film',
    ['Step', '>Rise', '>Then at'],
    (heat?.ladder.rungs ?? []).map((r) => [r.label, ...told(r, 'rise', 'top')]),
  );
}

export function positionsTable({ heat }: Report): TextTable {
  return table(
    'positions',
    'Every resistor',
    ['Position', '>Watts', '>Film', '>Bond', '>Joint', '>By the film face', '>By the second face'],
    (heat?.positions ?? []).map((r) => [
      r.label,
      { text: r.on ? r.watts : 'off', ...r.amounts.watts },
      ...told(r, 'film', 'bond', 'joint', 'filmSide', 'secondSide'),
    ]),
  );
}

export function sinksTable({ heat }: Report): TextTable {
  return table(
    'sinks',
    'Every sink',
    [
      'Sink',
      '>Hottest plate',
      '>Heat to the air',
      '>Air leaves at',
      '>To the air',
      '>Coefficient',
      '>Fin efficiency',
      '>Sheet facing it',
      '>Outside',
    ],
    (heat?.sinks ?? []).map((r) => [
      r.label,
      ...told(r, 'plate', 'heat', 'airOut', 'resistance', 'coefficient', 'efficiency', 'facing', 'outside'),
    ]),
  );
}

export function fansTable({ air }: Report): TextTable {
  return table(
    'fans',
    'Every kind of fan',
    ['Fan', '>How many', '>Speed', '>Flow of one', '>Pressure of one', '>Tone', 'Remark'],
    (air?.fans ?? []).map((r) => [
      r.label,
      ...told(r, 'count', 'speed', 'flow', 'pressure', 'tone'),
      r.remark,
    ]),
  );
}

export function ratingsTable({ fanStop }: Report): TextTable {
  return table(
    'ratings',
    'Ratings with and without fan',
    [
      'Way',
      '>Watts in all',
      { head: 'Watts each', align: 'end', parts: ['Least watts of one', 'Most watts of one'] },
      'Bounded by',
      'The present load',
    ],
    fanStop.ratings.map((r) => [
      r.label,
      { text: r.total, ...r.amounts.total },
      { text: r.each, amounts: [r.amounts.least, r.amounts.most] },
      r.boundBy,
      r.word,
    ]),
  );
}

export function reachedTable({ fanStop }: Report): TextTable {
  return table(
    'reached',
    'Limits after the fan stops, soonest first',
    ['Limit', '>Reached after'],
    fanStop.reached.map((r) => [r.label, ...told(r, 'time')]),
  );
}

export function fanStopTable({ fanStop }: Report): TextTable {
  return table(
    'fanStop',
    'Hottest of each after the fan stops',
    fanStop.heads.map((head, i) => (i === 0 ? head : `>${head}`)),
    fanStop.times.map((r) => [r.time, ...r.cells]),
  );
}

export function driftTable({ drift }: Report): TextTable {
  return table(
    'drift',
    'Change of resistance by self-heating',
    ['Position', '>Film', '>Change', `>Within ${drift?.within ?? ''} after`],
    (drift?.rows ?? []).map((r) => [r.label, ...told(r, 'film', 'drift', 'settled')]),
  );
}

/** Numbers of a chart of lines, one row a place on its axis. */
export function lineChartTable(chart: LineChart): TextTable {
  const first = chart.lines[0]?.points ?? [];
  return table(
    chart.id,
    chart.caption,
    [`>${chart.xLabel}, ${chart.xUnit}`, ...chart.lines.map((line) => `>${line.label}, ${chart.yUnit}`)],
    first.map(({ x }, i) => [
      number(x),
      ...chart.lines.map((line) => {
        const y = line.points[i]?.y;
        return typeof y === 'number' ? number(y) : 'no answer';
      }),
    ]),
  );
}

function chartTables({ derating, pulse }: Report): TextTable[] {
  const charts = derating ? [derating.overAmbient, derating.overAltitude, derating.overSupply] : [];
  return [...charts, ...(pulse ? [pulse.chart] : [])].map(lineChartTable);
}

/** What to cut, one row a kind of panel; with the tables below it fills a page for the workshop. */
export function cutTable({ cut }: Report): TextTable {
  const { unit } = cut;
  return table(
    'cut',
    'List of panels',
    [
      'Mark',
      'Panel',
      'Sheet',
      `>Length, ${unit}`,
      `>Width, ${unit}`,
      `>Rough length, ${unit}`,
      `>Rough width, ${unit}`,
      '>Per box',
      '>In all',
      'Where it goes',
    ],
    cut.panels.map((r) => [
      r.mark,
      r.name,
      r.sheet,
      r.length,
      r.width,
      r.roughLength,
      r.roughWidth,
      plain(r.perBox),
      plain(r.inAll, 9),
      r.remark === '' ? r.purpose : `${r.purpose}; ${r.remark}`,
    ]),
  );
}

export function cutOutsTable({ cut }: Report): TextTable {
  const { unit } = cut;
  return table(
    'cutOuts',
    'Cut-outs, from the lower left corner to their middles',
    ['Mark', 'Panel', 'Cut-out', `>Size, ${unit}`, `>From left, ${unit}`, `>From below, ${unit}`],
    cut.cutOuts.map((r) => [r.mark, r.panel, r.name, r.size, r.fromLeft, r.fromBelow]),
  );
}

export function slopesTable({ cut }: Report): TextTable {
  const { unit } = cut;
  return table(
    'slopes',
    'Sloping panels, inside faces',
    [
      'Mark',
      'Panel',
      `>Edge at the fan, ${unit}`,
      `>Edge at the box, ${unit}`,
      `>Apart, ${unit}`,
      '>Bevel of these',
      '>Bevel of the long edges',
      'Corners at the fan, from left and below',
      'Corners at the box',
    ],
    cut.slopes.map(({ corners, ...r }) => [
      r.mark,
      r.panel,
      r.fanEdge,
      r.bayEdge,
      r.apart,
      r.endBevel,
      r.longBevel,
      corners.slice(0, 2).join('; '),
      corners.slice(2).join('; '),
    ]),
  );
}

export function millsTable({ cut }: Report): TextTable {
  return table(
    'mills',
    'Mills, the narrowest feature first',
    ['Mark', 'Panel', 'Cut-out', `>Widest mill, ${cut.unit}`, 'Yours'],
    cut.mills.map((r) => [r.mark, r.panel, r.name, r.widest, r.own]),
  );
}

export function sheetsTable({ cut }: Report): TextTable {
  return table(
    'sheets',
    'Sheet for all boxes',
    ['Sheet', '>Panels', '>Area in the rough', '>Stock sheets at least', 'Largest panel', 'Fits the stock'],
    cut.sheets.map((r) => [r.sheet, plain(r.panels, 9), r.area, plain(r.leastSheets, 9), r.largest, r.fits]),
  );
}

/** All that a shop needs to cut the boxes, in the order of the work. */
export function cutTables(report: Report): TextTable[] {
  return [cutTable, sheetsTable, cutOutsTable, slopesTable, millsTable].map((make) => make(report));
}

/** What the sizes rest on and what to mind, for the page that goes to the saw. */
export function cutNotesTable({ cut }: Report): TextTable {
  const lines = [...cut.faults, ...cut.joints, ...cut.fits, ...cut.remarks];
  const warnings = cut.cautions.map(({ title, text }) => `${title}. ${text}`);
  return table(
    'cutNotes',
    'Before you cut',
    ['Mind this'],
    [...lines, ...warnings].map((line) => [line]),
  );
}

export function notesTable({ notes }: Report): TextTable {
  return table(
    'notes',
    'Notes',
    ['Weight', 'Note'],
    notes.map((r) => [r.severityWord, r.text]),
  );
}

export function inputsTable({ inputs }: Report): TextTable {
  return table(
    'inputs',
    'Inputs that matter',
    ['Part', 'Input', 'Value'],
    inputs.flatMap((g) => g.rows.map((r) => [g.title, r.label, r.value])),
  );
}

/** Every field of the design, a table a part. */
export function everyInputTables({ everyInput }: Report): TextTable[] {
  return everyInput.map(({ id, title, heads, rows }) => table(`every-${id}`, title, heads, rows));
}

export function methodsTable({ methods }: Report): TextTable {
  return table(
    'methods',
    'Methods used',
    [
      'Method',
      { head: 'Equation', align: 'start', typeset: true },
      'Source',
      'Range',
      'Here',
      'Scatter (1σ)',
    ],
    methods.map((r) => [r.title, r.equation, `${r.source} [${r.footnote}]`, r.range, r.here, r.scatter]),
  );
}

export function sourcesTable({ sources }: Report): TextTable {
  return table(
    'sources',
    'Sources',
    ['>No.', 'Source', 'Seen how'],
    sources.map((r) => [{ text: `${r.number}`, value: r.number, unit: '' }, r.cite, r.standingWord]),
  );
}

export function assumptionsTable({ assumptions }: Report): TextTable {
  return table(
    'assumptions',
    'Taken for granted',
    ['Assumption', 'If it is wrong'],
    assumptions.map((r) => [r.says, r.ifWrong]),
  );
}

export function cautionsTable({ cautions }: Report): TextTable {
  return table(
    'cautions',
    'Cautions',
    ['What', 'Why'],
    cautions.map((r) => [r.title, r.text]),
  );
}

/** All tables of a report that have rows, in reading order. */
export function reportTables(report: Report): TextTable[] {
  const whole = [
    figuresTable,
    limitsTable,
    notesTable,
    loadTable,
    sharesTable,
    fansTable,
    intersectionsTable,
    stagesTable,
    passagesTable,
    curvesTable,
    ladderTable,
    positionsTable,
    sinksTable,
    driftTable,
    ratingsTable,
    reachedTable,
    fanStopTable,
    cautionsTable,
    inputsTable,
    methodsTable,
    sourcesTable,
    assumptionsTable,
  ].map((make) => make(report));
  return [...whole, ...cutTables(report), ...chartTables(report)].filter((made) => made.rows.length > 0);
}
