import type { LoadKind } from '../resistor/splitLoad.ts';

/**
 * What the core is told: a fan box in SI numbers, complete and already valid.
 *
 * Axes: x along the row (sinks and resistors in turn), y across the row, z up, the way the air goes through the fins.
 * A fan on the end wall blows along x through the neck-down into the plenum under the row; the baffle is the sheet
 * between plenum and bank, with a slot along the row and a collar that leaves a small clearance round the bank.
 */
export interface SystemInput {
  readonly room: RoomInput;
  readonly load: LoadInput;
  /** N resistors, first to last along the row. */
  readonly positions: readonly PositionInput[];
  readonly sink: SinkInput;
  readonly hasFirstSink: boolean;
  readonly hasLastSink: boolean;
  readonly bond: BondInput;
  readonly secondFace: SecondFaceInput;
  readonly fan: FanInput;
  readonly inlet: { readonly guard: GrilleInput; readonly filter: FilterInput | null };
  readonly plenum: { readonly height_m: number; readonly neckAngle_rad: number; readonly length_m: number };
  readonly baffle: BaffleInput | null;
  /** Inside of the bay that holds the bank; its width is the plenum's too. */
  readonly box: BoxInput;
  readonly outlet: GrilleInput;
  readonly extras: readonly ExtraLossInput[];
  readonly limits: LimitsInput;
  /** Multipliers on the results of methods, 1 where absent: card scatter in a tolerance study, fitted values of a bench check. */
  readonly factors: Factors;
}

export interface RoomInput {
  readonly T_K: number;
  readonly altitude_m: number;
  /** As read from a barometer; `null` where the altitude tells it. */
  readonly pressure_Pa: number | null;
  readonly relativeHumidity: number;
  /** From the fans to the nearest ear. */
  readonly listening_m: number;
}

export interface BoxInput {
  readonly length_m: number;
  readonly width_m: number;
  readonly sheet_m: number;
  /** From the top of the fins to the outlet. */
  readonly headroom_m: number;
  /** Of the way of the air through the fins, from upright: at a right angle there is no draught, beyond it the air falls. */
  readonly tilt_rad: number;
  readonly sheet_WPerMK: number;
  readonly sheetEmissivity: number;
  readonly sheetHeat_JPerM3K: number;
}

export interface Factors {
  readonly channelHeat: number;
  readonly channelFriction: number;
  readonly minorLoss: number;
  readonly slotLoss: number;
  readonly bondConductivity: number;
  readonly fanFlow: number;
  readonly spreading: number;
  readonly standingFan: number;
  readonly outsideHeat: number;
  readonly emissivity: number;
}

export const unitFactors: Factors = {
  channelHeat: 1,
  channelFriction: 1,
  minorLoss: 1,
  slotLoss: 1,
  bondConductivity: 1,
  fanFlow: 1,
  spreading: 1,
  standingFan: 1,
  outsideHeat: 1,
  emissivity: 1,
};

/** How a box is run: the ordinary way, or with its fans at a stand. */
export interface Run {
  readonly fans: 'running' | 'stopped';
  /** Of several stable meeting points of fan and box: the one with most flow, or the one a fan reaches from rest. */
  readonly point: 'mostFlow' | 'leastFlow';
  /** Whether films are followed through the pulses of a load that comes and goes; studies of many solves need not. */
  readonly pulses: boolean;
}

export const ordinaryRun: Run = { fans: 'running', point: 'mostFlow', pulses: true };
export const leastFlow: Run = { fans: 'running', point: 'leastFlow', pulses: true };
export const fansStopped: Run = { fans: 'stopped', point: 'mostFlow', pulses: true };

export interface LoadInput {
  readonly excitation: LoadKind;
  /** Volts or amps, whichever the excitation asks for; not read for watts each. */
  readonly supply: number;
  readonly supplyTolerance: number;
  /** Share of time the load is on; scales mean watts, not volts. */
  readonly duty: number;
  /** Judge at the worst watts each position can see within the tolerances, instead of the nominal ones. */
  readonly atWorst: boolean;
  /** Watts are multiplied by this, volts and amps by its root: 1 for the load as given. */
  readonly scale: number;
  /** Of one on and one off together, where duty is below 1. */
  readonly period_s: number;
}

export interface PositionInput {
  readonly part: PartInput;
  readonly on: boolean;
  /** Film face towards the next sink (higher number) instead of the one before. */
  readonly flipped: boolean;
  /** Read for watts each only. */
  readonly power_W: number;
}

export interface PartInput {
  readonly name: string;
  readonly R_Ohm: number;
  readonly tolerance: number;
  readonly rated_W: number;
  readonly fullPowerUpTo_K: number;
  readonly zeroPowerAt_K: number;
  /** What the maker of the part derates by: its terminals, the air, or nothing but the film's own limit. */
  readonly deratedBy: 'terminals' | 'air' | 'film';
  readonly tcr_perK: number;
  readonly tcr2_perK2: number;
  readonly elementLimit_V: number;
  /** Chip: length between terminals, width, thickness of the ceramic. */
  readonly length_m: number;
  readonly width_m: number;
  readonly thickness_m: number;
  readonly ceramic_WPerMK: number;
  readonly ceramicHeat_JPerM3K: number;
  readonly coating_m: number;
  readonly coating_WPerMK: number;
}

