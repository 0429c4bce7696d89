import type { SourceKey } from '../sources.ts';

/** The whole answer of the core: one object, plain data, every number finite. */
export type Outcome = Solved | Unsolved;

export interface Unsolved {
  readonly ok: false;
  readonly reason: 'fanDoesNotStart' | 'noOperatingPoint' | 'noHeatPath' | 'runaway' | 'notConverged';
  readonly details: Readonly<Record<string, number>>;
}

export interface Solved {
  readonly ok: true;
  readonly air: AirOutcome;
  readonly heat: HeatOutcome;
  /** `null` for a load that stays on. */
  readonly pulse: PulseOutcome | null;
  readonly limits: readonly Limit[];
  readonly verdict: Verdict;
  readonly balance: {
    /** Mass in minus mass out over the worst node, relative to the largest flow. */
    readonly air: number;
    /** Watts in minus watts carried away by the air and given off by the walls, relative to the watts in. */
    readonly heat: number;
    readonly iterations: number;
    /** Kelvin that temperatures may still be off, foretold from the last two iterations. */
    readonly moved_K: number;
  };
}

export type PassageKind = 'fins' | 'side' | 'end' | 'between' | 'leak';

export interface Passage {
  readonly kind: PassageKind;
  /** Sink number for fins, gap number otherwise (0 is the first along the row). */
  readonly index: number;
  readonly massFlow_kgPerS: number;
  /** Of the fan's mass flow. */
  readonly share: number;
  readonly velocity_mPerS: number;
  readonly reynolds: number;
  readonly area_m2: number;
}

export type StageKey =
  | 'guard'
  | 'filter'
  | 'inletExtra'
  | 'standingFan'
  | 'neck'
  | 'plenum'
  | 'plenumExtra'
  | 'slot'
  | 'bank'
  | 'outlet'
  | 'outletExtra';

export interface Stage {
  readonly key: StageKey;
  readonly dp_Pa: number;
  readonly velocity_mPerS: number;
}

export interface Intersection {
  readonly flow_m3PerS: number;
  readonly dp_Pa: number;
  readonly stable: boolean;
  readonly used: boolean;
}

/** One kind of fan as it runs in this box. */
export interface FanOutcome {
  /** 0 is the first kind, then the others in their order. */
  readonly index: number;
  readonly count: number;
  readonly speedRatio: number;
  /** Through one of them, and what it adds. */
  readonly flow_m3PerS: number;
  readonly dp_Pa: number;
  /** The others push air back through it. */
  readonly backwards: boolean;
  readonly bladePass_Hz: number;
}

export interface AirOutcome {
  readonly running: boolean;
  /** Through all fans; negative where warmth drives it the other way round. */
  readonly flow_m3PerS: number;
  readonly massFlow_kgPerS: number;
  /** What the fans add; nothing while they stand still. */
  readonly fanPressure_Pa: number;
  /** What warm air adds outside the bank; the bank's own stage is told with it. Fans and draught are all stages together. */
  readonly draught_Pa: number;
  /**
   * In the plenum under the row, over the room at the same height. Moving air is counted as at rest there (a chamber); a tap that
   * the stream passes reads less by up to its velocity head.
   */
  readonly plenum_Pa: number;
  /** Of the first kind. */
  readonly fanSpeedRatio: number;
  readonly fans: readonly FanOutcome[];
  /** A curve with a dip stands beside another kind, and was bridged to join them. */
  readonly bridgedDip: boolean;
  /** At the listener; `null` where no fan turns. */
  readonly sound_dBA: number | null;
  /** Share of the flow that a wall close to a fan may take. */
  readonly obstructed: number;
  /** Fan's free delivery and shut-off pressure at this speed and density. */
  readonly freeFlow_m3PerS: number;
  readonly shutOff_Pa: number;
  /** Flow below which the curve has a dip, `null` for a curve that only falls. */
  readonly stallBelow_m3PerS: number | null;
  readonly intersections: readonly Intersection[];
  readonly stages: readonly Stage[];
  readonly passages: readonly Passage[];
  readonly share: Readonly<Record<PassageKind, number>>;
  readonly rho_kgPerM3: number;
  readonly p_Pa: number;
}

