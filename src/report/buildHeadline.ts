import type { Card } from '../core/card.ts';
import { systemCards } from '../core/system/methods.ts';
import type { Outcome, Solved } from '../core/system/outcome.ts';
import { systemCurves } from '../core/system/solveSystem.ts';
import type { Design } from '../model/design.ts';
import { toCore } from '../model/toCore.ts';
import { airReport } from './airReport.ts';
import { type Bibliography, bibliographyOf } from './bibliography.ts';
import { buildDrawing } from './buildDrawing.ts';
import { quantity } from './format.ts';
import { heatReport } from './heatReport.ts';
import { limitRows } from './limitRows.ts';
import { loadReport } from './loadReport.ts';
import { noteRows } from './noteRows.ts';
import { ratings } from './ratings.ts';
import type { Figure, Headline, ReportPrefs, TitleBlock, UnitSystem } from './types.ts';
import { verdictReport } from './verdictReport.ts';
import { counted, percent, temperature, watts } from './words.ts';

/** Flows at which the chart's curves are drawn. */
const curvePoints = 41;

/** The part of the report that must be there at once, small enough for the first load. Reads; computes no physics. */
export function buildHeadline(design: Design, outcome: Outcome, prefs: ReportPrefs): Headline {
  const { system } = prefs;
  const solved: Solved | null = outcome.ok ? outcome : null;
  return {
    system,
    title: titleBlock(design, prefs),
    verdict: verdictReport(design, outcome, system),
    figures: solved ? figures(solved, system) : [],
    limits: solved ? limitRows(solved.limits, bibliographyFor(solved), system) : [],
    ratings: solved ? ratings(design, solved, system) : null,
    load: solved ? loadReport(design, solved, system) : null,
    air: solved ? airReport(solved.air, systemCurves(toCore(design), curvePoints), system) : null,
    heat: solved ? heatReport(design, solved, system) : null,
    notes: solved ? noteRows(solved.notes, system) : [],
    drawing: buildDrawing(design, outcome, system),
  };
}

/** Cards of the methods that an answer used, in the order of the air's and the heat's way. */
export function usedCards(solved: Solved | null): Card[] {
  const ids = new Set(solved?.used ?? []);
  return systemCards.filter((card) => ids.has(card.id));
}

/** Footnote numbers of an answer's sources, the same for limits and methods. */
export function bibliographyFor(solved: Solved | null): Bibliography {
  return bibliographyOf([
    ...usedCards(solved).map((card) => card.source.key),
    ...(solved?.limits ?? []).map((limit) => limit.source),
  ]);
}

function titleBlock(design: Design, { date = '', stale = false }: ReportPrefs): TitleBlock {
  const { sink, positions, fan } = design;
  const sinks = positions.length - 1 + Number(sink.first) + Number(sink.last);
  return {
    title: design.title,
    revision: design.revision,
    remark: design.remark,
    date,
    stale: stale
      ? 'A field was not right when this was printed: this is the last answer that went together.'
      : '',
    invented: design.invented ? 'Invented example, not a built box' : '',
    subject: `${counted(positions.length, 'resistor')}, ${counted(sinks, 'sink')}, ${fan.name}`,
  };
}

function figures({ heat, air }: Solved, system: UnitSystem): Figure[] {
  const film_K = heat.positions[heat.hottest]?.film_K ?? heat.room_K;
  return [
    { key: 'load', label: 'load', value: watts(heat.total_W, system) },
    { key: 'film', label: 'hottest film', value: temperature(film_K, system) },
    { key: 'flow', label: 'air moved', value: quantity(air.flow_m3PerS, 'volumeFlow', system, 3) },
    { key: 'pressure', label: 'fan pressure', value: quantity(air.fanPressure_Pa, 'pressure', system, 3) },
    { key: 'fins', label: 'through the fins', value: percent(air.share.fins) },
    { key: 'exhaust', label: 'exhaust air', value: temperature(heat.exhaust_K, system) },
  ];
}
