import type { Design } from '../../model/design.ts';
import { fieldAt } from '../../model/fields.ts';
import type { Settings } from '../../studies/changes/change.ts';
import { isLast, type Tried } from '../../studies/changes/tried.ts';
import type { Amounts, Said } from '../amount.ts';
import { amount, quantity, unitOf } from '../format.ts';
import { amountOf, saidAs, saidTemperature, withAmounts } from '../said.ts';
import type { UnitSystem, VerdictState } from '../types.ts';
import { verdictWords } from '../wording.ts';
import { capital, fixed, kelvins } from '../words.ts';
import { changeDetail } from './changeDetail.ts';
import { changeWords, costWords } from './changeWords.ts';

type Numbers = 'gain' | 'film' | 'sound' | 'flow';

/** One change in words, with what it takes to make it. */
export interface ChangeRow {
  readonly key: string;
  /** "Close the side clearance". */
  readonly does: string;
  /** "0.8 mm → 0.2 mm". */
  readonly detail: string;
  /** Kelvin at the limit that counts, and at the hottest film; a minus is hotter. The film itself where there was no answer. */
  readonly gain: string;
  readonly film: string;
  readonly sound: string;
  readonly flow: string;
  readonly amounts: Amounts<Numbers>;
  readonly state: VerdictState;
  /** The verdict with this change. */
  readonly word: string;
  /** "cut", "buy, louder". */
  readonly costs: string;
  readonly mind: string;
  /** Less load: it stands behind all that change the box. */
  readonly isLast: boolean;
  readonly values: Settings;
  /** What the edit is called on the bench. */
  readonly edit: string;
  /** What a variant is called that has it. */
  readonly variant: string;
}

const nothing = '–';

export function changeRow(design: Design, tried: Tried, system: UnitSystem): ChangeRow {
  const { key, values, costs, after, gain } = tried;
  const { does, what, mind } = changeWords[key];
  const detail = changeDetail(design, tried, system);
  const state = after.ok ? after.state : 'noAnswer';
  const none = (unit: string): Said => ({ text: nothing, value: null, unit });
  return {
    key,
    does,
    detail: detail.text,
    ...withAmounts({
      gain: gain ? saidKelvins(gain.limit_K, system) : filmWith(after, system),
      film: gain ? saidKelvins(gain.film_K, system) : none(unitOf('temperatureDifference', system)),
      sound: gain ? saidDecibels(gain.sound_dB) : none('dB'),
      flow: gain ? saidFlow(gain.flow_m3PerS, after, system) : none(unitOf('volumeFlow', system)),
    }),
    state,
    word: verdictWords[state],
    costs: costs.map((cost) => costWords[cost].short).join(', '),
    mind,
    isLast: isLast(tried),
    values,
    edit: capital([what, detail.text].join(detail.text.includes('→') ? ' ' : ', ')),
    variant: variantName([what, detail.to].filter(Boolean).join(' ')),
  };
}

/** Where there was no answer there is no gain to tell, but where it comes to. */
function filmWith(after: Tried['after'], system: UnitSystem): Said {
  return after.ok
    ? saidTemperature(after.outputs.film_K, system)
    : saidAs(nothing, null, 'temperature', system);
}

/** As long as the field for it lets it be. */
export function variantName(text: string): string {
  const field = fieldAt('variant');
  const longest = field.kind === 'text' ? field.longest : text.length;
  const tidy = text.replaceAll('\u202f', ' ');
  return tidy.length <= longest ? tidy : `${tidy.slice(0, longest - 1).trimEnd()}…`;
}

/** To a tenth; what is less than half of that is nothing. */
export function saidKelvins(dT_K: number, system: UnitSystem): Said {
  const text = kelvins(dT_K, system, 1);
  const isNothing = Number(amount(dT_K, 'temperatureDifference', system).toFixed(1)) === 0;
  return saidAs(isNothing ? nothing : text, dT_K, 'temperatureDifference', system);
}

function saidDecibels(sound_dB: number): Said {
  const text = Math.abs(sound_dB) < 0.05 ? nothing : `${signOf(sound_dB)}${fixed(sound_dB, 1)}\u202fdB`;
  return { text, value: sound_dB, unit: 'dB' };
}

/** Of all the air; less is nothing to tell. */
const leastFlow = 0.002;

function saidFlow(flow_m3PerS: number, after: Tried['after'], system: UnitSystem): Said {
  const size = quantity(Math.abs(flow_m3PerS), 'volumeFlow', system, 2);
  const isNothing = !after.ok || Math.abs(flow_m3PerS) < leastFlow * Math.abs(after.outputs.flow_m3PerS);
  return {
    text: isNothing ? nothing : `${flow_m3PerS < 0 ? '−' : '+'}${size}`,
    ...amountOf(flow_m3PerS, 'volumeFlow', system),
  };
}

function signOf(value: number): string {
  return value > 0 ? '+' : '';
}
