import type { TracingRead } from '../../model/tracing/readTracing.ts';
import type { AxisId, Tracing } from '../../model/tracing/tracing.ts';
import { wordAxisStep } from './tracingWords.ts';

export const stepIds = ['picture', 'flow', 'pressure', 'points', 'take'] as const;

export type StepId = (typeof stepIds)[number];

export interface StepSaid {
  readonly id: StepId;
  readonly title: string;
  readonly isDone: boolean;
  /** What to do now. */
  readonly sentence: string;
}

export interface TracedPicture {
  readonly name: string;
  readonly width: number;
  readonly height: number;
}

/** The way from a picture to a curve. @param isFan whether the points are a fan’s, and not those of a loss */
export function stepsOf(
  { axes, points }: Tracing,
  picture: TracedPicture | null,
  read: TracingRead,
  isFan: boolean,
): readonly StepSaid[] {
  const axisStep = (id: AxisId): StepSaid => {
    const standing = axes[id].marks.filter(({ at }) => at !== null).length;
    const isRead = read.marks[id].every(({ ok }) => ok);
    return {
      id,
      title: id === 'flow' ? 'Flow axis' : 'Pressure axis',
      isDone: standing === 2 && isRead,
      sentence: wordAxisStep(id, standing, isRead),
    };
  };
  const wrong = read.points.filter(({ problem }) => problem !== null).length;
  const areRight = read.points.length >= 2 && wrong === 0;
  const curve = isFan ? 'the fan’s curve' : 'the measured points of this loss';
  return [
    {
      id: 'picture',
      title: 'Picture',
      isDone: picture !== null,
      sentence:
        picture === null
          ? 'Choose the picture of a data sheet, drop it here, or paste it from the clipboard.'
          : `“${picture.name}”, ${picture.width} × ${picture.height} pixels. Go on with the flow axis, or take another picture.`,
    },
    axisStep('flow'),
    axisStep('pressure'),
    { id: 'points', title: 'Points', isDone: areRight, sentence: sayPointStep(read, points.length, isFan) },
    {
      id: 'take',
      title: 'Take it over',
      isDone: false,
      sentence: areRight
        ? `${points.length} points become ${curve}, in place of those that stand there. Say which sheet they come from.`
        : wrong > 0
          ? `${wrong === 1 ? 'One point is' : `${wrong} points are`} not right yet; what is wrong stands beside.`
          : `Both axes and at least two points are needed before they can become ${curve}.`,
    },
  ];
}

function sayPointStep({ map }: TracingRead, count: number, isFan: boolean): string {
  if (map === null) return 'Points may be put now; they get their values when both axes stand.';
  if (count === 0)
    return isFan
      ? 'Press along the curve, from shut-off on the left to free delivery on the right; closer together where it bends.'
      : 'Press along the curve, from little flow to much; closer together where it bends.';
  return 'A new point goes after the chosen one. Drag a point, nudge it by arrow key, take it away by Delete.';
}
