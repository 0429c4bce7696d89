import type { LimitKey, StageKey } from '../../core/system/outcome.ts';
import type { FigureId } from './types.ts';

/**
 * Where a figure on the screen or on the sheet finds its working. Indices count from 0, as in the outcome; ids count from 1,
 * as readers do. What the first paint shows has its ids in `headlineIds.ts`.
 *
 * | shown | id |
 * |---|---|
 * | key figures: load, hottest film, air moved, fan pressure, through fins, sound, exhaust air | `keyFigure(key, hottest)` |
 * | table of watts: nominal, worst, computed with, volts | `nominal:n`, `worst:n`, `power:n`, `voltage:n` |
 * | table of resistors: film, bond, joint, back of the chip, watts by either face | `film:n`, `bond:n`, `joint:n`, `body:n`, `filmSide:n`, `secondSide:n` |
 * | ladder of kelvins | `rung:key`, one each |
 * | table of sinks | `plate:n`, `heat:n`, `airOut:n`, `resistance:n`, `coefficient:n`, `efficiency:n`, `facing:n`, `outside:n` |
 * | shares, passages, stages, fans | `share:kind`, `passage:n`, `stage:key`, `fanFlow:n`, `fanDp:n`, `bladePass:n`, `speed:n` |
 * | limits: value, margin, load up to | `limit:key`, `margin:key`, `loadFactor:key` |
 * | drift | `drift:n`, `drift:whole` |
 * | ratings | `rated:running`, `rated:stopped` |
 * | without fan | the same ids behind `stopped:`; `act` and `reached:key` for the times |
 */
export const bondFigure = (index: number): FigureId => `bond:${index + 1}`;
export const jointFigure = (index: number): FigureId => `joint:${index + 1}`;
export const bodyFigure = (index: number): FigureId => `body:${index + 1}`;
export const filmSideFigure = (index: number): FigureId => `filmSide:${index + 1}`;
export const secondSideFigure = (index: number): FigureId => `secondSide:${index + 1}`;
export const nominalFigure = (index: number): FigureId => `nominal:${index + 1}`;
export const worstFigure = (index: number): FigureId => `worst:${index + 1}`;
export const powerFigure = (index: number): FigureId => `power:${index + 1}`;
export const voltageFigure = (index: number): FigureId => `voltage:${index + 1}`;
export const driftFigure = (index: number | 'whole'): FigureId =>
  index === 'whole' ? 'drift:whole' : `drift:${index + 1}`;

/** Columns of the table of sinks, by the names that its rows have. */
export type SinkColumn =
  | 'plate'
  | 'heat'
  | 'airOut'
  | 'resistance'
  | 'coefficient'
  | 'efficiency'
  | 'facing'
  | 'outside';
export const sinkFigure = (column: SinkColumn, index: number): FigureId => `${column}:${index + 1}`;

export const rungFigure = (key: string): FigureId => `rung:${key}`;
/** @param index in the order of the outcome's passages */
export const passageFigure = (index: number): FigureId => `passage:${index + 1}`;
/** @param index among stages of one key, where a box has several: 0 is the first */
export const stageFigure = (key: StageKey, index = 0): FigureId =>
  index === 0 ? `stage:${key}` : `stage:${key}:${index + 1}`;
export const fanFlowFigure = (index: number): FigureId => `fanFlow:${index + 1}`;
export const fanPressureOfFigure = (index: number): FigureId => `fanDp:${index + 1}`;
export const speedFigure = (index: number): FigureId => `speed:${index + 1}`;
export const bladePassFigure = (index: number): FigureId => `bladePass:${index + 1}`;
export const ratedFigure = (key: 'running' | 'stopped'): FigureId => `rated:${key}`;
export const reachedFigure = (key: LimitKey): FigureId => `reached:${key}`;
/** The same figure of the box with its fans at a stand. */
export const stoppedFigure = (id: FigureId): FigureId => `stopped:${id}`;

/** Figures of the whole box. */
export const boxFigures = {
  total: 'total',
  fanWatts: 'fanWatts',
  flow: 'flow',
  massFlow: 'massFlow',
  fanPressure: 'fanPressure',
  freeFlow: 'freeFlow',
  shutOff: 'shutOff',
  density: 'density',
  airPressure: 'airPressure',
  draught: 'draught',
  entering: 'entering',
  exhaust: 'exhaust',
  carried: 'carried',
  shell: 'shell',
  sound: 'sound',
  obstructed: 'obstructed',
  pulsePeak: 'pulse',
  act: 'act',
} as const satisfies Record<string, FigureId>;
