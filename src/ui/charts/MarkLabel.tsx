import { palette } from './palette.ts';

interface Props {
  readonly lines: readonly string[];
  readonly used: boolean;
  /** Left of the dot, where the right has no room. */
  readonly leftwards?: boolean;
  /** Further off, where names of levels stand at the left of the chart. */
  readonly far?: boolean;
  /** Bounds of the marked dot, handed in by the chart. */
  readonly viewBox?: {
    readonly x?: number;
    readonly y?: number;
    readonly width?: number;
    readonly height?: number;
  };
}

/** Flow over pressure beside a meeting point, with a halo of paper so that no line runs through it. */
export function MarkLabel({
  lines,
  used,
  leftwards = false,
  far = false,
  viewBox: { x = 0, y = 0 } = {},
}: Props) {
  return (
    <text
      x={x}
      y={y}
      fill={palette.ink}
      textAnchor={leftwards ? 'end' : 'start'}
      stroke={palette.paper}
      strokeWidth={4}
      paintOrder="stroke"
      fontSize={13}
      fontWeight={used ? 650 : 400}
    >
      {lines.map((line, i) => (
        <tspan key={line} x={x} dx={leftwards ? -2 : far ? 34 : 18} dy={i === 0 ? (leftwards ? -8 : 2) : 16}>
          {line}
        </tspan>
      ))}
    </text>
  );
}
