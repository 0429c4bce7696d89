import type { Card } from '../core/card.ts';
import { driftOf } from '../core/system/drift.ts';
import { fansStopped, leastFlow, type SystemInput } from '../core/system/input.ts';
import { systemCards } from '../core/system/methods.ts';
import { modelAssumptions } from '../core/system/modelAssumptions.ts';
import type { Outcome, Solved } from '../core/system/outcome.ts';
import { solveSystem, systemCurves } from '../core/system/solveSystem.ts';
import { type Trust, trustOf } from '../core/system/trust.ts';
import type { Design } from '../model/design.ts';
import { toCore } from '../model/toCore.ts';
import { swingsOf } from '../studies/derating.ts';
import { fanStop } from '../studies/fanStop.ts';
import { airReport } from './airReport.ts';
import { bibliographyOf } from './bibliography.ts';
import { buildHeadline } from './buildHeadline.ts';
import { cautions } from './cautions.ts';
import { cutReport } from './cutReport.ts';
import { deratingReport } from './deratingReport.ts';
import { withDimensions } from './drawingDimensions.ts';
import { driftReport } from './driftReport.ts';
import { everyInput } from './everyInput.ts';
import { fanStopReport } from './fanStopReport.ts';
import { heatReport } from './heatReport.ts';
import { inputGroups } from './inputGroups.ts';
import { loadReport } from './loadReport.ts';
import { assumptionRows, methodRows } from './methodRows.ts';
import { noteRows } from './noteRows.ts';
import { pulseReport } from './pulseReport.ts';
import type { Report, ReportPrefs } from './types.ts';
import { counted, percent } from './words.ts';

/** Flows at which the chart's curves are drawn. */
const curvePoints = 41;

/**
 * Everything that screen, sheet, table file and terminal say about one answered design. Pure and total. Reads the
 * outcome, the curves and the studies; computes no physics of its own.
 */
export function buildReport(design: Design, outcome: Outcome, prefs: ReportPrefs): Report {
  const { system } = prefs;
  const solved: Solved | null = outcome.ok ? outcome : null;
  const input = toCore(design);
  const running = trustOf(input);
  const stopped = trustOf(input, fansStopped);
  const used = usedCards(running, stopped);
  const limits = solved?.limits ?? [];
  const bibliography = bibliographyOf([
    ...used.map((card) => card.source.key),
    ...limits.map((limit) => limit.source),
  ]);
  const headline = buildHeadline(design, outcome, prefs);
  const notes = noteRows(running.notes, system);
  const stop = fanStop(input, outcome);
  const warned = cautions(design, outcome, system);
  return {
    ...headline,
    drawing: withDimensions(headline.drawing, design, system),
    load: solved ? loadReport(design, solved, system) : null,
    air: solved
      ? airReport({
          air: solved.air,
          listening_m: design.room.listening_m,
          curves: systemCurves(input, curvePoints),
          lower: lowerPoint(input, solved),
          system,
        })
      : null,
    heat: solved ? heatReport(design, solved, system) : null,
    limits: headline.limits.map((row, i) => {
      const source = bibliography.rowOf(limits[i]?.source ?? '');
      return { ...row, source: source.cite, footnote: source.number };
    }),
    notes,
    fanStop: fanStopReport(
      design,
      outcome,
      stop,
      noteRows(stopped.notes, system).filter(({ text }) => !notes.some((note) => note.text === text)),
      system,
    ),
    derating: solved
      ? deratingReport(
          design,
          input,
          system,
          swingsOf(input, outcome, stop.outcome),
          stop.running?.total_W ?? null,
        )
      : null,
    drift: solved ? driftReport(design, driftOf(input), system) : null,
    pulse: solved?.pulse ? pulseReport(design, solved.pulse, system) : null,
    cut: cutReport(
      design,
      warned.find(({ key }) => key === 'solventCement'),
      system,
    ),
    cautions: warned,
    inputs: inputGroups(design, system),
    everyInput: everyInput(design, system),
    computed: solved ? computedWords(solved, used.length) : '',
    methods: methodRows(used, bibliography, standing(running, stopped), system),
    sources: bibliography.rows,
    assumptions: assumptionRows(used, used.length > 0 ? modelAssumptions : []),
  };
}

/** The same box at the meeting point that its fans reach from rest, where that is another one. */
function lowerPoint(input: SystemInput, { air }: Solved): Solved | null {
  if (air.intersections.filter(({ stable }) => stable).length < 2) return null;
  const lower = solveSystem(input, leastFlow);
  return lower.ok ? lower : null;
}

/** With the fans running; of methods that count only without them, so. */
function standing(running: Trust, stopped: Trust): Trust['stands'] {
  const judged = new Set(running.stands.map(({ card }) => card));
  return [...running.stands, ...stopped.stands.filter(({ card }) => !judged.has(card))];
}

/** Methods behind this answer, with the fans running and without, in the order of the way. */
function usedCards(running: Trust, stopped: Trust): Card[] {
  const ids = new Set([...running.used, ...stopped.used]);
  return systemCards.filter((card) => ids.has(card.id));
}

function computedWords({ balance }: Solved, methods: number): string {
  const closes = Math.max(balance.air, balance.heat);
  const size = closes < 1e-9 ? 'a thousand-millionth' : `${percent(closes)}`;
  return `With ${counted(methods, 'published method')}: all flows and all temperatures at once, until nothing moves any more (${counted(balance.iterations, 'round')}). What goes in and what comes out, of air and of heat, agree within ${size}.`;
}
