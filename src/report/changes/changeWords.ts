import type { ChangeKey, Cost } from '../../studies/changes/change.ts';

interface Words {
  /** What to do, as the beginning of a sentence. */
  readonly does: string;
  /** What is changed, as a name of an edit or of a variant has it. */
  readonly what: string;
  /** What to mind; empty where there is nothing. */
  readonly mind: string;
}

function words(does: string, what: string, mind = ''): Words {
  return { does, what, mind };
}

const thinLine = 'A thinner line insulates less: mind the volts across it.';
const newRow = 'The row grows: collar and wires move.';

export const changeWords: Readonly<Record<ChangeKey, Words>> = {
  sideHalved: words('Halve the side clearance', 'side clearance'),
  sideClosed: words('Close the side clearance', 'side clearance', 'As tight as can be cut.'),
  endHalved: words('Halve the end clearance', 'end clearance'),
  endClosed: words('Close the end clearance', 'end clearance', 'As tight as can be cut.'),
  leakSealed: words('Seal the leak under the baffle', 'leak', 'A bead of sealant or a gasket.'),
  baffleFitted: words('Fit the baffle', 'baffle', 'With the clearances and the slot entered for it.'),
  collarRaised: words('Raise the collar to the top of the fins', 'collar'),
  slotWider: words('Widen the slot', 'slot'),
  plenumHigher: words('Make the plenum higher', 'plenum height'),
  neckGentler: words('Let the neck-down slope less', 'neck-down angle', 'It grows longer for it.'),
  guardWider: words('Take a guard with more open area', 'guard'),
  guardWires: words('Take a guard of round wires', 'guard'),
  guardCleaned: words('Clean the guard', 'dust on the guard', 'Until the next time.'),
  filterCleaned: words('Clean the filter', 'dust in the filter', 'Until the next time.'),
  outletWider: words('Take an outlet grille with more open area', 'outlet'),
  outletWires: words('Take an outlet grille of round wires', 'outlet'),
  fanRated: words('Feed the fan its rated volts', 'fan supply'),
  fanFaster: words('Feed the fan above its rated volts', 'fan supply', 'Ask its maker; it wears sooner.'),
  fanBeside: words('Put one more fan beside', 'fans side by side'),
  fanBehind: words('Put one more fan behind', 'fans in a row'),
  fanRenewed: words('Fit a new fan', 'speed lost to age', 'Until it has aged too.'),
  sagCured: words('Keep the fan’s supply from sagging', 'sag of the fan supply'),
  inletFree: words('Give the fan free space before it', 'free space before the fan'),
  filamentThinner: words('Take a thinner spacer filament', 'filament', thinLine),
  filamentThinnest: words('Take the thinnest spacer filament', 'filament', thinLine),
  voidsHalved: words('Halve the voids in the bonds', 'voids', 'Press, or spread with care.'),
  adhesiveBetter: words(
    'Take an adhesive that conducts better',
    'adhesive',
    'Typical of its kind: look at the data sheet of yours.',
  ),
  adhesiveHotter: words(
    'Take an adhesive that bears more heat',
    'adhesive',
    'Typical of its kind: look at the data sheet of yours.',
  ),
  secondBonded: words('Bond the second face as well', 'second face', 'The leads need another way out.'),
  secondTabs: words('Solder tabs to the second face', 'second face', 'With the tabs entered for it.'),
  tabsThicker: words('Take tabs twice as thick', 'tab thickness'),
  tabsShorter: words('Halve the free length of the tabs', 'tab length'),
  finsMore: words('Take more fins', 'fins'),
  finsFewer: words('Take fewer fins', 'fins'),
  finsThicker: words('Take thicker fins', 'fin thickness'),
  finsThinner: words('Take thinner fins', 'fin thickness'),
  finsHigher: words('Take higher fins', 'fin height', newRow),
  sinkLonger: words('Take longer sinks', 'fin length', 'The box grows higher.'),
  sinkWider: words('Take wider sinks', 'sink width', 'As many fins more as fit.'),
  plateThicker: words('Take thicker plates', 'plates', newRow),
  plateThinner: words('Take thinner plates', 'plates'),
  alloyBetter: words('Take an alloy that conducts better', 'alloy'),
  copper: words('Take copper sinks', 'alloy', 'Three times the weight, and slow to cut.'),
  surfaceBlack: words('Have the sinks anodised black', 'emissivity', 'Mask the faces that are bonded.'),
  firstSink: words('Add a sink before the first resistor', 'first sink', newRow),
  lastSink: words('Add a sink after the last resistor', 'last sink', newRow),
  flipAlternate: words('Turn every second resistor round', 'every second turned'),
  flipOutward: words('Turn one half of the row round', 'half the row turned'),
  flipHottest: words('Turn the hottest resistor round', 'hottest turned'),
  spreadEvenly: words('Spread the load evenly', 'load spread'),
  moveWatts: words('Move watts to the coolest resistor', 'watts moved'),
  swapPlaces: words('Let the hottest and the coolest change places', 'places changed'),
  lessLoad: words('Lower the load by a tenth', 'load', 'The last resort.'),
};

interface CostWords {
  /** In a list. */
  readonly short: string;
  /** After "for". */
  readonly phrase: string;
}

export const costWords: Readonly<Record<Cost, CostWords>> = {
  cut: { short: 'cut', phrase: 'a new cut' },
  buy: { short: 'buy', phrase: 'a part to buy' },
  assemble: { short: 'assembly', phrase: 'work at assembly' },
  setting: { short: 'setting', phrase: 'another setting' },
  clean: { short: 'cleaning', phrase: 'a cleaning' },
  place: { short: 'another place', phrase: 'another place for the box' },
  split: { short: 'another split', phrase: 'another split of the load' },
  less: { short: 'less load', phrase: 'less load' },
  louder: { short: 'louder', phrase: 'more sound' },
};
