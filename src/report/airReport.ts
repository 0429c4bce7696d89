import { hysteresis } from '../core/fan/hysteresis.ts';
import type { AirOutcome, FanOutcome, PassageKind, Solved } from '../core/system/outcome.ts';
import type { Curves } from '../core/system/solveSystem.ts';
import { amount, plain, quantity, unitOf } from './format.ts';
import { saidAs, saidPercent, saidQuantity, withAmounts, worked } from './said.ts';
import { passageKinds, shareRows } from './shareRows.ts';
import type { AirReport, FanChart, FanRow, PassageRow, StageRow, UnitSystem } from './types.ts';
import { passageLabels, stageLabels, stageParts, verdictWords } from './wording.ts';
import { capital, listed, percent, resistorName, roundTicks, sinkName, temperature } from './words.ts';
import {
  bladePassFigure,
  boxFigures,
  fanFlowFigure,
  fanPressureOfFigure,
  passageFigure,
  speedFigure,
  stageFigure,
} from './working/figureIds.ts';

export interface AirFacts {
  readonly air: AirOutcome;
  readonly listening_m: number;
  readonly curves: Curves | null;
  /** The answer at the meeting point with least flow, where there are several. */
  readonly lower: Solved | null;
  readonly system: UnitSystem;
}

export function airReport({ air, listening_m, curves, lower, system }: AirFacts): AirReport {
  const shares = shareRows(air, system);
  return {
    sentence: sentenceOf(air, lower, system),
    number: {
      text: quantity(air.flow_m3PerS, 'volumeFlow', system, 3),
      figure: boxFigures.flow,
      of: 'air moved',
    },
    sound: soundOf(air, listening_m, system),
    fans: fanRows(air, system),
    shares,
    chart: curves ? fanChart(air, curves, system) : null,
    stages: stageRows(air, system),
    passages: air.passages.map(
      (passage, i): PassageRow => ({
        kind: passage.kind,
        label: passageName(passage.kind, passage.index),
        ...withAmounts({
          percent: worked(saidPercent(passage.share), passageFigure(i)),
          flow: worked(
            saidQuantity(passage.massFlow_kgPerS / air.rho_kgPerM3, 'volumeFlow', system, 3),
            passageFigure(i),
          ),
          velocity: worked(saidQuantity(passage.velocity_mPerS, 'speed', system, 2), passageFigure(i)),
          reynolds: worked(
            { text: plain(passage.reynolds, 3), value: passage.reynolds, unit: '' },
            passageFigure(i),
          ),
          area: saidQuantity(passage.area_m2, 'area', system, 3),
        }),
      }),
    ),
  };
}

function passageName(kind: PassageKind, index: number): string {
  if (kind === 'fins') return sinkName(index);
  return kind === 'between' ? `past ${resistorName(index)} and its like` : passageLabels[kind];
}

function sentenceOf(air: AirOutcome, lower: Solved | null, system: UnitSystem): string {
  const flow = quantity(air.flow_m3PerS, 'volumeFlow', system, 3);
  const dp = quantity(air.fanPressure_Pa, 'pressure', system, 3);
  const lost = passageKinds
    .filter((kind) => kind !== 'fins' && air.share[kind] > 5e-4)
    .sort((a, b) => air.share[b] - air.share[a])
    .map((kind) => `${percent(air.share[kind])} ${lostWords[kind]}`);
  const rest = lost.length > 0 ? `, ${listed(lost)}` : '';
  const back = passageKinds.some((kind) => air.share[kind] < -5e-4)
    ? ' Air runs backwards through part of the box.'
    : '';
  return `The fan moves ${flow} at ${dp}: ${percent(air.share.fins)} ${lostWords.fins}${rest}.${back}${severalWords(air, lower, system)}`;
}

const lostWords: Readonly<Record<PassageKind, string>> = {
  fins: 'goes through the fins',
  side: 'slips past the sides',
  end: 'slips past the ends',
  between: 'passes between the sinks',
  leak: 'leaks under the baffle',
};

/** A curve with a dip: where a fan settles depends on where it comes from. */
function severalWords(air: AirOutcome, lower: Solved | null, system: UnitSystem): string {
  const ends = hysteresis(air.intersections);
  if (!ends || ends.fromRest === ends.fromFreeDelivery) return '';
  const count = air.intersections.filter(({ stable }) => stable).length;
  const flow = (point: typeof ends.fromRest) => quantity(point.flow_m3PerS, 'volumeFlow', system, 3);
  return ` The fan can settle at ${count} points: at ${flow(ends.fromRest)} when it starts from rest against the box, at ${flow(ends.fromFreeDelivery)} when it comes from more flow, and it keeps the one it has. The larger is used here${lowerWords(lower, system)}.`;
}

function lowerWords(lower: Solved | null, system: UnitSystem): string {
  if (!lower) return '';
  const { heat, verdict } = lower;
  const film_K = heat.positions[heat.hottest]?.film_K ?? heat.room_K;
  return `; at the smaller the hottest film has ${temperature(film_K, system)} and the box ${verdictWords[verdict.state]}`;
}

