/** Stefan–Boltzmann constant, CODATA 2018 (exact since the SI of 2019). */
export const stefanBoltzmann_WPerM2K4 = 5.670374419e-8;
