import type { AssumptionKey } from '../core/assumptions.ts';
import type { Severity } from '../core/card.ts';
import type { Source } from '../core/sources.ts';
import type { LimitKey, LimitState, PassageKind, RungKey, StageKey } from '../core/system/outcome.ts';
import type { UnitSystem } from '../units/dimensions.ts';
import type { Amount, Amounts, Said } from './amount.ts';
import type { CutReport } from './cut.ts';
import type { DrawingModel, DrawingShapes, PartId } from './drawing.ts';
import type { LineChart } from './lineChart.ts';
import type { FigureId } from './working/types.ts';

export type { UnitSystem };

export interface ReportPrefs {
  readonly system: UnitSystem;
  /** Day that the sheet carries, as the caller wants it printed; the report itself knows no clock. */
  readonly date?: string;
  /** Of the design's file; the report itself knows no files. */
  readonly checksum?: string;
  /** Something typed is not right, so this is the last answer that went together. */
  readonly stale?: boolean;
}

/** What stands on the bench beside the drawing and follows every key. */
export interface Headline {
  readonly system: UnitSystem;
  readonly title: TitleBlock;
  readonly verdict: VerdictReport;
  readonly figures: readonly Figure[];
  /** Most urgent first. */
  readonly limits: readonly LimitRow[];
  /** `null` where nothing bounds the load or there is no answer. */
  readonly ratings: Ratings | null;
  /** Where the air goes and what the tints mean, as a key to the drawing. */
  readonly key: DrawingKey | null;
  readonly drawing: DrawingShapes;
}

/** Everything that screen, sheet, table file and terminal say about one answered design. */
export interface Report extends Headline {
  /** With dimensions. */
  readonly drawing: DrawingModel;
  readonly load: LoadReport | null;
  readonly air: AirReport | null;
  readonly heat: HeatReport | null;
  /** With their sources. */
  readonly limits: readonly SourcedLimitRow[];
  readonly notes: readonly NoteRow[];
  /** What happens without fans, and to the running box as they stop. */
  readonly fanStop: FanStopReport;
  readonly derating: DeratingReport | null;
  readonly drift: DriftReport | null;
  readonly pulse: PulseReport | null;
  /** The panels to cut for so many boxes. */
  readonly cut: CutReport;
  readonly cautions: readonly Caution[];
  readonly inputs: readonly InputGroup[];
  /** Every field of the design, for a page of its own. */
  readonly everyInput: readonly InputSheet[];
  /** How the answer came about and how well its balances close, in a sentence. */
  readonly computed: string;
  readonly methods: readonly MethodRow[];
  readonly sources: readonly SourceRow[];
  readonly assumptions: readonly AssumptionRow[];
}

export interface DrawingKey {
  readonly shares: readonly ShareRow[];
  /** Both ends of the ramp of warmth. */
  readonly coldest: string;
  readonly hottest: string;
}

export interface TitleBlock {
  readonly title: string;
  readonly revision: string;
  readonly remark: string;
  readonly date: string;
  /** Tells this state of the design from any other: the same as of its file. Empty where the caller gave none. */
  readonly checksum: string;
  /** Words that mark an example of ours, empty for a real design. */
  readonly invented: string;
  /** Words that warn of an answer older than what stands in the fields, empty for one that is not. */
  readonly stale: string;
  /** The box in one line: how many resistors, sinks, which fan. */
  readonly subject: string;
}

/** The number that a sentence is about, with the place of its working. */
export interface KeyNumber {
  /** As it stands in the sentence. */
  readonly text: string;
  readonly figure: FigureId;
  /** What it is. */
  readonly of: string;
}

export type VerdictState = LimitState | 'noAnswer';

export interface VerdictReport {
  readonly state: VerdictState;
  /** "holds", "holds with little to spare", "does not hold", "no answer". */
  readonly word: string;
  readonly sentence: string;
  /** The number in it that matters; `null` without an answer. */
  readonly number: KeyNumber | null;
  /** What stands behind it, one sentence each: further limits that fail or are near, or what to change. */
  readonly reasons: readonly string[];
  /** Where in the drawing it gives first. */
  readonly part: PartId | null;
}

