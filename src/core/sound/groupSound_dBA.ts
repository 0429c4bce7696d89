import { soundAtDistance_dBA } from './soundAtDistance_dBA.ts';
import { soundAtSpeed_dBA } from './soundAtSpeed_dBA.ts';
import { soundSum_dBA } from './soundSum_dBA.ts';

/** Equal fans as a source of sound. */
export interface SoundSource {
  /** Of one at rated speed, at the distance its data sheet gives it for. */
  readonly sound_dBA: number;
  readonly soundAt_m: number;
  /** 0 stands still, and makes none. */
  readonly speedRatio: number;
  readonly count: number;
}

/**
 * Level of all fans at the listener: each at its speed, from the distance of its data sheet to the listener's, energies added.
 * Their being apart counts for nothing, nor does the box around them. Silence is 0 dB here.
 */
export function groupSound_dBA(sources: readonly SoundSource[], listening_m: number): number {
  return soundSum_dBA(
    sources.flatMap(({ sound_dBA, soundAt_m, speedRatio, count }) => {
      if (!(speedRatio > 0)) return [];
      const one = soundAtDistance_dBA(soundAtSpeed_dBA(sound_dBA, speedRatio), soundAt_m, listening_m);
      return [one + 10 * Math.log10(count)];
    }),
  );
}