/** Plate fins between flat plates: a face that carries a resistor has a plate, an outer face of the row is open fin tips. */
export interface SinkInput {
  readonly k_WPerMK: number;
  /** z, the way of the air. */
  readonly length_m: number;
  /** y, across the row. */
  readonly width_m: number;
  /** x, from plate to plate, or from plate to open tip. */
  readonly finHeight_m: number;
  readonly finThickness_m: number;
  readonly finCount: number;
  readonly plate_m: number;
  readonly emissivity: number;
  readonly heat_JPerM3K: number;
}

export interface BondInput {
  /** Design conductivity (already reduced from the data sheet's). */
  readonly k_WPerMK: number;
  /** Filament diameter: it sets the bond line. */
  readonly filament_m: number;
  readonly filament_WPerMK: number;
  /** Total length of filament lying in one film-face bond. */
  readonly filamentLength_m: number;
  readonly voidShare: number;
  readonly contact_m2KPerW: number;
  readonly serviceLimit_K: number;
  readonly glassTransition_K: number;
}

/** How the face away from the film reaches its sink. */
export interface SecondFaceInput {
  readonly way: 'tabs' | 'bonded' | 'free';
  readonly tabCount: number;
  readonly tabWidth_m: number;
  readonly tabThickness_m: number;
  readonly tabLength_m: number;
  readonly tab_WPerMK: number;
  /** Bonded length of each tab on the sink. */
  readonly tabLanding_m: number;
  readonly solder_m: number;
  readonly solder_WPerMK: number;
  readonly terminalLength_m: number;
}

/** What one kind of fan is. */
export interface FanKind {
  readonly rated_V: number;
  readonly supply_V: number;
  readonly start_V: number;
  readonly power_W: number;
  /** Diameter of the free opening and of the hub. */
  readonly opening_m: number;
  readonly hub_m: number;
  /** Sound level at rated voltage, at the distance the data sheet gives it for. */
  readonly sound_dBA: number;
  readonly soundAt_m: number;
  readonly blades: number;
  /** Turns per second at rated voltage. */
  readonly rotation_PerS: number;
  /** Velocity heads lost in the fan while it stands still, on the velocity between hub and rim. */
  readonly standingLoss: number;
  /** Static pressure over flow at rated voltage and 1.2 kg/m³, rising flow. */
  readonly curve: readonly { readonly flow_m3PerS: number; readonly dp_Pa: number }[];
}

export interface FanInput extends FanKind {
  /** Equal fans: lanes side by side, and fans behind one another in each lane. */
  readonly sideBySide: number;
  readonly inARow: number;
  /** Further fans of other kinds. */
  readonly others: readonly OtherFanInput[];
  /** Share by which the supply of all fans may sag below its nominal voltage; counts where the load is judged at its worst. */
  readonly supplySag: number;
  /** Share of speed lost to age, all fans. */
  readonly speedLoss: number;
  /** Free space in front of the inlet, and from the fan to the first wall behind it. */
  readonly inletSpace_m: number;
  readonly outletSpace_m: number;
}

/** `beside`: a lane of its own next to the others; `behind`: all air of the fans above passes it too. */
export interface OtherFanInput extends FanKind {
  readonly name: string;
  readonly place: 'beside' | 'behind';
}

export interface GrilleInput {
  readonly kind: 'none' | 'wire' | 'punched' | 'square' | 'ownLoss';
  readonly freeShare: number;
  /** For `ownLoss`: on the velocity in the whole opening. */
  readonly loss: number;
  /** Share of the free area that dust has closed. */
  readonly blocked: number;
}

/** Maker's two-term law on the velocity in the fan opening. */
export interface FilterInput {
  /** Share of its area that dust has closed. */
  readonly blocked: number;
  readonly linear_PaSPerM: number;
  readonly quadratic_PaS2PerM2: number;
}

export interface BaffleInput {
  readonly sheet_m: number;
  readonly slotWidth_m: number;
  readonly standOff_m: number;
  readonly sideClearance_m: number;
  readonly endClearance_m: number;
  /** Height of the collar along the sinks, at most the sink's length. */
  readonly collar_m: number;
  /** Crack under the baffle along its whole seat. */
  readonly leakGap_m: number;
}

export interface ExtraLossInput {
  readonly name: string;
  readonly place: 'inlet' | 'plenum' | 'outlet';
  readonly loss: number;
  readonly area_m2: number;
  /** Measured points instead of a loss coefficient; empty where the coefficient counts. */
  readonly points: readonly { readonly flow_m3PerS: number; readonly dp_Pa: number }[];
}

export interface LimitsInput {
  readonly joint_K: number;
  readonly sheet_K: number;
  readonly exhaust_K: number;
  readonly touchable: boolean;
  readonly touch_K: number;
  /** Outside of the box wall, touched. */
  readonly wall_K: number;
  /** At the listener; judged where `soundJudged`. */
  readonly sound_dBA: number;
  readonly soundJudged: boolean;
  /** Relative change of resistance that counts as settled. */
  readonly settled: number;
  /** Rises are held against this factor before a design counts as holding with plenty to spare. */
  readonly spareFactor: number;
}
