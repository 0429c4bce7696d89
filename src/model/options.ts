import type { Design } from './design.ts';

type Option =
  | Design['load']['excitation']
  | Design['parts'][number]['deratedBy']
  | Design['outlet']['kind']
  | Design['secondFace']['way']
  | Design['room']['pressureFrom']
  | Design['moreFans'][number]['place']
  | Design['extras'][number]['place']
  | Design['cutting']['joint']
  | Design['spreads'][number]['kind']
  | Design['readings']['temperatures'][number]['where'];

const labels: Readonly<Record<Option, string>> = {
  wattsEach: 'watts for each resistor',
  seriesVolts: 'in series, volts across the string',
  seriesAmps: 'in series, amps through the string',
  parallelVolts: 'in parallel, volts across the set',
  parallelAmps: 'in parallel, amps into the set',
  switched: 'each switched across the supply',
  terminals: 'terminal temperature',
  air: 'air temperature',
  film: 'film limit only',
  none: 'none',
  wire: 'round wires',
  punched: 'punched sheet',
  square: 'square-edged bars',
  ownLoss: 'own loss coefficient',
  tabs: 'tabs soldered to the terminals',
  bonded: 'bonded like the first face',
  free: 'free',
  altitude: 'altitude',
  barometer: 'barometer',
  beside: 'beside the others',
  behind: 'behind the others',
  inlet: 'before the fan',
  plenum: 'in the plenum',
  outlet: 'at the outlet',
  butt: 'butt joints',
  slotted: 'tabs and slots',
  normal: 'normal',
  lognormal: 'skewed (lognormal)',
  uniform: 'even',
  triangular: 'triangular',
  tolerance: 'even within the tolerance',
  onFilm: 'film',
  onTerminal: 'terminal',
  onSink: 'sink',
  onSheet: 'sheet, outside',
  inExhaust: 'exhaust air',
};

/** Plain words for a value that a choice stores. */
export function labelOfOption(option: string): string {
  if (!isOption(option)) throw new Error(`no option ${option}`);
  return labels[option];
}

function isOption(option: string): option is Option {
  return Object.hasOwn(labels, option);
}
