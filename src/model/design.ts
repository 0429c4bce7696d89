import * as z from 'zod/mini';
import { cuttingSchema } from './cuttingSchema.ts';
import { fanSchema, otherFanSchema, point } from './fanSchema.ts';
import { fittedSchema, readingsSchema } from './readingSchema.ts';
import { choice, count, flag, number, rows, text } from './schemaWords.ts';
import { spreadSchema } from './spreadSchema.ts';

const part = z.strictObject({
  name: text(60, 'Name', 'What you call this part.'),
  R_Ohm: number([1e-4, 1e9], 'Resistance', 'Nominal resistance.', [0.01, 1e6]),
  tolerance: number([0, 0.5], 'Tolerance', 'Largest deviation from nominal, either way.', [0.0001, 0.1]),
  rated_W: number([0.001, 1000], 'Rated power', 'Full power on the data sheet.', [0.1, 50]),
  fullPowerUpTo_K: number(
    [250, 600],
    'Full power up to',
    'Temperature where the derating line begins to fall.',
    [313.15, 423.15],
  ),
  zeroPowerAt_K: number(
    [280, 700],
    'No power at',
    'Temperature where the derating line meets zero; also the most the film may have.',
    [373.15, 573.15],
  ),
  deratedBy: choice(
    ['terminals', 'air', 'film'],
    'Derated by',
    'What temperature the derating line is drawn over: terminals, the air, or only the film’s own limit.',
  ),
  tcr_perK: number(
    [-0.01, 0.01],
    'Temperature coefficient',
    'Change of resistance per kelvin.',
    [-1e-4, 1e-4],
  ),
  tcr2_perK2: number(
    [-1e-4, 1e-4],
    'Square temperature coefficient',
    'Change of resistance per square of kelvins.',
    [-1e-7, 1e-7],
  ),
  elementLimit_V: number(
    [0.1, 1e5],
    'Voltage limit',
    'Most volts across one element, whatever its watts.',
    [10, 1000],
  ),
  length_m: number([2e-4, 0.2], 'Chip length', 'From terminal to terminal, across the row.', [0.001, 0.03]),
  width_m: number([2e-4, 0.2], 'Chip width', 'The way of the air.', [0.0005, 0.03]),
  thickness_m: number([5e-5, 0.02], 'Chip thickness', 'Ceramic body.', [0.0003, 0.002]),
  ceramic_WPerMK: number(
    [0.5, 400],
    'Ceramic conductivity',
    'Alumina 96 %: about 25 W/(m·K); aluminium nitride: about 170.',
    [15, 200],
  ),
  ceramicHeat_JPerM3K: number(
    [1e5, 1e7],
    'Ceramic heat capacity',
    'Per volume; alumina about 3.4 J/(cm³·K).',
    [2e6, 4e6],
  ),
  coating_m: number([0, 0.001], 'Coating thickness', 'Protective coat over the film.', [5e-6, 1e-4]),
  coating_WPerMK: number(
    [0.05, 50],
    'Coating conductivity',
    'Glass about 1, epoxy about 0.2 W/(m·K).',
    [0.15, 2],
  ),
});

const position = z.strictObject({
  part: count([0, 31], 'Part', 'Which of the parts above sits here.'),
  on: flag('On', 'Off means no watts here; in a series string an off resistor is bridged.'),
  flipped: flag('Flipped', 'Film face towards the next sink instead of the one before.'),
  power_W: number([0, 1000], 'Watts', 'Used when the load is given as watts each.', [0, 50]),
});

const grille = (what: string) =>
  z.strictObject({
    kind: choice(
      ['none', 'wire', 'punched', 'square', 'ownLoss'],
      `${what}`,
      'Round wires, a punched sheet, square-edged bars, a loss coefficient of your own, or none.',
    ),
    freeShare: number([0.05, 1], 'Free area', 'Open share of the whole opening.', [0.3, 0.95]),
    loss: number([0, 1000], 'Own loss coefficient', 'On the velocity in the whole opening.', [0.1, 20]),
  });