function soundOf(air: AirOutcome, listening_m: number, system: UnitSystem): string {
  if (air.sound_dBA === null) return '';
  const tones = [...new Set(air.fans.filter((fan) => fan.speedRatio > 0).map((fan) => tone(fan, system)))];
  return `Sound: ${quantity(air.sound_dBA, 'soundLevel', system, 2)} at ${quantity(listening_m, 'distance', system)}, with a tone at ${listed(tones)}.`;
}

function tone({ bladePass_Hz }: FanOutcome, system: UnitSystem): string {
  return quantity(bladePass_Hz, 'frequency', system, 3);
}

function fanRows(air: AirOutcome, system: UnitSystem): FanRow[] {
  return air.fans.map((fan) => ({
    label: fan.index === 0 ? 'Fan' : `Fan of kind ${fan.index + 1}`,
    ...withAmounts({
      count: { text: `${fan.count}`, value: fan.count, unit: '' },
      speed: worked(saidPercent(fan.speedRatio), speedFigure(fan.index)),
      flow: worked(saidQuantity(fan.flow_m3PerS, 'volumeFlow', system, 3), fanFlowFigure(fan.index)),
      pressure: worked(saidQuantity(fan.dp_Pa, 'pressure', system, 3), fanPressureOfFigure(fan.index)),
      tone:
        fan.speedRatio > 0
          ? worked(
              saidAs(tone(fan, system), fan.bladePass_Hz, 'frequency', system),
              bladePassFigure(fan.index),
            )
          : saidAs('–', null, 'frequency', system),
    }),
    remark: fan.speedRatio > 0 ? (fan.backwards ? 'air runs back' : '') : 'stands still',
  }));
}

function stageRows(air: AirOutcome, system: UnitSystem): StageRow[] {
  const order = Object.keys(stageLabels);
  return [...air.stages]
    .sort((a, b) => order.indexOf(a.key) - order.indexOf(b.key))
    .map((stage, i, all) => {
      const nth = all.slice(0, i).filter(({ key }) => key === stage.key).length;
      const id = stageFigure(stage.key, nth);
      const share = air.fanPressure_Pa > 0 ? stage.dp_Pa / air.fanPressure_Pa : 0;
      return {
        key: stage.key,
        label: stageLabels[stage.key],
        share,
        ...withAmounts({
          dp: worked(saidQuantity(stage.dp_Pa, 'pressure', system, 3), id),
          percent: worked(saidPercent(share), id),
          velocity: worked(saidQuantity(stage.velocity_mPerS, 'speed', system, 2), id),
        }),
        part: stageParts[stage.key],
      };
    });
}

function fanChart(air: AirOutcome, curves: Curves, system: UnitSystem): FanChart {
  const flowOf = (flow_m3PerS: number) => amount(flow_m3PerS, 'volumeFlow', system);
  const pressureOf = (dp_Pa: number) => amount(dp_Pa, 'pressure', system);
  const top_Pa = 1.08 * Math.max(...curves.fan_Pa);
  const fan = curves.flow_m3PerS.map((flow, i) => ({
    flow: flowOf(flow),
    dp: pressureOf(curves.fan_Pa[i] ?? 0),
  }));
  const box = curves.flow_m3PerS.map((flow, i) => ({
    flow: flowOf(flow),
    dp: pressureOf(curves.system_Pa[i] ?? 0),
  }));
  const marks = air.intersections.map((point) => ({
    flow: flowOf(point.flow_m3PerS),
    dp: pressureOf(point.dp_Pa),
    stable: point.stable,
    used: point.used,
    label: `${quantity(point.flow_m3PerS, 'volumeFlow', system, 3)}, ${quantity(point.dp_Pa, 'pressure', system, 3)}`,
  }));
  const used = marks.find((mark) => mark.used);
  return {
    flowUnit: unitOf('volumeFlow', system),
    pressureUnit: unitOf('pressure', system),
    fan,
    system: cutAbove(box, pressureOf(top_Pa)),
    marks,
    stallBelow: air.stallBelow_m3PerS === null ? null : flowOf(air.stallBelow_m3PerS),
    flowTicks: roundTicks(0, flowOf(air.freeFlow_m3PerS)),
    pressureTicks: roundTicks(0, pressureOf(Math.max(...curves.fan_Pa))),
    spoken: `${capital('fan')} curve from ${quantity(air.shutOff_Pa, 'pressure', system, 3)} at no flow to ${quantity(air.freeFlow_m3PerS, 'volumeFlow', system, 3)} at no pressure; the box’s own curve rises and meets it at ${used ? used.label : 'no point'}.`,
  };
}

/** The system curve up to the top of the chart, its last point laid on the edge. */
function cutAbove(points: FanChart['system'], top: number): FanChart['system'] {
  const end = points.findIndex((point) => point.dp > top);
  if (end <= 0) return points;
  const [before, after] = [points[end - 1], points[end]];
  if (!before || !after) return points;
  const share = (top - before.dp) / (after.dp - before.dp);
  return [...points.slice(0, end), { flow: before.flow + share * (after.flow - before.flow), dp: top }];
}
