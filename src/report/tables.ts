import { plain } from './format.ts';
import type { LineChart } from './lineChart.ts';
import type { Report, TextColumn, TextTable } from './types.ts';

type Cells = readonly (readonly string[])[];

/** Heads that begin with ">" stand over a column of numbers. */
function table(id: string, caption: string, heads: readonly string[], rows: Cells): TextTable {
  const columns = heads.map(
    (head): TextColumn =>
      head.startsWith('>') ? { head: head.slice(1), align: 'end' } : { head, align: 'start' },
  );
  return { id, caption, columns, rows };
}

export function limitsTable({ limits }: Report): TextTable {
  return table(
    'limits',
    'Limits, most urgent first',
    ['Limit', 'Where', '>Value', '>Allowed', '>Margin', '>Load up to', 'Verdict', 'Source'],
    limits.map((r) => [
      r.label,
      r.where,
      r.value,
      r.limit,
      r.margin,
      r.loadFactor,
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
    figures.map((r) => [r.label, r.value]),
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
      r.nominal,
      r.worst,
      r.computed,
      r.volts,
      r.voltLimit,
    ]),
  );
}

export function sharesTable({ air }: Report): TextTable {
  return table(
    'shares',
    'Where the fan’s air goes',
    ['Way', '>Share', '>Flow'],
    (air?.shares ?? []).map((r) => [r.label, r.percent, r.flow]),
  );
}

export function curvesTable({ air }: Report): TextTable {
  const chart = air?.chart;
  const flow = chart?.flowUnit ?? '';
  const dp = chart?.pressureUnit ?? '';
  const rows = (chart?.fan ?? []).map((point, i) => [
    plain(point.flow, 3),
    plain(point.dp, 3),
    systemCell(chart?.system[i], point.flow),
  ]);
  return table(
    'curves',
    'Fan curve and the box’s own curve',
    [`>Flow, ${flow}`, `>Fan, ${dp}`, `>Box, ${dp}`],
    rows,
  );
}

/** The box's curve is cut at the top of the chart; beyond it there is nothing to print. */
function systemCell(point: { readonly flow: number; readonly dp: number } | undefined, flow: number): string {
  return point && Math.abs(point.flow - flow) <= 1e-9 * Math.max(flow, 1) ? plain(point.dp, 3) : '';
}

export function intersectionsTable({ air }: Report): TextTable {
  return table(
    'intersections',
    'Where fan and box meet',
    ['Flow and pressure', 'Stable', 'Used'],
    (air?.chart?.marks ?? []).map((m) => [m.label, m.stable ? 'stable' : 'not stable', m.used ? 'used' : '']),
  );
}

export function stagesTable({ air }: Report): TextTable {
  return table(
    'stages',
    'What takes the fan’s pressure',
    ['Stage', '>Pressure', '>Share', '>Air speed'],
    (air?.stages ?? []).map((r) => [r.label, r.dp, r.percent, r.velocity]),
  );
}

export function passagesTable({ air }: Report): TextTable {
  return table(
    'passages',
    'Every passage',
    ['Passage', '>Share', '>Flow', '>Air speed', '>Reynolds', '>Area'],
    (air?.passages ?? []).map((r) => [r.label, r.percent, r.flow, r.velocity, r.reynolds, r.area]),
  );
}

export function ladderTable({ heat }: Report): TextTable {
  return table(
    'ladder',
    'From the room to the hottest film',
    ['Step', '>Rise', '>Then at'],
    (heat?.ladder.rungs ?? []).map((r) => [r.label, r.rise, r.top]),
  );
}

export function positionsTable({ heat }: Report): TextTable {
  return table(
    'positions',
    'Every resistor',
    ['Position', '>Watts', '>Film', '>Bond', '>Joint', '>By the film face', '>By the second face'],
    (heat?.positions ?? []).map((r) => [
      r.label,
      r.on ? r.watts : 'off',
      r.film,
      r.bond,
      r.joint,
      r.filmSide,
      r.secondSide,
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
      r.plate,
      r.heat,
      r.airOut,
      r.resistance,
      r.coefficient,
      r.efficiency,
      r.facing,
      r.outside,
    ]),
  );
}

export function fansTable({ air }: Report): TextTable {
  return table(
    'fans',
    'Every kind of fan',
    ['Fan', '>How many', '>Speed', '>Flow of one', '>Pressure of one', '>Tone', 'Remark'],
    (air?.fans ?? []).map((r) => [r.label, r.count, r.speed, r.flow, r.pressure, r.tone, r.remark]),
  );
}

export function ratingsTable({ fanStop }: Report): TextTable {
  return table(
    'ratings',
    'Ratings with and without fan',
    ['Way', '>Watts in all', '>Watts each', 'Bounded by', 'The present load'],
    fanStop.ratings.map((r) => [r.label, r.total, r.each, r.boundBy, r.word]),
  );
}

export function reachedTable({ fanStop }: Report): TextTable {
  return table(
    'reached',
    'Limits after the fan stops, soonest first',
    ['Limit', '>Reached after'],
    fanStop.reached.map((r) => [r.label, r.time]),
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
    (drift?.rows ?? []).map((r) => [r.label, r.film, r.drift, r.settled]),
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
      plain(x, 3),
      ...chart.lines.map((line) => {
        const y = line.points[i]?.y;
        return typeof y === 'number' ? plain(y, 3) : 'no answer';
      }),
    ]),
  );
}

function chartTables({ derating, pulse }: Report): TextTable[] {
  const charts = derating ? [derating.overAmbient, derating.overAltitude, derating.overSupply] : [];
  return [...charts, ...(pulse ? [pulse.chart] : [])].map(lineChartTable);
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
    ['Method', 'Equation', 'Source', 'Range', 'Here', 'Scatter (1σ)'],
    methods.map((r) => [r.title, r.equation, `${r.source} [${r.footnote}]`, r.range, r.here, r.scatter]),
  );
}

export function sourcesTable({ sources }: Report): TextTable {
  return table(
    'sources',
    'Sources',
    ['>No.', 'Source', 'Seen how'],
    sources.map((r) => [`${r.number}`, r.cite, r.standingWord]),
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
  return [...whole, ...chartTables(report)].filter((made) => made.rows.length > 0);
}