/** The whole input of one fan box, version 5. SI inside; every key carries its unit. */
export const designSchema = z.strictObject({
  format: z.literal('throughfin-design'),
  version: z.literal(5),
  title: text(80, 'Title', 'Name of this box.'),
  variant: text(40, 'Variant', 'Which of several versions of this box; empty for the only one.'),
  revision: text(20, 'Revision', 'Your revision mark.'),
  remark: text(600, 'Remark', 'Anything worth keeping with the design; printed on the sheet.'),
  invented: flag('Invented example', 'Marks an example of ours, not a built box.'),
  room: z.strictObject({
    T_K: number(
      [223.15, 353.15],
      'Room temperature',
      'Air that the fan takes in, at its hottest.',
      [273.15, 323.15],
    ),
    pressureFrom: choice(
      ['altitude', 'barometer'],
      'Air pressure from',
      'Told by the altitude, or read from a barometer.',
    ),
    altitude_m: number([-400, 6000], 'Altitude', 'Above sea level; thin air carries less heat.', [0, 3000]),
    pressure_Pa: number(
      [40_000, 120_000],
      'Air pressure',
      'Where the box stands, not reduced to sea level.',
      [65_000, 105_000],
    ),
    relativeHumidity: number([0, 1], 'Relative humidity', 'Matters little.', [0.1, 0.9]),
    listening_m: number([0.05, 100], 'Listening distance', 'From the fans to the nearest ear.', [0.3, 10]),
  }),
  load: z.strictObject({
    excitation: choice(
      ['wattsEach', 'seriesVolts', 'seriesAmps', 'parallelVolts', 'parallelAmps', 'switched'],
      'Load given as',
      'How the watts come about: given for each resistor; volts or amps on a series string or a parallel set; or each resistor switched across the supply by itself.',
    ),
    supply_V: number(
      [0, 1e5],
      'Supply voltage',
      'Across the string, the set, or each switched resistor.',
      [0.1, 1000],
    ),
    supply_A: number([0, 1e4], 'Supply current', 'Through the string or the set.', [0.001, 100]),
    supplyTolerance: number(
      [0, 0.5],
      'Supply tolerance',
      'How far the supply may rise above nominal.',
      [0, 0.1],
    ),
    duty: number([0, 1], 'Duty', 'Share of time the load is on; the mean heats the box.', [0.05, 1]),
    period_s: number([1e-5, 1e5], 'Period', 'One on and one off together.', [0.01, 600]),
    atWorst: flag(
      'Judge at worst tolerance',
      'Take for every resistor the most watts its tolerance and the supply’s allow.',
    ),
  }),
  parts: rows(part, 1, 32),
  positions: rows(position, 1, 64),
  sink: z.strictObject({
    material: text(60, 'Alloy', 'For the sheet; the conductivity counts.'),
    k_WPerMK: number(
      [1, 500],
      'Conductivity',
      'Aluminium 6063 about 200, 6061 about 167, cast about 120 W/(m·K).',
      [90, 400],
    ),
    heat_JPerM3K: number(
      [1e5, 1e7],
      'Heat capacity',
      'Per volume; aluminium 2.42, copper 3.4 J/(cm³·K).',
      [1.5e6, 4e6],
    ),
    length_m: number([0.002, 0.5], 'Fin length', 'The way of the air, upward.', [0.008, 0.1]),
    width_m: number([0.003, 0.5], 'Sink width', 'Across the row.', [0.008, 0.1]),
    finHeight_m: number(
      [0.001, 0.2],
      'Fin height',
      'From plate to plate, or from plate to tip.',
      [0.004, 0.05],
    ),
    finThickness_m: number([1e-4, 0.02], 'Fin thickness', 'Of one fin.', [0.0004, 0.003]),
    finCount: count([2, 200], 'Fins', 'Number of fins across one sink.', [3, 40]),
    plate_m: number([2e-4, 0.05], 'Plate thickness', 'The plate that the chip is bonded to.', [0.001, 0.006]),
    emissivity: number([0.01, 1], 'Emissivity', 'Bare about 0.1, black anodised about 0.85.', [0.05, 0.95]),
    first: flag('Sink before the first resistor', 'Off: the first resistor has a sink on one face only.'),
    last: flag('Sink after the last resistor', 'Off: the last resistor has a sink on one face only.'),
  }),
  bond: z.strictObject({
    material: text(60, 'Bond material', 'For the sheet; the conductivity counts.'),
    sheetK_WPerMK: number(
      [0.02, 100],
      'Data-sheet conductivity',
      'As the maker of the adhesive states it.',
      [0.15, 5],
    ),
    designShare: number(
      [0.1, 1],
      'Share to count on',
      'How much of the data sheet’s conductivity to count on; 0.7 is prudent.',
      [0.5, 1],
    ),
    filament_m: number(
      [5e-6, 0.002],
      'Spacer filament',
      'Its diameter sets the thickness of the bond line.',
      [5e-5, 3e-4],
    ),
    filament_WPerMK: number(
      [0.02, 50],
      'Filament conductivity',
      'Nylon about 0.25, glass about 1 W/(m·K).',
      [0.1, 2],
    ),
    filamentLength_m: number(
      [0, 0.5],
      'Filament in each bond',
      'Total length lying under one chip.',
      [0, 0.05],
    ),
    voidShare: number([0, 0.9], 'Voids', 'Share of the area without adhesive.', [0, 0.3]),
    contact_m2KPerW: number([0, 0.01], 'Contact resistance', 'Extra, at each of the two faces.', [0, 1e-4]),
    serviceLimit_K: number(
      [300, 700],
      'Service limit',
      'The most the adhesive may have, by its maker.',
      [353.15, 473.15],
    ),
    glassTransition_K: number(
      [250, 700],
      'Glass transition',
      'Above it the bond softens and creeps.',
      [318.15, 423.15],
    ),
  }),
  secondFace: z.strictObject({
    way: choice(
      ['tabs', 'bonded', 'free'],
      'Second face',
      'How the face away from the film reaches the other sink: through tabs soldered to the terminals, bonded like the first, or not at all.',
    ),
    tabCount: count([1, 64], 'Tabs or pins', 'On one resistor.', [2, 8]),
    tabWidth_m: number([1e-4, 0.1], 'Tab width', 'Of one tab or pin, along the terminal.', [0.0005, 0.01]),
    tabThickness_m: number([2e-5, 0.01], 'Tab thickness', 'Of one tab or pin.', [1e-4, 0.002]),
    tabLength_m: number([0, 0.1], 'Tab free length', 'From the joint to where it is bonded.', [0, 0.02]),
    tab_WPerMK: number([1, 500], 'Tab conductivity', 'Copper about 390, brass about 110 W/(m·K).', [50, 400]),
    tabLanding_m: number([1e-4, 0.1], 'Tab landing', 'Length of each tab bonded to the sink.', [0.001, 0.02]),
    solder_m: number([1e-6, 0.003], 'Solder thickness', 'Of the joint.', [2e-5, 3e-4]),
    solder_WPerMK: number([1, 500], 'Solder conductivity', 'Tin–silver–copper about 58 W/(m·K).', [20, 80]),
    terminalLength_m: number(
      [2e-5, 0.05],
      'Terminal length',
      'Metallised end of the chip, one side.',
      [2e-4, 0.002],
    ),
  }),
  fan: fanSchema,
  moreFans: rows(otherFanSchema, 0, 7),
  inlet: z.strictObject({
    guard: grille('Inlet guard'),
    guardBlocked: number([0, 0.95], 'Guard blocked by dust', 'Share of its free area.', [0, 0.5]),
    filter: flag('Filter', 'A filter in front of the fan.'),
    filterLinear_PaSPerM: number(
      [0, 5000],
      'Filter, linear part',
      'Pascal per m/s in the fan opening.',
      [0, 100],
    ),
    filterQuadratic_PaS2PerM2: number(
      [0, 5000],
      'Filter, square part',
      'Pascal per (m/s)² in the fan opening.',
      [0, 50],
    ),
    filterBlocked: number([0, 0.95], 'Filter blocked by dust', 'Share of its area.', [0, 0.5]),
  }),
  plenum: z.strictObject({
    height_m: number([0.002, 1], 'Plenum height', 'Inside, under the baffle.', [0.01, 0.15]),
    neckAngle_rad: number(
      [0, Math.PI],
      'Neck-down angle',
      'Full angle between the sloping walls.',
      [0.15, 1.6],
    ),
    neckLength_m: number([0, 1], 'Neck-down length', 'From the fan to the straight plenum.', [0.005, 0.2]),
  }),
  baffle: z.strictObject({
    fitted: flag('Baffle fitted', 'Off: the air may slip under and around the sinks.'),
    sheet_m: number([2e-4, 0.05], 'Baffle sheet', 'Thickness.', [0.001, 0.006]),
    slotWidth_m: number(
      [5e-4, 0.5],
      'Slot width',
      'Opening under the fins, along the whole row.',
      [0.005, 0.06],
    ),
    standOff_m: number([0, 0.1], 'Stand-off', 'From the baffle to the lower edge of the fins.', [0, 0.01]),
    sideClearance_m: number(
      [0, 0.2],
      'Side clearance',
      'Gap between the sinks and the collar, on both sides of the row.',
      [2e-4, 0.005],
    ),
    endClearance_m: number([0, 0.2], 'End clearance', 'Gap at both ends of the row.', [2e-4, 0.005]),
    collar_m: number(
      [5e-4, 0.5],
      'Collar height',
      'How far the collar reaches up along the fins.',
      [0.002, 0.1],
    ),
    leakGap_m: number([0, 0.02], 'Leak under the baffle', 'Crack along the seat of the baffle.', [0, 5e-4]),
  }),
  box: z.strictObject({
    material: text(60, 'Sheet', 'Plastic the box is cut from.'),
    sheet_m: number(
      [2e-4, 0.05],
      'Wall thickness',
      'Of the walls, cut from the same sheet all round.',
      [0.001, 0.008],
    ),
    length_m: number([0.005, 3], 'Inside length', 'Along the row.', [0.03, 0.5]),
    width_m: number([0.005, 1], 'Inside width', 'Across the row.', [0.02, 0.2]),
    headroom_m: number([0, 1], 'Headroom', 'From the top of the fins to the outlet.', [0, 0.05]),
    tilt_rad: number(
      [0, Math.PI],
      'Tilt',
      'Of the fins from upright, about the long axis of the row: 90° lies flat, 180° blows down.',
      [0, Math.PI / 2],
    ),
    sheet_WPerMK: number(
      [0.02, 400],
      'Sheet conductivity',
      'ABS about 0.18, acrylic 0.19, polycarbonate 0.2, aluminium 200 W/(m·K).',
      [0.1, 0.4],
    ),
    sheetEmissivity: number([0.02, 1], 'Sheet emissivity', 'Plastic about 0.9, bare metal 0.1.', [0.8, 0.95]),
    sheetHeat_JPerM3K: number(
      [1e5, 1e7],
      'Sheet heat capacity',
      'Per volume; ABS about 1.5, aluminium 2.4 J/(cm³·K).',
      [1e6, 2.5e6],
    ),
    softening_K: number(
      [300, 600],
      'Sheet may have',
      'Below the softening of the plastic; ABS about 80 °C.',
      [333.15, 393.15],
    ),
  }),
  outlet: grille('Outlet grille'),
  extras: rows(
    z.strictObject({
      name: text(60, 'Name', 'What it is.'),
      place: choice(['inlet', 'plenum', 'outlet'], 'Place', 'Where along the air’s way.'),
      loss: number([0, 1e4], 'Loss coefficient', 'On the velocity in the area given.', [0.1, 20]),
      area_m2: number([1e-6, 1], 'Area', 'That the coefficient belongs to.', [1e-4, 0.05]),
      points: rows(point, 0, 100),
    }),
    0,
    16,
  ),
  limits: z.strictObject({
    joint_K: number(
      [300, 600],
      'Joint limit',
      'The most a solder joint may have for long.',
      [353.15, 423.15],
    ),
    exhaust_K: number(
      [273.15, 600],
      'Exhaust air limit',
      'The most the air leaving the box may have.',
      [313.15, 373.15],
    ),
    touchable: flag('Sinks can be touched', 'Whether a finger reaches a sink in use.'),
    touch_K: number(
      [300, 500],
      'Touch limit',
      'Metal touched for up to ten seconds: 60 °C; confirm in the standard that binds you.',
      [321.15, 358.15],
    ),
    wall_K: number(
      [300, 500],
      'Outside of the box',
      'Plastic touched for up to ten seconds: 77 °C; confirm in the standard that binds you.',
      [321.15, 358.15],
    ),
    soundJudged: flag('Judge the sound', 'Whether a sound limit counts in the verdict.'),
    sound_dBA: number([0, 120], 'Sound limit', 'At the listening distance.', [15, 70]),
    settled: number(
      [1e-7, 0.1],
      'Settled within',
      'Relative change of resistance that counts as settled; 10 ppm is 0.001 %.',
      [1e-6, 1e-3],
    ),
    spareFactor: number(
      [1, 3],
      'Spare wanted',
      'Rises are multiplied by this before the box counts as holding with room to spare.',
      [1.1, 1.5],
    ),
  }),
  cutting: cuttingSchema,
  spreads: rows(spreadSchema, 0, 100),
  readings: readingsSchema,
  fitted: fittedSchema,
});

export type Design = z.infer<typeof designSchema>;
