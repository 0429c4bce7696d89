/**
 * Bibliography: key → citation. `standing` says how far the source was seen by the authors of this code:
 * `read` the passage itself; `through` a public re-computation or library documentation of it; `memory` handbook
 * knowledge not seen; `computed` an independent computation of our own; `practice` common practice without a source.
 */
export interface Source {
  readonly cite: string;
  readonly standing: 'read' | 'through' | 'memory' | 'computed' | 'practice';
}

export const sources = {
  iso2533: {
    cite: 'ISO 2533:1975 Standard atmosphere; U.S. Standard Atmosphere 1976 (NOAA-S/T 76-1562)',
    standing: 'memory',
  },
  ussa1976: {
    cite: 'U.S. Standard Atmosphere 1976: Sutherland viscosity and conductivity of air; as coded in the Python library fluids 1.0.22',
    standing: 'through',
  },
  alduchovEskridge1996: {
    cite: 'Alduchov & Eskridge 1996, J. Appl. Meteorol. 35, 601–609 (Magnus form)',
    standing: 'memory',
  },
  airHandbook: { cite: 'Handbook tables of dry air at one atmosphere', standing: 'memory' },
  shahLondon1978: { cite: 'Shah & London 1978, Laminar Flow Forced Convection in Ducts', standing: 'memory' },
  shah1978: { cite: 'Shah 1978, ASME J. Fluids Eng. 100, 177–179 (apparent friction)', standing: 'memory' },
  muzychkaYovanovich2004: {
    cite: 'Muzychka & Yovanovich 2004, ASME J. Heat Transfer 126, 54–61',
    standing: 'memory',
  },
  muzychkaYovanovich2009: {
    cite: 'Muzychka & Yovanovich 2009, ASME J. Fluids Eng. 131, 041105 (composite apparent friction)',
    standing: 'memory',
  },
  teertstra2000: {
    cite: 'Teertstra, Yovanovich & Culham 2000, J. Electronics Manufacturing 10, 253–262 (plate-fin composite)',
    standing: 'memory',
  },
  stephan1959: { cite: 'Stephan 1959, Chem. Ing. Tech. 31, 773–778', standing: 'memory' },
  gnielinski1976: { cite: 'Gnielinski 1976, Int. Chem. Eng. 16, 359–368', standing: 'memory' },
  haaland1983: { cite: 'Haaland 1983, ASME J. Fluids Eng. 105, 89–90', standing: 'through' },
  kaysLondon: { cite: 'Kays & London 1984, Compact Heat Exchangers, 3rd ed.', standing: 'memory' },
  idelchik: {
    cite: 'Idelchik, Handbook of Hydraulic Resistance; as given in the Modelica Standard Library documentation',
    standing: 'through',
  },
  blevins1984: {
    cite: 'Blevins 1984, Applied Fluid Dynamics Handbook; as coded in fluids 1.0.22',
    standing: 'through',
  },
  rennels2012: { cite: 'Rennels & Hudson 2012, Pipe Flow; as coded in fluids 1.0.22', standing: 'through' },
  bordaCarnot: {
    cite: 'Borda–Carnot sudden expansion; any fluid mechanics text, checked with fluids 1.0.22',
    standing: 'through',
  },
  white2016: { cite: 'White, Fluid Mechanics (sudden contraction 0.42(1 − σ²))', standing: 'memory' },
  douglasFluids: {
    cite: 'Douglas, Fluid Mechanics, ex. 9.6 (fan laws); re-computed from a public textbook companion',
    standing: 'through',
  },
  cpemmaFanLaws: {
    cite: 'Public hobby page on fan speed and noise (log-law of sound over speed)',
    standing: 'read',
  },
  todiniPilati1988: {
    cite: 'Todini & Pilati 1988, A gradient algorithm for the analysis of pipe networks, in Computer Applications in Water Supply 1',
    standing: 'memory',
  },
  incropera: {
    cite: 'Incropera, DeWitt, Bergman & Lavine, Fundamentals of Heat and Mass Transfer, 6th ed.; public textbook companion',
    standing: 'through',
  },
  cengel: {
    cite: 'Çengel, Heat and Mass Transfer: A Practical Approach; public textbook companion',
    standing: 'through',
  },
  lienhard: {
    cite: 'Lienhard & Lienhard, A Heat Transfer Textbook; public textbook companion',
    standing: 'through',
  },
  bejanSciubba1992: {
    cite: 'Bejan & Sciubba 1992, Int. J. Heat Mass Transfer 35, 3259–3264 (abstract)',
    standing: 'read',
  },
  lee1995: {
    cite: 'Lee, Song, Au & Moran 1995, ASME/JSME Thermal Eng. Conf. 4, 199–206 (constriction/spreading)',
    standing: 'memory',
  },
  muzychkaSpreading: {
    cite: 'Yovanovich, Muzychka & Culham 1999, J. Thermophys. Heat Transfer 13, 495–500 (rectangular flux channel)',
    standing: 'memory',
  },
  chipConvention: {
    cite: 'Straight-line derating of chip resistors between full-power and zero-power temperature',
    standing: 'practice',
  },
  interpackBond2007: {
    cite: 'InterPACK2007 p. 381: adhesives tested to ASTM D5470 (abstract)',
    standing: 'read',
  },
  barCohenRohsenow1984: {
    cite: 'Bar-Cohen & Rohsenow 1984, J. Heat Transfer 106, 116–123; as given in Çengel & Ghajar §9-4',
    standing: 'through',
  },
  elenbaas1942: { cite: 'Elenbaas 1942, Physica 9, 1–28', standing: 'memory' },
  churchillChu1975: {
    cite: 'Churchill & Chu 1975, Int. J. Heat Mass Transfer 18, 1323–1329',
    standing: 'through',
  },
  stefanBoltzmann: { cite: 'Stefan–Boltzmann law; CODATA 2018 constant', standing: 'memory' },
  siegelHowell: {
    cite: 'Siegel & Howell, Thermal Radiation Heat Transfer (crossed strings, grey enclosures)',
    standing: 'memory',
  },
  kubelkaMunk1931: {
    cite: 'Kubelka & Munk 1931, Z. tech. Phys. 12, 593–601 (two streams of radiation over a backing)',
    standing: 'memory',
  },
  carslawJaeger1959: { cite: 'Carslaw & Jaeger 1959, Conduction of Heat in Solids', standing: 'memory' },
  iec62368: { cite: 'IEC 62368-1 touch temperature limits (TS1)', standing: 'memory' },
  materialHandbook: { cite: 'Handbook values of solids and plastics', standing: 'memory' },
  crawford1998: {
    cite: 'Crawford 1998, Plastics Engineering, 3rd ed., table 1.8, thermal properties of materials (public copy of the page)',
    standing: 'read',
  },
  aluminumAssociation: {
    cite: 'Aluminum Association, typical properties of wrought alloys; as given in public alloy data sheets',
    standing: 'through',
  },
  wroughtProfiles: {
    cite: 'Public data sheets of extruded profiles, EN AW-6060 and EN AW-6082 (physical properties, approximate values)',
    standing: 'read',
  },
  materialsDatabase: {
    cite: 'makeitfrom.com, public database of materials',
    standing: 'read',
  },
  copperData: {
    cite: 'Copper Development Association, properties of copper alloys; as given in public alloy data sheets',
    standing: 'through',
  },
  thome2008: {
    cite: 'Thome 2008, lecture on radiative heat transfer, table of total emittances (public extract)',
    standing: 'through',
  },
  solderTable: {
    cite: 'alasir.com, reference table of solder alloys: melting ranges and conductivities',
    standing: 'read',
  },
  chipSizeTable: {
    cite: 'knutsson.dk, table of size codes of chip parts; the codes are those of IEC 60115-8',
    standing: 'read',
  },
  sarvar1990: {
    cite: 'Sarvar, Poole & Witting 1990, J. Electronic Materials 19, 1345–1350 (abstract): laminate of type FR-4',
    standing: 'read',
  },
  petrieAdhesives: {
    cite: 'Petrie, Handbook of Adhesives and Sealants, table 9.6, conductivity of filled adhesives (public copy of the page)',
    standing: 'read',
  },
  crcGlasses: {
    cite: 'CRC Handbook of Chemistry and Physics, thermal conductivity of glasses (public copy of the page)',
    standing: 'read',
  },
  microwaveEncyclopedia: {
    cite: 'microwaves101.com, encyclopedia: aluminium nitride',
    standing: 'read',
  },
  nistCryogenics: {
    cite: 'NIST, cryogenic material properties: G-10 glass and epoxy, fitted up to 300 K',
    standing: 'read',
  },
  iso10456: {
    cite: 'EN ISO 10456, design values of building materials: plywood of 700 kg/m³',
    standing: 'memory',
  },
  wireGauge: {
    cite: 'American (Brown & Sharpe) gauge: 0.005 in × 92^((36 − n)/39), ASTM B258',
    standing: 'memory',
  },
  hairerWanner1996: {
    cite: 'Hairer & Wanner, Solving Ordinary Differential Equations II (1996), extrapolation methods',
    standing: 'memory',
  },
  ownComputation: {
    cite: 'Independent computation by the authors (boundary-layer marching, collocation, Fourier series)',
    standing: 'computed',
  },
  ohmJoule: { cite: 'Ohm’s and Joule’s laws; any electrical text', standing: 'memory' },
  commonPractice: { cite: 'Common practice, no source', standing: 'practice' },
} as const satisfies Record<string, Source>;

export type SourceKey = keyof typeof sources;
