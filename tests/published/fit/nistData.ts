/** One problem of the Statistical Reference Datasets of NIST, as issued. */
export interface Reference {
  readonly name: string;
  readonly difficulty: 'lower' | 'higher';
  readonly model: (b: Float64Array, x: number) => number;
  readonly starts: readonly (readonly number[])[];
  /** Certified, as printed. */
  readonly parameters: readonly string[];
  readonly deviations: readonly string[];
  readonly sumOfSquares: string;
  /** y and x in turn. */
  readonly data: string;
}

const at = (b: Float64Array, i: number) => b[i] as number;

// Source of all numbers: NIST/ITL Statistical Reference Datasets, nonlinear regression,
// https://www.itl.nist.gov/div898/strd/nls/nls_main.shtml (files of the names below, public domain).
export const references: readonly Reference[] = [
  {
    // Misra, D., NIST (1978), dental research: volume over pressure of an adsorbed layer.
    name: 'Misra1a',
    difficulty: 'lower',
    model: (b, x) => at(b, 0) * (1 - Math.exp(-at(b, 1) * x)),
    starts: [
      [500, 0.0001],
      [250, 0.0005],
    ],
    parameters: ['2.3894212918E+02', '5.5015643181E-04'],
    deviations: ['2.7070075241E+00', '7.2668688436E-06'],
    sumOfSquares: '1.2455138894E-01',
    data: `10.07 77.6 14.73 114.9 17.94 141.1 23.93 190.8 29.61 239.9 35.18 289.0 40.02 332.8 44.82 378.4
      50.76 434.8 55.05 477.3 61.01 536.8 66.40 593.1 75.47 689.1 81.78 760.0`,
  },
  {
    // Thurber, R., NIST (197?), semiconductor electron mobility over the logarithm of density.
    name: 'Thurber',
    difficulty: 'higher',
    model: (b, x) =>
      (at(b, 0) + x * (at(b, 1) + x * (at(b, 2) + x * at(b, 3)))) /
      (1 + x * (at(b, 4) + x * (at(b, 5) + x * at(b, 6)))),
    starts: [
      [1000, 1000, 400, 40, 0.7, 0.3, 0.03],
      [1300, 1500, 500, 75, 1, 0.4, 0.05],
    ],
    parameters: [
      '1.2881396800E+03',
      '1.4910792535E+03',
      '5.8323836877E+02',
      '7.5416644291E+01',
      '9.6629502864E-01',
      '3.9797285797E-01',
      '4.9727297349E-02',
    ],
    deviations: [
      '4.6647963344E+00',
      '3.9571156086E+01',
      '2.8698696102E+01',
      '5.5675370270E+00',
      '3.1333340687E-02',
      '1.4984928198E-02',
      '6.5842344623E-03',
    ],
    sumOfSquares: '5.6427082397E+03',
    data: `80.574 -3.067 84.248 -2.981 87.264 -2.921 87.195 -2.912 89.076 -2.840 89.608 -2.797 89.868 -2.702
      90.101 -2.699 92.405 -2.633 95.854 -2.481 100.696 -2.363 101.060 -2.322 401.672 -1.501 390.724 -1.460
      567.534 -1.274 635.316 -1.212 733.054 -1.100 759.087 -1.046 894.206 -0.915 990.785 -0.714
      1090.109 -0.566 1080.914 -0.545 1122.643 -0.400 1178.351 -0.309 1260.531 -0.109 1273.514 -0.103
      1288.339 0.010 1327.543 0.119 1353.863 0.377 1414.509 0.790 1425.208 0.963 1421.384 1.006
      1442.962 1.115 1464.350 1.572 1468.705 1.841 1447.894 2.047 1457.628 2.200`,
  },
  {
    // Kowalik & Osborne (1978), generated data; a false least sum lies at infinity.
    name: 'MGH09',
    difficulty: 'higher',
    model: (b, x) => (at(b, 0) * (x * x + x * at(b, 1))) / (x * x + x * at(b, 2) + at(b, 3)),
    starts: [
      [25, 39, 41.5, 39],
      [0.25, 0.39, 0.415, 0.39],
    ],
    parameters: ['1.9280693458E-01', '1.9128232873E-01', '1.2305650693E-01', '1.3606233068E-01'],
    deviations: ['1.1435312227E-02', '1.9633220911E-01', '8.0842031232E-02', '9.0025542308E-02'],
    sumOfSquares: '3.0750560385E-04',
    data: `1.957000E-01 4.000000E+00 1.947000E-01 2.000000E+00 1.735000E-01 1.000000E+00
      1.600000E-01 5.000000E-01 8.440000E-02 2.500000E-01 6.270000E-02 1.670000E-01
      4.560000E-02 1.250000E-01 3.420000E-02 1.000000E-01 3.230000E-02 8.330000E-02
      2.350000E-02 7.140000E-02 2.460000E-02 6.250000E-02`,
  },
  {
    // Eckerle, K., NIST (197?), transmittance over wavelength.
    name: 'Eckerle4',
    difficulty: 'higher',
    model: (b, x) => (at(b, 0) / at(b, 1)) * Math.exp(-0.5 * ((x - at(b, 2)) / at(b, 1)) ** 2),
    starts: [
      [1, 10, 500],
      [1.5, 5, 450],
    ],
    parameters: ['1.5543827178E+00', '4.0888321754E+00', '4.5154121844E+02'],
    deviations: ['1.5408051163E-02', '4.6803020753E-02', '4.6800518816E-02'],
    sumOfSquares: '1.4635887487E-03',
    data: `0.0001575 400 0.0001699 405 0.0002350 410 0.0003102 415 0.0004917 420 0.0008710 425 0.0017418 430
      0.0046400 435 0.0065895 436.5 0.0097302 438 0.0149002 439.5 0.0237310 441 0.0401683 442.5
      0.0712559 444 0.1264458 445.5 0.2073413 447 0.2902366 448.5 0.3445623 450 0.3698049 451.5
      0.3668534 453 0.3106727 454.5 0.2078154 456 0.1164354 457.5 0.0616764 459 0.0337200 460.5
      0.0194023 462 0.0117831 463.5 0.0074357 465 0.0022732 470 0.0008800 475 0.0004579 480
      0.0002345 485 0.0001586 490 0.0001143 495 0.0000710 500`,
  },
];