export interface Figure {
  readonly key: string;
  readonly label: string;
  readonly value: string;
  readonly amount: Amount;
}

export interface ChangeReport {
  /** "Side clearance 0.8 mm → 1.6 mm". */
  readonly edit: string;
  /** "Holds → does not hold", empty where the verdict is the same. */
  readonly verdict: string;
  /** Signed differences by the key of a figure. */
  readonly figures: Readonly<Record<string, string>>;
}

export interface LimitRow {
  readonly key: LimitKey;
  readonly label: string;
  /** "resistor 5", "sink 3", "whole box". */
  readonly where: string;
  readonly value: string;
  readonly limit: string;
  /** "16 K over", "43 K to spare", or a dash where the limit is not a temperature. */
  readonly margin: string;
  /** How many times the present load, e.g. "1.31 ×", or a dash. */
  readonly loadFactor: string;
  readonly amounts: Amounts<'value' | 'limit' | 'margin' | 'loadFactor'>;
  readonly state: LimitState;
  readonly stateWord: string;
  /** The user has to confirm the limit's value for the case at hand. */
  readonly confirm: boolean;
  readonly part: PartId;
  /** Used share of the limit: 1 is the limit itself; `null` where load does not move it. For bars. */
  readonly used: number | null;
}

export interface SourcedLimitRow extends LimitRow {
  readonly source: string;
  /** Number in `sources`. */
  readonly footnote: number;
}

export interface Ratings {
  readonly sentence: string;
  /** Load may be multiplied by this and still keep the spare wanted. */
  readonly factor: number;
  readonly total: string;
  readonly each: string;
  readonly room: string;
  readonly spare: string;
  /** Which limit bounds it. */
  readonly boundBy: string;
}

export interface LoadRow {
  readonly index: number;
  readonly label: string;
  readonly part: string;
  readonly on: boolean;
  readonly nominal: string;
  readonly worst: string;
  readonly computed: string;
  readonly volts: string;
  readonly voltLimit: string;
  readonly amounts: Amounts<'nominal' | 'worst' | 'computed' | 'volts' | 'voltLimit'>;
}

export interface LoadReport {
  readonly sentence: string;
  readonly rows: readonly LoadRow[];
  readonly total: string;
}

export interface ShareRow {
  readonly kind: PassageKind;
  readonly label: string;
  /** Of the fan's mass flow; negative where air runs backwards. */
  readonly share: number;
  readonly percent: string;
  readonly flow: string;
  readonly amounts: Amounts<'percent' | 'flow'>;
}

export interface CurvePoint {
  readonly flow: number;
  readonly dp: number;
}

export interface FanChartMark extends CurvePoint {
  readonly stable: boolean;
  readonly used: boolean;
  readonly label: string;
}

/** Series in the display units named beside them. */
export interface FanChart {
  readonly flowUnit: string;
  readonly pressureUnit: string;
  readonly fan: readonly CurvePoint[];
  readonly system: readonly CurvePoint[];
  readonly marks: readonly FanChartMark[];
  /** Flow left of which the fan's curve has a dip, `null` for a curve that only falls. */
  readonly stallBelow: number | null;
  readonly flowTicks: readonly number[];
  readonly pressureTicks: readonly number[];
  readonly spoken: string;
}

export interface StageRow {
  readonly key: StageKey;
  readonly label: string;
  readonly dp: string;
  /** Of the fan's pressure. */
  readonly share: number;
  readonly percent: string;
  readonly velocity: string;
  readonly amounts: Amounts<'dp' | 'percent' | 'velocity'>;
  readonly part: PartId;
}

export interface PassageRow {
  readonly kind: PassageKind;
  readonly label: string;
  readonly percent: string;
  readonly flow: string;
  readonly velocity: string;
  readonly reynolds: string;
  readonly area: string;
  readonly amounts: Amounts<'percent' | 'flow' | 'velocity' | 'reynolds' | 'area'>;
}

