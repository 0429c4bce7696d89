import type { SystemInput } from '../core/system/input.ts';
import type { Design } from '../model/design.ts';
import {
  type DeratingCurve,
  deratingOverAltitude,
  deratingOverAmbient,
  filmOverSupply,
  type Swings,
  swingsOf,
} from '../studies/derating.ts';
import { amount, type Dimension, plain, quantity, unitOf } from './format.ts';
import type { LineChart, Mark } from './lineChart.ts';
import type { DeratingReport, UnitSystem } from './types.ts';
import { kelvins, roundTicks, temperature, watts } from './words.ts';

const zeroCelsius_K = 273.15;
const ambients_K = [0, 10, 20, 30, 40, 50, 60].map((celsius) => zeroCelsius_K + celsius);
const altitudes_m = [0, 1000, 2000, 3000, 4000];
const supplySteps = 8;

export function deratingReport(
  design: Design,
  input: SystemInput,
  system: UnitSystem,
  swings: Swings = swingsOf(input),
  rated_W: number | null = null,
): DeratingReport {
  const ambient = deratingOverAmbient(input, ambients_K, swings);
  const altitude = deratingOverAltitude(input, altitudes_m, swings);
  return {
    sentence: sentenceOf(ambient, altitude, system),
    overAmbient: wattsChart(
      'overAmbient',
      'Rated load over the room',
      'room',
      'temperature',
      ambient,
      system,
      rated_W === null ? null : { at: design.room.T_K, rated_W },
    ),
    overAltitude: wattsChart(
      'overAltitude',
      'Rated load over altitude',
      'altitude',
      'altitude',
      altitude,
      system,
    ),
    overSupply: supplyChart(design, input, system),
  };
}

function sentenceOf(ambient: DeratingCurve, altitude: DeratingCurve, system: UnitSystem): string {
  const lost_W = perTenKelvin(ambient);
  const sea = altitude.running_W[0];
  const high = altitude.running_W[altitude.at.indexOf(2000)];
  const room =
    lost_W === null
      ? ''
      : `Every ${kelvins(10, system)} more in the room cost about ${watts(lost_W, system)} of the rated load`;
  const thin =
    typeof sea === 'number' && typeof high === 'number' && sea > 0
      ? `${room === '' ? 'T' : '; t'}hin air at ${quantity(2000, 'altitude', system)} leaves ${plain((100 * high) / sea, 3)}${'\u202f'}% of ${room === '' ? 'the rated load' : 'it'}`
      : '';
  return room + thin === '' ? '' : `${room}${thin}.`;
}

/** Mean fall of the rated load over the range drawn, W; null where it does not fall. */
function perTenKelvin({ at, running_W }: DeratingCurve): number | null {
  const first = running_W.findIndex((power) => typeof power === 'number');
  const last = running_W.length - 1;
  const [high, low] = [running_W[first], running_W[last]];
  if (typeof high !== 'number' || typeof low !== 'number' || !(high > low)) return null;
  return (10 * (high - low)) / ((at[last] as number) - (at[first] as number));
}

function wattsChart(
  id: string,
  caption: string,
  xLabel: string,
  dimension: Dimension,
  { at, running_W, stopped_W }: DeratingCurve,
  system: UnitSystem,
  here: Here | null = null,
): LineChart {
  const x = at.map((value) => amount(value, dimension, system));
  const shown = (power: number | null) => (power === null ? null : amount(power, 'power', system));
  const lineOf = (powers: readonly (number | null)[]) =>
    powers.map((power, i) => ({ x: x[i] as number, y: shown(power) }));
  const most = Math.max(0, ...running_W.map((power) => shown(power) ?? 0));
  const first = running_W.find((power) => power !== null) ?? 0;
  const last = running_W.findLast((power) => power !== null) ?? 0;
  return {
    id,
    caption,
    xLabel,
    xUnit: unitOf(dimension, system),
    yUnit: unitOf('power', system),
    lines: [
      { key: 'running', label: 'with fan', style: 'solid', points: lineOf(running_W) },
      { key: 'stopped', label: 'without', style: 'dashed', points: lineOf(stopped_W) },
    ],
    levels: [],
    marks: marksOf(here, at, dimension, system),
    xTicks: roundTicks(x[0] as number, x[x.length - 1] as number),
    yTicks: roundTicks(0, Math.max(most, 1e-3)),
    spoken:
      most <= 0
        ? `${caption}: no load holds anywhere in the range drawn.`
        : `${caption}: with the fan from ${watts(first, system)} to ${watts(last, system)} over the range drawn.`,
  };
}

/** The design's own place on the axis, and what it may carry there. */
interface Here {
  readonly at: number;
  readonly rated_W: number;
}

/** One, where that place is among those drawn. */
function marksOf(here: Here | null, at: readonly number[], dimension: Dimension, system: UnitSystem): Mark[] {
  if (here === null || here.at < (at[0] ?? 0) || here.at > (at.at(-1) ?? 0)) return [];
  return [
    {
      label: watts(here.rated_W, system),
      x: amount(here.at, dimension, system),
      y: amount(here.rated_W, 'power', system),
    },
  ];
}

function supplyChart(design: Design, input: SystemInput, system: UnitSystem): LineChart {
  const { rated_V, start_V, supply_V } = design.fan;
  const low_V = Math.min(start_V, 0.5 * rated_V);
  const high_V = Math.max(1.1 * rated_V, supply_V);
  const volts = [
    ...new Set([
      ...Array.from({ length: supplySteps + 1 }, (_, i) => low_V + ((high_V - low_V) * i) / supplySteps),
      Math.max(start_V, low_V),
    ]),
  ].sort((a, b) => a - b);
  const { film_K } = filmOverSupply(input, volts);
  const show = (T_K: number) => amount(T_K, 'temperature', system);
  const known = film_K.filter((T_K) => T_K !== null);
  const used = design.positions.map(
    ({ part }) => design.parts[part]?.zeroPowerAt_K ?? Number.POSITIVE_INFINITY,
  );
  const limit_K = Math.min(...used);
  const x = volts.map((value) => amount(value, 'voltage', system));
  return {
    id: 'overSupply',
    caption: 'Hottest film over the fan’s supply',
    xLabel: 'fan supply',
    xUnit: unitOf('voltage', system),
    yUnit: unitOf('temperature', system),
    lines: [
      {
        key: 'film',
        label: 'film',
        style: 'solid',
        points: film_K.map((T_K, i) => ({ x: x[i] as number, y: T_K === null ? null : show(T_K) })),
      },
    ],
    levels: [{ label: 'film limit', y: show(limit_K), style: 'solid' }],
    marks: [],
    xTicks: roundTicks(x[0] as number, x[x.length - 1] as number),
    yTicks: roundTicks(show(design.room.T_K), show(Math.max(limit_K, ...known))),
    spoken:
      known.length > 0
        ? `Hottest film from ${temperature(Math.max(...known), system)} at the lowest supply that turns the fan to ${temperature(Math.min(...known), system)} at the highest.`
        : 'The fan does not start at any supply drawn.',
  };
}
