import type { CheckKind } from '../../core/card.ts';
import { deviationSays, publishedValue } from './checkWords.ts';
import { kindOrder, kindWords } from './kinds.ts';
import type { Check } from './totals.ts';

/** A check as a point; the published size is a power of ten. */
export interface EvidencePoint {
  readonly x: number;
  readonly y: number;
  readonly name: string;
  readonly says: string;
}

export interface EvidenceSeries {
  readonly kind: CheckKind;
  readonly label: string;
  readonly points: readonly EvidencePoint[];
}

/** Checks by their published size; each kind has a mark of its own. */
export interface EvidenceChart {
  readonly id: string;
  readonly caption: string;
  readonly spoken: string;
  readonly series: readonly EvidenceSeries[];
  /** Powers of ten. */
  readonly xTicks: readonly number[];
  readonly yTicks: readonly number[];
  /** The vertical axis: powers of ten as well, or per cent. */
  readonly upright: 'powers' | 'percent';
  readonly yLabel: string;
}

/** At most so many labels on an axis. */
const mostTicks = 8;

function powersAround(powers: readonly number[]): number[] {
  const low = Math.floor(Math.min(...powers, 0));
  const high = Math.max(Math.ceil(Math.max(...powers, 0)), low + 1);
  const step = Math.max(1, Math.ceil((high - low) / mostTicks));
  return Array.from({ length: Math.ceil((high - low) / step) + 1 }, (_, i) => low + i * step);
}

const published = (check: Check) => Math.log10(Math.abs(publishedValue(check)));

function seriesOf(checks: readonly Check[], upright: (check: Check) => number): EvidenceSeries[] {
  return kindOrder.flatMap((kind) => {
    const points = checks
      .filter((check) => check.kind === kind)
      .map((check) => ({
        x: published(check),
        y: upright(check),
        name: `${check.quantity}: ${check.test}`,
        says: `${check.computed} for ${check.printed}${check.unit ? `\u202f${check.unit}` : ''}, ${deviationSays(check)}`,
      }));
    return points.length > 0 ? [{ kind, label: kindWords[kind].title, points }] : [];
  });
}

const lacking = (count: number, why: string) => (count > 0 ? `; ${count} ${why}` : '');

/** Computed size over published size: what agrees lies on the line from corner to corner. */
export function matchChart(checks: readonly Check[]): EvidenceChart {
  const shown = checks.filter((check) => publishedValue(check) !== 0 && check.computed !== 0);
  const computed = ({ computed: value }: Check) => Math.log10(Math.abs(value));
  const ticks = powersAround(shown.flatMap((check) => [published(check), computed(check)]));
  return {
    id: 'evidenceMatch',
    caption: `Computed over published${lacking(checks.length - shown.length, 'of nil have no place on powers of ten')}`,
    spoken: `Computed over published size of ${shown.length} checks, both in powers of ten. What agrees lies on the line from corner to corner.`,
    series: seriesOf(shown, computed),
    xTicks: ticks,
    yTicks: ticks,
    upright: 'powers',
    yLabel: 'computed',
  };
}

/** Per cent to which the axis of deviations reaches at most. */
const most = 20;

/** Deviation over published size. */
export function deviationChart(checks: readonly Check[]): EvidenceChart {
  const relative = checks.filter((check) => publishedValue(check) !== 0);
  const percent = ({ deviation }: Check) => 100 * deviation;
  const shown = relative.filter((check) => Math.abs(percent(check)) <= most);
  const farthest = Math.max(...shown.map((check) => Math.abs(percent(check))), 0);
  const reach = [1, 2, 5, 10].find((each) => farthest <= each) ?? most;
  return {
    id: 'evidenceDeviation',
    caption: `How far off each is${lacking(relative.length - shown.length, `are farther off than ${most}\u202f%`)}`,
    spoken: `Deviation in per cent of ${shown.length} checks over their published size. What agrees lies on the line of nil.`,
    series: seriesOf(shown, percent),
    xTicks: powersAround(shown.map(published)),
    yTicks: [-reach, -reach / 2, 0, reach / 2, reach],
    upright: 'percent',
    yLabel: '%',
  };
}
