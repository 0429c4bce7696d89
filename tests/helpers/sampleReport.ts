import type { Outcome } from '../../src/core/system/outcome.ts';
import { solveSystem } from '../../src/core/system/solveSystem.ts';
import type { Design } from '../../src/model/design.ts';
import { designChecksum } from '../../src/model/designChecksum.ts';
import { type ExampleId, exampleById, examples } from '../../src/model/examples/examples.ts';
import { toCore } from '../../src/model/toCore.ts';
import { buildReport } from '../../src/report/buildReport.ts';
import type { Report, UnitSystem } from '../../src/report/types.ts';

export interface Sample {
  readonly design: Design;
  readonly outcome: Outcome;
  readonly report: Report;
}

/** A design, its answer and its report. */
export function sampleOf(design: Design, system: UnitSystem = 'metric'): Sample {
  const outcome = solveSystem(toCore(design));
  const prefs = { system, date: '25 November 2026', checksum: designChecksum(design) };
  return { design, outcome, report: buildReport(design, outcome, prefs) };
}

export function sampleExample(id: ExampleId, system: UnitSystem = 'metric'): Sample {
  return sampleOf(exampleById(id), system);
}

/** The example with its fan below the start voltage: a valid design without an answer. */
export function sampleWithoutAnswer(): Sample {
  const design = exampleById('eightResistors');
  return sampleOf({ ...design, fan: { ...design.fan, supply_V: 3 } });
}

export const exampleIds: readonly ExampleId[] = examples.map((example) => example.id);
