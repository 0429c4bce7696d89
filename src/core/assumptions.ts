/** Plain-language assumptions: what the model takes for granted, and which way the answer moves if that is wrong. */
export const assumptions = {
  dryIdealGas: { says: 'Air is an ideal gas.', ifWrong: 'Below 0.1 % in this range of pressure.' },
  smoothWall: {
    says: 'Channel walls are smooth.',
    ifWrong: 'Rough, milled walls cost more pressure once the flow is turbulent.',
  },
  uniformInlet: {
    says: 'Air enters every channel evenly, without swirl.',
    ifWrong: 'Swirl behind a fan raises heat transfer a little and pressure loss more.',
  },
  uniformWallTemperature: {
    says: 'Each sink plate has one temperature.',
    ifWrong:
      'Thin plates under a small chip are hotter near the chip; the spreading resistance carries that.',
  },
  uniformFlux: {
    says: 'Heat leaves the wall evenly along the channel.',
    ifWrong: 'A few per cent either way.',
  },
  incompressible: { says: 'Density is constant along one passage.', ifWrong: 'Below 1 % under 1 kPa.' },
  steady: { says: 'Everything has settled.', ifWrong: 'During warm-up parts are cooler than stated.' },
  tipAdiabatic: {
    says: 'No heat leaves the tip of a fin beyond the corrected length.',
    ifWrong: 'Below 1 % for thin fins.',
  },
  oneDimensionalFin: {
    says: 'A fin is at one temperature across its thickness.',
    ifWrong: 'Below 1 % while h·t/k is below 0.01.',
  },
  evenFeed: {
    says: 'The plenum feeds the whole row evenly.',
    ifWrong: 'A fast stream in the plenum starves the sinks nearest the fan.',
  },
  gapAirMixed: {
    says: 'Air in a gap beside the sinks takes heat as still air would, by conduction.',
    ifWrong: 'Air that has just come in takes more; the sinks are a little cooler than stated.',
  },
  quietPlenum: {
    says: 'Air outside the warm column is as cold as the room.',
    ifWrong: 'Where the room warms up, everything in it does.',
  },
  sheetAsHotAsSink: {
    says: 'The sheet round the bank is as hot as the hottest plate of a sink.',
    ifWrong: 'The sheet is cooler than stated wherever air or a gap stands between.',
  },
  shellBesideBank: {
    says: 'Only the walls beside the sinks and the openings above them give off heat.',
    ifWrong: 'Everything is a little cooler than stated.',
  },
  identicalSinks: {
    says: 'All sinks of the row are alike, straight and clean.',
    ifWrong: 'A crooked or clogged sink gets less air and is hotter than its neighbours.',
  },
  evenSeat: {
    says: 'Baffle and collar sit evenly, gaps everywhere as stated.',
    ifWrong: 'A seat that gapes on one side leaks more than the mean width tells.',
  },
  noStirring: {
    says: 'Streams mix above the bank only.',
    ifWrong: 'Air that crosses between fins and gaps evens temperatures out by a little.',
  },
  lyingDraught: {
    says: 'A draught works on the plumb height alone; lying fins have none.',
    ifWrong:
      'Without fans, lying fins still breathe a little through their open ends and are cooler than stated.',
  },
  nothingWonBack: {
    says: 'Jets leaving the fins lose their dynamic head in the room.',
    ifWrong: 'The fan delivers slightly more than stated.',
  },
  ownDynamicHead: {
    says: 'Passages share the pressure below and above the bank, and each pays its own dynamic head.',
    ifWrong: 'The share through the fins moves by a few hundredths.',
  },
  turbulentLoss: {
    says: 'The loss coefficient does not depend on the Reynolds number.',
    ifWrong: 'At low flow real losses are higher.',
  },
  fanLaws: {
    says: 'The fan follows the fan laws in speed and density.',
    ifWrong: 'Small fans deviate a few per cent far from rated speed.',
  },
  speedFollowsVoltage: {
    says: 'Fan speed is proportional to its voltage.',
    ifWrong: 'About 5 % between half and full voltage.',
  },
  perfectBond: {
    says: 'The bond line has one thickness, set by its filament, and the stated void share.',
    ifWrong: 'A thicker or voided bond is hotter in proportion.',
  },
  straightHeatFlow: {
    says: 'Heat crosses a layer straight, at right angles.',
    ifWrong: 'Beside a wide layer the edges carry a little more heat than stated.',
  },
  peakSpreading: {
    says: 'The chip sees the peak, not the mean, of the constriction under it.',
    ifWrong: 'The film is a few tenths of a kelvin cooler than stated.',
  },
  centredSource: {
    says: 'The chip sits in the middle of its plate.',
    ifWrong: 'A chip near an edge is hotter by about a third of its spreading rise.',
  },
  tabWithoutLoss: {
    says: 'Tabs and pins lose no heat to the air on their way.',
    ifWrong: 'Joints are slightly cooler than stated.',
  },
  evenFilmHeat: {
    says: 'The film is heated evenly.',
    ifWrong: 'A trimmed film has hot spots beside the trim cut.',
  },
  ratedByTemperature: {
    says: 'The part follows its straight derating line.',
    ifWrong: 'Ask the maker of the part.',
  },
  pointSource: {
    says: 'Sound spreads freely from a point.',
    ifWrong: 'Walls and tables add a few decibels.',
  },
  greyDiffuse: {
    says: 'Surfaces radiate evenly in all directions at one emissivity.',
    ifWrong: 'Small beside the emissivity itself.',
  },
  isothermalPlate: { says: 'The surface has one temperature.', ifWrong: 'A few per cent.' },
  stillRoom: { says: 'The room air is still.', ifWrong: 'Draughts cool more.' },
  lumped: {
    says: 'Each part has one temperature at a time.',
    ifWrong: "Pulses shorter than a part's own time constant are judged separately.",
  },
  longGroove: {
    says: 'A fin channel is long beside its gap, so its ends do not matter.',
    ifWrong: 'Short channels radiate a little more than stated.',
  },
  steadyProperties: {
    says: 'Conductances and heat capacities stay the same while time runs.',
    ifWrong: 'Radiation and free convection grow with temperature, so real parts warm a little less.',
  },
  deepSolid: {
    says: 'The pulse ends before its heat has crossed the layer.',
    ifWrong: 'Once heat meets a poorer layer behind, the surface is hotter than stated.',
  },
} as const satisfies Record<string, { says: string; ifWrong: string }>;

export type AssumptionKey = keyof typeof assumptions;