export interface SinkOutcome {
  readonly index: number;
  /** Plate towards the resistor before (lower number) and after; `null` where the face is open fin tips. */
  readonly before_K: number | null;
  readonly after_K: number | null;
  readonly heat_W: number;
  readonly massFlow_kgPerS: number;
  readonly airOut_K: number;
  readonly airMean_K: number;
  /** Sheet that faces this sink, and outside of the box wall behind it. */
  readonly facing_K: number;
  readonly outside_K: number;
  readonly h_WPerM2K: number;
  readonly finEfficiency: number;
  /** Hottest plate above the air that enters, per watt. */
  readonly R_KPerW: number;
}

export interface PositionOutcome {
  readonly index: number;
  readonly on: boolean;
  readonly nominal_W: number;
  readonly worst_W: number;
  /** The watts this answer was computed with. */
  readonly power_W: number;
  readonly voltage_V: number;
  readonly film_K: number;
  readonly body_K: number;
  /** Solder joint at the terminals. */
  readonly joint_K: number;
  /** Hottest spot of a bond line of this resistor. */
  readonly bond_K: number;
  readonly filmSide_W: number;
  readonly secondSide_W: number;
}

export type RungKey = 'fanHeat' | 'airRise' | 'finToAir' | 'spreading' | 'bond' | 'coating';

/** One rung of the ladder of kelvins, from room to the hottest film, along the film-face path. */
export interface Rung {
  readonly key: RungKey;
  readonly dT_K: number;
  readonly top_K: number;
}

export interface HeatOutcome {
  readonly total_W: number;
  readonly fan_W: number;
  readonly room_K: number;
  /** Air that enters the bank. */
  readonly entering_K: number;
  /** Watts that the air carries away, and that walls and opening give off. */
  readonly carried_W: number;
  readonly shell_W: number;
  readonly exhaust_K: number;
  readonly positions: readonly PositionOutcome[];
  readonly sinks: readonly (SinkOutcome | null)[];
  readonly hottest: number;
  readonly ladder: readonly Rung[];
}

/** Films under a load that comes and goes, at the flows of its mean. */
export interface PulseOutcome {
  readonly period_s: number;
  readonly on_s: number;
  /** Position whose film grows hottest. */
  readonly position: number;
  /** Of the last cycle of a settled train: at the end of the pulse, and just before the next. */
  readonly peak_K: number;
  readonly valley_K: number;
  /** At the end of one pulse into a cold box. */
  readonly single_K: number;
  /** Of the peak, what the layers of the ceramic cannot follow in a pulse that never sees its back. */
  readonly beyond_K: number;
  readonly trace: readonly PulsePoint[];
  readonly cycles: number;
}

export interface PulsePoint {
  /** From the start of a pulse. */
  readonly time_s: number;
  readonly film_K: number;
}

export type LimitKey =
  | 'film'
  | 'pulse'
  | 'derating'
  | 'joint'
  | 'bond'
  | 'touch'
  | 'sheet'
  | 'wall'
  | 'sound'
  | 'exhaust'
  | 'voltage'
  | 'stall'
  | 'ratedPower';
export type LimitState = 'holds' | 'little' | 'fails';

export interface Limit {
  readonly key: LimitKey;
  /** Position or sink the worst value stands at; `null` for the whole box. */
  readonly where: number | null;
  readonly quantity: 'temperature' | 'power' | 'voltage' | 'flow' | 'sound';
  /** Value and limit in the quantity's SI unit. */
  readonly value: number;
  readonly limit: number;
  /** Kelvin to spare (negative: too hot); `null` where the limit is not a temperature. */
  readonly margin_K: number | null;
  /** The load may be multiplied by this before the limit is met, at this flow; `null` where load does not move it. */
  readonly loadFactor: number | null;
  readonly state: LimitState;
  /** Bibliography key of the limit, and whether its value still has to be confirmed by the user. */
  readonly source: SourceKey;
  readonly confirm: boolean;
}

export interface Verdict {
  readonly state: LimitState;
  /** The limit that gives first. */
  readonly limit: Limit;
}
