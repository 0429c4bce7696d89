import type { LimitKey, Outcome, PassageKind, RungKey, StageKey } from '../../core/system/outcome.ts';
import type { Figure } from '../../core/system/working/book.ts';
import { duration } from '../durations.ts';
import { type Dimension, quantity, type UnitSystem } from '../format.ts';
import { limitRows } from '../limitRows.ts';
import type { LimitRow } from '../types.ts';
import { limitLabels, passageLabels, rungLabels, stageLabels } from '../wording.ts';
import {
  capital,
  fixed,
  kelvins,
  percent,
  resistorName,
  sinkName,
  small,
  temperature,
  watts,
} from '../words.ts';
import { figureId } from './figureId.ts';
import type { WorkedFigure } from './types.ts';

/** How a kind of figure is called and said. */
interface Wording {
  readonly title: (of: string, figure: Figure) => string;
  readonly says: (value: number, system: UnitSystem) => string;
}

const inWholeDegrees: Wording['says'] = (value, system) => temperature(value, system);
const asQuantity =
  (dimension: Dimension, digits = 3): Wording['says'] =>
  (value, system) =>
    quantity(value, dimension, system, digits);
const asPercent: Wording['says'] = (value) => percent(value);
const asWatts: Wording['says'] = (value, system) => watts(value, system);

const ofResistor = (what: string, says: Wording['says']): Wording => ({
  title: (_, { of }) => `${what} of ${resistorName(Number(of))}`,
  says,
});
const ofSink = (what: string, says: Wording['says']): Wording => ({
  title: (_, { of }) => `${what} of ${sinkName(Number(of))}`,
  says,
});
const ofFan = (what: string, says: Wording['says']): Wording => ({
  title: (_, { of }) => `${what}, fan of kind ${Number(of) + 1}`,
  says,
});
const ofBox = (title: string, says: Wording['says']): Wording => ({ title: () => title, says });

const wordings: Readonly<Record<string, Wording>> = {
  film: ofResistor('Film', inWholeDegrees),
  bond: ofResistor('Bond', inWholeDegrees),
  joint: ofResistor('Solder joint', inWholeDegrees),
  body: ofResistor('Back', inWholeDegrees),
  filmSide: ofResistor('Watts by the film face', asWatts),
  secondSide: ofResistor('Watts by the second face', asWatts),
  nominal: ofResistor('Nominal watts', asWatts),
  worst: ofResistor('Worst watts', asWatts),
  power: ofResistor('Watts that the answer was computed with', asWatts),
  voltage: ofResistor('Most volts', asQuantity('voltage')),
  drift: {
    title: (_, { of }) =>
      of === 'whole'
        ? 'Change of resistance of all together'
        : `Change of resistance of ${resistorName(Number(of))}`,
    says: (value) => `${value > 0 ? '+' : ''}${fixed(value * 1e6, Math.abs(value) < 1e-5 ? 1 : 0)}\u202fppm`,
  },
  plate: ofSink('Hottest plate', inWholeDegrees),
  heat: ofSink('Heat to the air', asWatts),
  airOut: ofSink('Air that leaves', inWholeDegrees),
  resistance: ofSink('Resistance to the air', asQuantity('thermalResistance')),
  coefficient: ofSink('Heat transfer coefficient', asQuantity('heatTransferCoefficient')),
  efficiency: ofSink('Fin efficiency', asPercent),
  facing: ofSink('Sheet beside the faces', inWholeDegrees),
  outside: ofSink('Outside of the box beside the faces', inWholeDegrees),
  rung: {
    title: (of) => `Step to the hottest film: ${rungLabels[of as RungKey]}`,
    says: (value, system) => kelvins(value, system, 1),
  },
  share: { title: (of) => `Share of the air: ${passageLabels[of as PassageKind]}`, says: asPercent },
  passage: { title: (of) => `Share of the air by passage ${of}`, says: asPercent },
  stage: { title: (of) => `Pressure: ${stageTitle(of)}`, says: asQuantity('pressure') },
  speed: ofFan('Speed', asPercent),
  fanFlow: ofFan('Flow of one', asQuantity('volumeFlow')),
  fanDp: ofFan('Pressure of one', asQuantity('pressure')),
  bladePass: ofFan('Tone', asQuantity('frequency')),
  total: ofBox('Watts of all resistors', asWatts),
  fanWatts: ofBox('Watts of the fans', asWatts),
  flow: ofBox('Air moved', asQuantity('volumeFlow')),
  massFlow: ofBox('Mass of air moved', asQuantity('massFlow')),
  fanPressure: ofBox('Fan pressure', asQuantity('pressure')),
  freeFlow: ofBox('Free delivery of the fans', asQuantity('volumeFlow')),
  shutOff: ofBox('Pressure of the fans at no flow', asQuantity('pressure')),
  density: ofBox('Density of the room’s air', asQuantity('density', 4)),
  airPressure: ofBox('Pressure of the air', asQuantity('airPressure', 4)),
  draught: ofBox('Draught outside the bank', asQuantity('pressure')),
  entering: ofBox('Air that enters the bank', inWholeDegrees),
  exhaust: ofBox('Exhaust air', inWholeDegrees),
  carried: ofBox('Watts that the air carries', asWatts),
  shell: ofBox('Watts that walls and openings give off', asWatts),
  sound: ofBox('Sound at the listener', asQuantity('soundLevel', 2)),
  obstructed: ofBox('Flow that a wall close to the fan may take', asPercent),
  pulse: ofBox('Hottest film at the end of a pulse', inWholeDegrees),
  rated: {
    title: (of) => `Rated watts ${of === 'stopped' ? 'without' : 'with'} fan`,
    says: asWatts,
  },
  reached: {
    title: (of) => `After the fans stop, until the limit is reached: ${small(limitLabels[of as LimitKey])}`,
    says: (value) => duration(value),
  },
};