export interface FanRow {
  readonly label: string;
  readonly count: string;
  readonly speed: string;
  /** Through one of them. */
  readonly flow: string;
  readonly pressure: string;
  readonly tone: string;
  readonly amounts: Amounts<'count' | 'speed' | 'flow' | 'pressure' | 'tone'>;
  readonly remark: string;
}

export interface AirReport {
  readonly sentence: string;
  readonly number: KeyNumber;
  /** Sound at the listener, in a sentence; empty where no fan turns. */
  readonly sound: string;
  readonly fans: readonly FanRow[];
  readonly shares: readonly ShareRow[];
  readonly chart: FanChart | null;
  readonly stages: readonly StageRow[];
  readonly passages: readonly PassageRow[];
}

export interface LadderRung {
  readonly key: RungKey | 'room';
  readonly label: string;
  /** Rise over the rung below, formatted; empty for the room itself. */
  readonly rise: string;
  readonly top: string;
  readonly amounts: Amounts<'rise' | 'top'>;
  /** In the display unit. */
  readonly from: number;
  readonly to: number;
}

export interface Ladder {
  readonly unit: string;
  readonly rungs: readonly LadderRung[];
  /** Limit of the hottest film, in the display unit and in words. */
  readonly limit: number;
  readonly limitText: string;
  readonly ticks: readonly number[];
  readonly spoken: string;
}

export interface PositionRow {
  readonly index: number;
  readonly label: string;
  readonly on: boolean;
  readonly watts: string;
  readonly film: string;
  readonly bond: string;
  readonly joint: string;
  readonly body: string;
  readonly filmSide: string;
  readonly secondSide: string;
  readonly amounts: Amounts<'watts' | 'film' | 'bond' | 'joint' | 'body' | 'filmSide' | 'secondSide'>;
  readonly hottest: boolean;
  /** For the chart, in the display unit of temperature. */
  readonly chart: { readonly film: number; readonly joint: number; readonly sink: number | null };
}

export interface SinkRow {
  readonly index: number;
  readonly label: string;
  readonly plate: string;
  readonly heat: string;
  readonly airOut: string;
  readonly resistance: string;
  readonly coefficient: string;
  readonly efficiency: string;
  /** Sheet that faces the sink, and outside of the box behind it. */
  readonly facing: string;
  readonly outside: string;
  readonly amounts: Amounts<
    'plate' | 'heat' | 'airOut' | 'resistance' | 'coefficient' | 'efficiency' | 'facing' | 'outside'
  >;
}

export interface HeatReport {
  readonly sentence: string;
  readonly number: KeyNumber;
  readonly ladder: Ladder;
  readonly positions: readonly PositionRow[];
  readonly sinks: readonly SinkRow[];
  readonly temperatureUnit: string;
  readonly ticks: readonly number[];
  readonly spoken: string;
}

/** One of the two ratings of a label. */
export interface RatingRow {
  readonly key: 'running' | 'stopped';
  /** "with fan", "without fan". */
  readonly label: string;
  readonly total: string;
  readonly each: string;
  /** The least and the most that any resistor carries. */
  readonly amounts: Amounts<'total' | 'least' | 'most'>;
  readonly boundBy: string;
  readonly state: VerdictState;
  /** The present load judged like that, in a word and in a sentence. */
  readonly word: string;
  readonly present: string;
}

export interface ReachedRow {
  readonly key: LimitKey;
  readonly label: string;
  readonly time: string;
  readonly amounts: Amounts<'time'>;
}

export interface TimeRow {
  readonly time: Said;
  /** Under `heads`, the first of which stands over the time. */
  readonly cells: readonly Said[];
}

/** A figure that a maker puts on the box. */
export interface LabelFigure extends Figure {
  /** What it is per part and what bounds it; empty where nothing is to be said. */
  readonly note: string;
}

