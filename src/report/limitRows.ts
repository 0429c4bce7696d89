import type { Limit } from '../core/system/outcome.ts';
import type { Design } from '../model/design.ts';
import type { Said } from './amount.ts';
import { amount, type Dimension, quantity, unitOf } from './format.ts';
import { saidAs, saidTimes, withAmounts, worked } from './said.ts';
import type { KeyNumber, LimitRow, UnitSystem } from './types.ts';
import { limitLabels, limitParts, stateWords } from './wording.ts';
import { fixed, resistorName, sinkName, temperature } from './words.ts';
import { limitFigure, loadFactorFigure, marginFigure } from './working/headlineIds.ts';

const noNumber = '–';

export function limitRows(limits: readonly Limit[], system: UnitSystem): LimitRow[] {
  return limits.map((limit) => ({
    key: limit.key,
    label: limitLabels[limit.key],
    where: whereOf(limit),
    ...withAmounts({
      value: worked(valueSaid(limit, limit.value, system), limitFigure(limit.key)),
      limit: valueSaid(limit, limit.limit, system),
      margin: worked(marginSaid(limit, system), limit.margin_K === null ? null : marginFigure(limit.key)),
      loadFactor:
        limit.loadFactor === null
          ? { text: noNumber, value: null, unit: '×' }
          : worked(saidTimes(limit.loadFactor), loadFactorFigure(limit.key)),
    }),
    state: limit.state,
    stateWord: stateWords[limit.state],
    confirm: limit.confirm,
    part: limitParts[limit.key],
    used: limit.loadFactor === null ? null : 1 / Math.max(limit.loadFactor, 1e-3),
  }));
}

export function whereOf({ key, where }: Limit): string {
  if (where === null) return key === 'stall' || key === 'sound' ? 'fan' : 'whole box';
  return key === 'touch' || key === 'sheet' || key === 'wall' ? sinkName(where) : resistorName(where);
}

/** Tenths where whole degrees would print value and limit alike although they differ. */
function decimalsOf(limit: Limit): number {
  return limit.margin_K !== null && Math.abs(limit.margin_K) < 2 ? 1 : 0;
}

const dimensionOf: Readonly<Record<Limit['quantity'], Dimension>> = {
  temperature: 'temperature',
  power: 'power',
  voltage: 'voltage',
  flow: 'volumeFlow',
  sound: 'soundLevel',
};

function valueText(limit: Limit, value: number, system: UnitSystem): string {
  return limit.quantity === 'temperature'
    ? temperature(value, system, decimalsOf(limit))
    : quantity(value, dimensionOf[limit.quantity], system, limit.quantity === 'sound' ? 2 : 3);
}

function valueSaid(limit: Limit, value: number, system: UnitSystem): Said {
  return saidAs(valueText(limit, value, system), value, dimensionOf[limit.quantity], system);
}

/** As a number, what is over is negative. */
function marginSaid(limit: Limit, system: UnitSystem): Said {
  const { margin_K } = limit;
  const side = (margin_K ?? 0) < 0 ? 'over' : 'to spare';
  const text = margin_K === null ? noNumber : `${gapSize(limit, system)} ${side}`;
  return saidAs(text, margin_K, 'temperatureDifference', system);
}

/** The value in that sentence. */
export function limitNumber(limit: Limit, system: UnitSystem): KeyNumber {
  return {
    text: valueText(limit, limit.value, system),
    figure: limitFigure(limit.key),
    of: `${limitLabels[limit.key]}, ${whereOf(limit)}`,
  };
}

/** One sentence about one limit, with the number that matters, without a full stop and without its verdict. */
export function limitClause(limit: Limit, design: Design, system: UnitSystem): string {
  const where = whereOf(limit);
  const value = valueText(limit, limit.value, system);
  const bound = valueText(limit, limit.limit, system);
  const beside = (limitName: string) => `${gap(limit, system)} its ${bound} ${limitName}`;
  switch (limit.key) {
    case 'film':
      return `the film of ${where} reaches ${value}, ${beside('limit')}`;
    case 'pulse':
      return `the film of ${where} reaches ${value} at the end of a pulse, ${beside('limit')}`;
    case 'derating':
      return `${deratedThing(limit, design)} ${where} reach ${value}, ${gap(limit, system)} the ${bound} at which its watts are still allowed`;
    case 'joint':
      return `the solder joints of ${where} reach ${value}, ${gap(limit, system)} their ${bound} limit`;
    case 'bond':
      return `the bond line of ${where} reaches ${value}, ${beside('service limit')}`;
    case 'touch':
      return `${where}, which a finger can reach, stands at ${value}, ${gap(limit, system)} the ${bound} touch limit`;
    case 'sheet':
      return `${where} stands at ${value}, ${gap(limit, system)} the ${bound} that the plastic beside it may have`;
    case 'wall':
      return `the outside of the box at ${where} reaches ${value}, ${beside('touch limit')}`;
    case 'sound':
      return `the sound at the listener is ${value} and may be ${bound}`;
    case 'exhaust':
      return `the air leaves at ${value}, ${beside('limit')}`;
    case 'voltage':
      return `${where} sees ${value} and may see ${bound}`;
    case 'stall':
      return `the fan delivers ${value}, and its curve has a dip below ${bound}`;
    case 'ratedPower':
      return `${where} carries ${value} and is rated ${bound}`;
  }
}

/** Difference of the two temperatures as they are printed, so that a reader who subtracts agrees. */
function gapSize(limit: Limit, system: UnitSystem): string {
  const decimals = decimalsOf(limit);
  const shown = (T_K: number) => Number(amount(T_K, 'temperature', system).toFixed(decimals));
  const unit = unitOf('temperatureDifference', system);
  return `${fixed(Math.abs(shown(limit.limit) - shown(limit.value)), decimals)}\u202f${unit}`;
}

function gap(limit: Limit, system: UnitSystem): string {
  return `${gapSize(limit, system)} ${(limit.margin_K ?? 0) < 0 ? 'above' : 'below'}`;
}

function deratedThing(limit: Limit, design: Design): string {
  const position = design.positions[limit.where ?? 0];
  const part = position ? design.parts[position.part] : undefined;
  return part?.deratedBy === 'air' ? 'the surroundings of' : 'the terminals of';
}