function stageTitle(of: string): string {
  const [key = '', number] = of.split(':');
  const label = stageLabels[key as StageKey];
  return number === undefined ? label : `${label}, ${number}`;
}

/** Time to act is a moment where one is, and a margin where every limit holds for good. */
function actSays({ value, steps }: Figure, holdsForGood: (step: number) => boolean): string {
  const last = steps[steps.length - 1] ?? 0;
  return holdsForGood(last) ? 'no hurry' : duration(value);
}

/** Figures in words; those of limits say what their row says. */
export function figureRows(
  figures: readonly Figure[],
  outcomes: { readonly running: Outcome; readonly stopped: Outcome },
  holdsForGood: (step: number) => boolean,
  system: UnitSystem,
): WorkedFigure[] {
  const rows = {
    running: outcomes.running.ok ? limitRows(outcomes.running.limits, system) : [],
    stopped: outcomes.stopped.ok ? limitRows(outcomes.stopped.limits, system) : [],
  };
  return figures.flatMap((figure): WorkedFigure[] => {
    const said =
      limitWords(figure, figure.stopped ? rows.stopped : rows.running) ?? words(figure, holdsForGood, system);
    if (!said) return [];
    const title = figure.stopped ? `${said.title}, without fan` : said.title;
    return [{ id: figureId(figure), title: capital(title), value: said.value, steps: figure.steps }];
  });
}

function words(
  figure: Figure,
  holdsForGood: (step: number) => boolean,
  system: UnitSystem,
): { title: string; value: string } | null {
  if (figure.kind === 'act')
    return { title: 'Time to act after the fans stop', value: actSays(figure, holdsForGood) };
  const wording = wordings[figure.kind];
  if (!wording) return null;
  const of = typeof figure.of === 'number' ? `${figure.of + 1}` : (figure.of ?? '');
  return { title: wording.title(of, figure), value: wording.says(figure.value, system) };
}

function limitWords(
  { kind, of }: Figure,
  rows: readonly LimitRow[],
): { title: string; value: string } | null {
  const row = rows.find(({ key }) => key === of);
  if (!row) return null;
  const name = small(row.label);
  if (kind === 'limit') return { title: `Limit: ${name}, ${row.where}`, value: row.value };
  if (kind === 'margin') return { title: `Margin: ${name}, ${row.where}`, value: row.margin };
  return kind === 'loadFactor'
    ? { title: `Load up to, for: ${name}, ${row.where}`, value: row.loadFactor }
    : null;
}
