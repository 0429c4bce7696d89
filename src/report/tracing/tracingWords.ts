import type { AxisFault } from '../../model/tracing/axisMap.ts';
import type { AxisId } from '../../model/tracing/tracing.ts';
import { plain } from '../format.ts';

export const axisNames: Readonly<Record<AxisId, string>> = { flow: 'flow axis', pressure: 'pressure axis' };

/** What its values are called. */
const measures: Readonly<Record<AxisId, string>> = { flow: 'flow', pressure: 'pressure' };

/** Where to look for the printed values of an axis. */
const whereabouts: Readonly<Record<AxisId, string>> = {
  flow: 'on the line that the flow is printed along',
  pressure: 'on the line that the pressure is printed along',
};

export function degrees(angle_rad: number): string {
  return `${plain((angle_rad * 180) / Math.PI, 2)}°`;
}

/** Why two axes give no scale, and what to do. */
export function wordFault(fault: AxisFault): string {
  switch (fault.code) {
    case 'marksTogether':
      return `The two marks of the ${axisNames[fault.axis]} are ${plain(fault.apart_px, 2)} pixels apart; a pixel would be too much of the scale between them. Put them as far apart as the sheet goes, at least 20 pixels.`;
    case 'valuesEqual':
      return `Both marks of the ${axisNames[fault.axis]} have the same ${measures[fault.axis]}. Two printed values that differ make a scale.`;
    case 'axesParallel':
      return `The marks of both axes run the same way, ${degrees(fault.between_rad)} apart. On a sheet the axes stand square: the two marks of each axis have to lie on its own line.`;
  }
}

/** What to do for an axis of which so many marks stand. */
export function wordAxisStep(id: AxisId, standing: number, isRead: boolean): string {
  if (standing === 0)
    return `Press a place ${whereabouts[id]} where a value is printed, near one end, and type that value.`;
  if (standing === 1)
    return `Now a second printed value on the same line, as far from the first as the sheet goes.`;
  if (!isRead) return 'Type what is printed at both marks, with its unit or without.';
  return `The ${axisNames[id]} stands. Where a ring is beside its line, drag it or nudge it by arrow key; a press elsewhere moves the chosen mark.`;
}
