import * as z from 'zod/mini';
import { choice, count, number, rows, say, text } from './schemaWords.ts';

export const point = z.strictObject({
  flow_m3PerS: number([0, 5], 'Flow', 'Volume of air per time.'),
  dp_Pa: number([0, 20_000], 'Pressure', 'Static pressure.'),
});

/** What is said of every kind of fan, the first and any further one. */
const fanKind = {
  rated_V: number([0.5, 500], 'Rated voltage', 'For the curve.', [5, 48]),
  supply_V: number([0, 500], 'Fan supply', 'Voltage at the fan, after diodes and leads.', [5, 48]),
  start_V: number([0, 500], 'Start voltage', 'Below it the fan does not turn.', [3, 7]),
  power_W: number([0, 500], 'Fan power', 'Electrical, at rated voltage.', [0.3, 10]),
  rotation_PerS: number([0.5, 1000], 'Rated speed', 'At rated voltage.', [10, 250]),
  opening_m: number([0.008, 1], 'Opening', 'Diameter that the air passes.', [0.022, 0.14]),
  hub_m: number([0, 0.9], 'Hub', 'Diameter of the hub.', [0.01, 0.06]),
  blades: count([1, 40], 'Blades', 'Of the impeller.', [3, 13]),
  standingLoss: number(
    [0, 200],
    'Loss standing still',
    'Velocity heads between hub and rim while it does not turn; common practice, no source.',
    [3, 30],
  ),
  sound_dBA: number([0, 120], 'Sound level', 'At rated voltage, from the data sheet.', [10, 70]),
  soundAt_m: number([0.05, 20], 'Sound given at', 'Distance that the sound level is given for.', [0.5, 3]),
  curveSource: text(
    200,
    'Curve from',
    'Which data sheet, its page and the volts it was measured at; printed on the sheet.',
  ),
  curve: say(rows(point, 2, 200), {
    title: 'Fan curve',
    description: 'Static pressure over flow at rated voltage and 1.2 kg/m³, from shut-off to free delivery.',
  }),
};

export const fanSchema = z.strictObject({
  name: text(80, 'Fan', 'Which fan.'),
  sideBySide: count([1, 8], 'Fans side by side', 'Equal ones.'),
  inARow: count([1, 4], 'Fans in a row', 'Equal fans behind one another in each lane.'),
  size_m: number([0.01, 1], 'Frame', 'Edge of the square frame.', [0.025, 0.14]),
  depth_m: number([0.003, 0.5], 'Depth', 'Of the frame.', [0.01, 0.04]),
  inletSpace_m: number([0, 10], 'Free space before the fan', 'To the nearest wall or cable outside.'),
  supplySag: number([0, 0.5], 'Supply may sag by', 'Of all fans; counts at worst tolerance.', [0, 0.2]),
  speedLoss: number([0, 0.6], 'Speed lost to age', 'Of all fans.', [0, 0.3]),
  ...fanKind,
});

export const otherFanSchema = z.strictObject({
  name: text(60, 'Name', 'Which fan.'),
  place: choice(
    ['beside', 'behind'],
    'Place',
    'Beside: a lane of its own. Behind: the air of the fans above passes it too.',
  ),
  ...fanKind,
});
