import { ordinaryRun } from '../core/system/input.ts';
import type { Outcome, Solved } from '../core/system/outcome.ts';
import type { Design } from '../model/design.ts';
import { fullTitle } from '../model/fullTitle.ts';
import { toCore } from '../model/toCore.ts';
import { ratedFrom } from '../studies/ratedLoad.ts';
import { buildDrawing } from './buildDrawing.ts';
import { figures } from './figures.ts';
import { filmLimit_K } from './filmLimit.ts';
import { limitRows } from './limitRows.ts';
import { ratings } from './ratings.ts';
import { shareRows } from './shareRows.ts';
import type { DrawingKey, Headline, ReportPrefs, TitleBlock, UnitSystem } from './types.ts';
import { verdictReport } from './verdictReport.ts';
import { counted, temperature } from './words.ts';

/** The part of the report that must be there at once, small enough for the first load. Reads; computes no physics. */
export function buildHeadline(design: Design, outcome: Outcome, prefs: ReportPrefs): Headline {
  const { system } = prefs;
  const solved: Solved | null = outcome.ok ? outcome : null;
  return {
    system,
    title: titleBlock(design, prefs),
    verdict: verdictReport(design, outcome, system),
    figures: solved ? figures(solved, system) : [],
    limits: solved ? limitRows(solved.limits, system) : [],
    ratings: solved ? ratings(design, solved, ratedFrom(solved, toCore(design), ordinaryRun), system) : null,
    key: solved ? drawingKey(design, solved, system) : null,
    drawing: buildDrawing(design, outcome, system),
  };
}

function titleBlock(design: Design, { date = '', checksum = '', stale = false }: ReportPrefs): TitleBlock {
  const { sink, positions, fan } = design;
  const sinks = positions.length - 1 + Number(sink.first) + Number(sink.last);
  return {
    title: fullTitle(design),
    revision: design.revision,
    remark: design.remark,
    date,
    checksum,
    stale: stale
      ? 'A field was not right when this was printed: this is the last answer that went together.'
      : '',
    invented: design.invented ? 'Invented example, not a built box' : '',
    subject: `${counted(positions.length, 'resistor')}, ${counted(sinks, 'sink')}, ${fan.name}`,
  };
}

function drawingKey(design: Design, { air, heat }: Solved, system: UnitSystem): DrawingKey {
  return {
    shares: shareRows(air, system),
    coldest: `${temperature(heat.room_K, system)} room`,
    hottest: `film limit ${temperature(filmLimit_K(design, heat), system)}`,
  };
}
