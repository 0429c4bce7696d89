import type { Solved } from '../core/system/outcome.ts';
import type { Design } from '../model/design.ts';
import { saidAs, saidQuantity, saidWatts, withAmounts, worked } from './said.ts';
import type { LoadReport, UnitSystem } from './types.ts';
import { capital, counted, percent, resistorName, watts } from './words.ts';
import { nominalFigure, powerFigure, voltageFigure, worstFigure } from './working/figureIds.ts';

export function loadReport(design: Design, { heat }: Solved, system: UnitSystem): LoadReport {
  const on = heat.positions.filter((p) => p.on).length;
  const total = watts(heat.total_W, system);
  const basis = design.load.atWorst ? 'at the worst watts that the tolerances allow' : 'at nominal watts';
  const duty = design.load.duty < 1 ? `, the mean over a duty of ${percent(design.load.duty)}` : '';
  return {
    sentence: `${capital(counted(on, 'resistor'))} of ${heat.positions.length} on, ${total} in all ${basis}${duty}; the fan adds ${watts(heat.fan_W, system)}.`,
    total,
    rows: heat.positions.map((p) => {
      const position = design.positions[p.index];
      const part = position ? design.parts[position.part] : undefined;
      return {
        index: p.index,
        label: capital(resistorName(p.index)),
        part: part?.name ?? '',
        on: p.on,
        ...withAmounts({
          nominal: worked(saidWatts(p.nominal_W, system), nominalFigure(p.index)),
          worst: worked(saidWatts(p.worst_W, system), worstFigure(p.index)),
          computed: worked(saidWatts(p.power_W, system), powerFigure(p.index)),
          volts: worked(saidQuantity(p.voltage_V, 'voltage', system, 3), voltageFigure(p.index)),
          voltLimit: part
            ? saidQuantity(part.elementLimit_V, 'voltage', system, 3)
            : saidAs('', null, 'voltage', system),
        }),
      };
    }),
  };
}
