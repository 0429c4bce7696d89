import type { HeatOutcome, SinkOutcome, Solved } from '../core/system/outcome.ts';
import type { Design } from '../model/design.ts';
import { filmLimit_K } from './filmLimit.ts';
import { amount, quantity, unitOf } from './format.ts';
import type { HeatReport, Ladder, LadderRung, PositionRow, SinkRow, UnitSystem } from './types.ts';
import { rungLabels, rungPhrases } from './wording.ts';
import {
  capital,
  kelvins,
  percent,
  resistorName,
  roundTicks,
  sinkName,
  temperature,
  watts,
} from './words.ts';

export function heatReport(design: Design, outcome: Solved, system: UnitSystem): HeatReport {
  const { heat } = outcome;
  const positions = positionRows(heat, system);
  const shown = positions.flatMap(({ chart }) => [chart.film, chart.joint, chart.sink ?? chart.film]);
  const room = amount(heat.room_K, 'temperature', system);
  const ladder = ladderOf(design, heat, system);
  const hottest = heat.positions[heat.hottest];
  return {
    sentence: sentenceOf(heat, system),
    ladder,
    positions,
    sinks: heat.sinks.flatMap((sink) => (sink ? [sinkRow(sink, system)] : [])),
    temperatureUnit: unitOf('temperature', system),
    ticks: roundTicks(room, Math.max(...shown)),
    spoken: `Temperatures of ${positions.length === 1 ? 'the one resistor' : `all ${positions.length} resistors`} along the row; the hottest film, of ${resistorName(heat.hottest)}, has ${temperature(hottest?.film_K ?? heat.room_K, system)}.`,
  };
}

function sentenceOf(heat: HeatOutcome, system: UnitSystem): string {
  const hottest = heat.positions[heat.hottest];
  const rise_K = (hottest?.film_K ?? heat.room_K) - heat.room_K;
  const most = [...heat.ladder].sort((a, b) => b.dT_K - a.dT_K)[0];
  const where =
    most && most.dT_K > 0
      ? `; the largest step, ${kelvins(most.dT_K, system)}, is ${rungPhrases[most.key]}`
      : '';
  const aside = heat.total_W > 0 ? heat.shell_W / heat.total_W : 0;
  const walls =
    aside > 5e-4
      ? ` ${percent(aside)} of the heat leaves through walls and openings, the rest with the air.`
      : '';
  return `From the room to the film of ${resistorName(heat.hottest)}, the hottest, it is ${kelvins(rise_K, system)}${where}.${walls}`;
}

function ladderOf(design: Design, heat: HeatOutcome, system: UnitSystem): Ladder {
  const show = (T_K: number) => amount(T_K, 'temperature', system);
  const limit_K = filmLimit_K(design, heat);
  const rungs: LadderRung[] = [
    {
      key: 'room',
      label: 'room',
      rise: '',
      top: temperature(heat.room_K, system),
      from: show(heat.room_K),
      to: show(heat.room_K),
    },
    ...heat.ladder.map(
      (rung): LadderRung => ({
        key: rung.key,
        label: rungLabels[rung.key],
        rise: kelvins(rung.dT_K, system, 1),
        top: temperature(rung.top_K, system, 1),
        from: show(rung.top_K - rung.dT_K),
        to: show(rung.top_K),
      }),
    ),
  ];
  const high = Math.max(limit_K, ...heat.ladder.map((rung) => rung.top_K));
  return {
    unit: unitOf('temperature', system),
    rungs,
    limit: show(limit_K),
    limitText: `film limit ${temperature(limit_K, system)}`,
    ticks: roundTicks(show(heat.room_K), show(high)),
    spoken: `${capital('from')} ${temperature(heat.room_K, system)} in the room: ${heat.ladder.map((rung) => `${rungLabels[rung.key]} ${kelvins(rung.dT_K, system, 1)}`).join(', ')}.`,
  };
}

function positionRows(heat: HeatOutcome, system: UnitSystem): PositionRow[] {
  const show = (T_K: number) => amount(T_K, 'temperature', system);
  return heat.positions.map((p) => {
    const plates = [heat.sinks[p.index]?.after_K, heat.sinks[p.index + 1]?.before_K].filter(
      (T) => typeof T === 'number',
    );
    return {
      index: p.index,
      label: capital(resistorName(p.index)),
      on: p.on,
      watts: watts(p.power_W, system),
      film: temperature(p.film_K, system),
      bond: temperature(p.bond_K, system),
      joint: temperature(p.joint_K, system),
      body: temperature(p.body_K, system),
      filmSide: watts(p.filmSide_W, system),
      secondSide: watts(p.secondSide_W, system),
      hottest: p.index === heat.hottest,
      chart: {
        film: show(p.film_K),
        joint: show(p.joint_K),
        sink: plates.length > 0 ? show(Math.max(...plates)) : null,
      },
    };
  });
}

function sinkRow(sink: SinkOutcome, system: UnitSystem): SinkRow {
  return {
    index: sink.index,
    label: capital(sinkName(sink.index)),
    plate: temperature(Math.max(sink.before_K ?? 0, sink.after_K ?? 0), system),
    heat: watts(sink.heat_W, system),
    airOut: temperature(sink.airOut_K, system),
    resistance: quantity(sink.R_KPerW, 'thermalResistance', system, 3),
    coefficient: quantity(sink.h_WPerM2K, 'heatTransferCoefficient', system, 3),
    efficiency: percent(sink.finEfficiency),
    facing: temperature(sink.facing_K, system),
    outside: temperature(sink.outside_K, system),
  };
}