/** What happens when the fans stop, and what the box may carry without them. */
export interface FanStopReport {
  readonly sentence: string;
  /** `null` where nothing bounds the load without fan. */
  readonly number: KeyNumber | null;
  /** For a label: both ratings and the time to act, in one sentence. */
  readonly label: string;
  /** In which room and with what to spare the ratings hold, where the watts stand beside it; empty without ratings. */
  readonly basis: string;
  /** The same as figures, what bounds each of them below it. */
  readonly figures: readonly LabelFigure[];
  readonly ratings: readonly RatingRow[];
  readonly stopped: VerdictReport;
  /** What limits trust in the answer without fans, beyond what is said of the running box. */
  readonly notes: readonly NoteRow[];
  /** Time to the first limit of a part; `null` where none is passed or there is no answer. */
  readonly act: string | null;
  readonly reached: readonly ReachedRow[];
  readonly chart: LineChart | null;
  readonly heads: readonly string[];
  readonly times: readonly TimeRow[];
}

/** Rated load over the room, and film over the fan's supply. */
export interface DeratingReport {
  readonly sentence: string;
  readonly overAmbient: LineChart;
  readonly overAltitude: LineChart;
  readonly overSupply: LineChart;
}

export interface DriftRow {
  readonly label: string;
  readonly film: string;
  readonly drift: string;
  readonly settled: string;
  readonly amounts: Amounts<'film' | 'drift' | 'settled'>;
}

/** What self-heating does to the resistances, and how long to wait. */
export interface DriftReport {
  readonly sentence: string;
  readonly number: KeyNumber;
  /** How long the box takes to warm up, in a sentence. */
  readonly warmUp: string;
  readonly rows: readonly DriftRow[];
  /** How close counts as settled. */
  readonly within: string;
}

/** The hottest film under a load that comes and goes. */
export interface PulseReport {
  readonly sentence: string;
  readonly chart: LineChart;
}

export interface NoteRow {
  readonly code: string;
  readonly severity: Severity;
  readonly severityWord: string;
  readonly text: string;
}

export type CautionKey =
  | 'practice'
  | 'insulation'
  | 'hotSurfaces'
  | 'fire'
  | 'guard'
  | 'fingerAccess'
  | 'solventCement'
  | 'cutting'
  | 'chips';

export interface Caution {
  readonly key: CautionKey;
  readonly title: string;
  readonly text: string;
}

export interface InputRow {
  readonly label: string;
  readonly value: string;
  /** Drawn with its measures or listed among the limits, so that a page with both need not say it again. */
  readonly elsewhere: boolean;
}

export interface InputGroup {
  readonly part: PartId;
  readonly title: string;
  readonly rows: readonly InputRow[];
}

/** Inputs of one part as a table: the first column names them, the others hold their values. */
export interface InputSheet {
  readonly id: string;
  readonly title: string;
  readonly heads: readonly string[];
  readonly rows: readonly (readonly string[])[];
}

export interface MethodRow {
  readonly id: string;
  readonly title: string;
  readonly equation: string;
  /** Citation and the place in it. */
  readonly source: string;
  /** Number in `sources`. */
  readonly footnote: number;
  readonly range: string;
  /** Where this design stands in that range; a dash where it is not judged. */
  readonly here: string;
  readonly scatter: string;
}

/** Numbered bibliography of what this answer used: methods first, then limits. */
export interface SourceRow {
  readonly number: number;
  readonly key: string;
  readonly cite: string;
  readonly standing: Source['standing'];
  readonly standingWord: string;
}

export interface AssumptionRow {
  readonly key: AssumptionKey;
  readonly says: string;
  readonly ifWrong: string;
  /** Of the model of the box itself, not of one method alone. */
  readonly ofModel: boolean;
}

/**
 * A table as text, with the numbers behind the text: caption, column heads, rows. Twin tables and the terminal show the
 * text, a file of the table takes the numbers.
 */
export interface TextTable {
  readonly id: string;
  readonly caption: string;
  readonly columns: readonly TextColumn[];
  readonly rows: readonly (readonly string[])[];
  /** Like `rows`: no amount behind a cell of words, one behind a number, several behind a range. */
  readonly amounts: readonly (readonly (readonly Amount[])[])[];
}

export interface TextColumn {
  readonly head: string;
  readonly align: 'start' | 'end';
  /** Heads of the single numbers, where a cell says several. */
  readonly parts?: readonly string[];
  /** Its cells are equations, one a line, to be set as such where there is a way. */
  readonly typeset?: true;
}
