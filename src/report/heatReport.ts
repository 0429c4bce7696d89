import type { HeatOutcome, SinkOutcome, Solved } from '../core/system/outcome.ts';
import type { Design } from '../model/design.ts';
import { filmLimit_K } from './filmLimit.ts';
import { amount, unitOf } from './format.ts';
import {
  saidAs,
  saidPercent,
  saidQuantity,
  saidTemperature,
  saidWatts,
  withAmounts,
  worked,
} from './said.ts';
import type { HeatReport, Ladder, LadderRung, PositionRow, SinkRow, UnitSystem } from './types.ts';
import { rungLabels, rungPhrases } from './wording.ts';
import { capital, kelvins, percent, resistorName, roundTicks, sinkName, temperature } from './words.ts';
import {
  bodyFigure,
  bondFigure,
  filmSideFigure,
  jointFigure,
  powerFigure,
  rungFigure,
  secondSideFigure,
  sinkFigure,
} from './working/figureIds.ts';
import { filmFigure } from './working/headlineIds.ts';

export function heatReport(design: Design, outcome: Solved, system: UnitSystem): HeatReport {
  const { heat } = outcome;
  const positions = positionRows(heat, system);
  const shown = positions.flatMap(({ chart }) => [chart.film, chart.joint, chart.sink ?? chart.film]);
  const room = amount(heat.room_K, 'temperature', system);
  const ladder = ladderOf(design, heat, system);
  const hottest = heat.positions[heat.hottest];
  return {
    sentence: sentenceOf(heat, system),
    number: {
      text: kelvins(riseOf(heat), system),
      figure: filmFigure(heat.hottest),
      of: `rise of the film of ${resistorName(heat.hottest)}`,
    },
    ladder,
    positions,
    sinks: heat.sinks.flatMap((sink) => (sink ? [sinkRow(sink, system)] : [])),
    temperatureUnit: unitOf('temperature', system),
    ticks: roundTicks(room, Math.max(...shown)),
    spoken: `Temperatures of ${positions.length === 1 ? 'the one resistor' : `all ${positions.length} resistors`} along the row; the hottest film, of ${resistorName(heat.hottest)}, has ${temperature(hottest?.film_K ?? heat.room_K, system)}.`,
  };
}

function riseOf({ positions, hottest, room_K }: HeatOutcome): number {
  return (positions[hottest]?.film_K ?? room_K) - room_K;
}

function sentenceOf(heat: HeatOutcome, system: UnitSystem): string {
  const rise_K = riseOf(heat);
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
      ...withAmounts({
        rise: saidAs('', null, 'temperatureDifference', system),
        top: saidTemperature(heat.room_K, system),
      }),
      from: show(heat.room_K),
      to: show(heat.room_K),
    },
    ...heat.ladder.map(
      (rung): LadderRung => ({
        key: rung.key,
        label: rungLabels[rung.key],
        ...withAmounts({
          rise: worked(
            saidAs(kelvins(rung.dT_K, system, 1), rung.dT_K, 'temperatureDifference', system),
            rungFigure(rung.key),
          ),
          top: saidTemperature(rung.top_K, system, 1),
        }),
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
      ...withAmounts({
        watts: worked(saidWatts(p.power_W, system), powerFigure(p.index)),
        film: worked(saidTemperature(p.film_K, system), filmFigure(p.index)),
        bond: worked(saidTemperature(p.bond_K, system), bondFigure(p.index)),
        joint: worked(saidTemperature(p.joint_K, system), jointFigure(p.index)),
        body: worked(saidTemperature(p.body_K, system), bodyFigure(p.index)),
        filmSide: worked(saidWatts(p.filmSide_W, system), filmSideFigure(p.index)),
        secondSide: worked(saidWatts(p.secondSide_W, system), secondSideFigure(p.index)),
      }),
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
    ...withAmounts({
      plate: worked(
        saidTemperature(Math.max(sink.before_K ?? 0, sink.after_K ?? 0), system),
        sinkFigure('plate', sink.index),
      ),
      heat: worked(saidWatts(sink.heat_W, system), sinkFigure('heat', sink.index)),
      airOut: worked(saidTemperature(sink.airOut_K, system), sinkFigure('airOut', sink.index)),
      resistance: worked(
        saidQuantity(sink.R_KPerW, 'thermalResistance', system, 3),
        sinkFigure('resistance', sink.index),
      ),
      coefficient: worked(
        saidQuantity(sink.h_WPerM2K, 'heatTransferCoefficient', system, 3),
        sinkFigure('coefficient', sink.index),
      ),
      efficiency: worked(saidPercent(sink.finEfficiency), sinkFigure('efficiency', sink.index)),
      facing: worked(saidTemperature(sink.facing_K, system), sinkFigure('facing', sink.index)),
      outside: worked(saidTemperature(sink.outside_K, system), sinkFigure('outside', sink.index)),
    }),
  };
}
