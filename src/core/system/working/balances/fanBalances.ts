import { defineBalance } from '../balance.ts';

/** Between the fan methods. */
export const fanWatts = defineBalance({
  id: 'fanWatts',
  title: 'Watts of fans at their speed',
  equation: 'P = z·P_r·n³',
  result: { name: 'watts of the fans', variable: 'power_W', symbol: 'P' },
  symbols: { count: 'z', rated_W: 'P_r', speedRatio: 'n' },
  words: { count: 'how many', rated_W: 'watts of one at rated speed', speedRatio: 'speed over rated speed' },
  assumes: ['fanLaws'],
  evaluate: ({ count, rated_W, speedRatio: n }) => rated_W * count * n * n * n,
});

export const flowOfOne = defineBalance({
  id: 'flowOfOne',
  title: 'Flow through one fan',
  equation: 'Q_1 = Q/m',
  result: { name: 'flow through one fan', variable: 'flow_m3PerS', symbol: 'Q_1' },
  symbols: { flow_m3PerS: 'Q', sideBySide: 'm' },
  words: { flow_m3PerS: 'flow through all', sideBySide: 'fans side by side' },
  evaluate: ({ flow_m3PerS, sideBySide }) => flow_m3PerS / sideBySide,
});

export const flowAtRated = defineBalance({
  id: 'flowAtRated',
  title: 'The same place on the curve at rated speed',
  equation: 'Q_0 = Q/(F·n)',
  result: { name: 'flow on the curve', variable: 'flow_m3PerS', symbol: 'Q_0' },
  symbols: { flow_m3PerS: 'Q', factor: 'F', speedRatio: 'n' },
  words: {
    flow_m3PerS: 'flow through the fan',
    factor: 'factor on the fan’s flow, 1 where nothing was fitted or drawn',
    speedRatio: 'speed over rated speed',
  },
  assumes: ['fanLaws'],
  evaluate: ({ flow_m3PerS, factor, speedRatio }) => flow_m3PerS / (factor * speedRatio),
});

export const sharedByFans = defineBalance({
  id: 'sharedByFans',
  title:
    'What one fan among different ones does: all front fans at one pressure, halved in upon until flows add up',
  equation: 'Q_1 = Q_s',
  result: { name: 'flow through one fan', variable: 'flow_m3PerS', symbol: 'Q_1' },
  symbols: { shared_m3PerS: 'Q_s' },
  words: { shared_m3PerS: 'flow found by halving' },
  evaluate: ({ shared_m3PerS }) => shared_m3PerS,
});

export const pressureByFans = defineBalance({
  id: 'pressureByFans',
  title: 'Pressure of one fan among different ones, at its flow',
  equation: 'p_1 = p_s',
  result: { name: 'pressure of one fan', variable: 'dp_Pa', symbol: 'p_1' },
  symbols: { shared_Pa: 'p_s' },
  words: { shared_Pa: 'pressure found by halving, at the density of the room' },
  evaluate: ({ shared_Pa }) => shared_Pa,
});

export const freeDelivery = defineBalance({
  id: 'freeDelivery',
  title: 'Free delivery of all fans together',
  equation: 'Q_f = F·Q_e',
  result: { name: 'free delivery', variable: 'flow_m3PerS', symbol: 'Q_f' },
  symbols: { factor: 'F', end_m3PerS: 'Q_e' },
  words: {
    factor: 'factor on the fan’s flow, 1 where nothing was fitted or drawn',
    end_m3PerS: 'flow at which the joined curve of all fans has no pressure left',
  },
  evaluate: ({ factor, end_m3PerS }) => factor * end_m3PerS,
});

export const turns = defineBalance({
  id: 'turns',
  title: 'Turns of a fan',
  equation: 'N = n·N_r',
  result: { name: 'turns', variable: 'rotation_PerS', symbol: 'N' },
  symbols: { speedRatio: 'n', rated_PerS: 'N_r' },
  words: { speedRatio: 'speed over rated speed', rated_PerS: 'turns at rated voltage' },
  evaluate: ({ speedRatio, rated_PerS }) => rated_PerS * speedRatio,
});

export const soundEnergy = defineBalance({
  id: 'soundEnergy',
  title: 'Sound energy of fans of one kind, added to what was there',
  equation: 'E = E_0 + z·10^(L/10)',
  result: { name: 'sound energy over that of silence', variable: 'energy', symbol: 'E' },
  symbols: { before: 'E_0', count: 'z', level_dBA: 'L' },
  words: {
    before: 'energy of the kinds before',
    count: 'how many',
    level_dBA: 'level of one at the listener',
  },
  assumes: ['pointSource'],
  evaluate: ({ before, count, level_dBA }) => before + count * 10 ** (level_dBA / 10),
});

export const silence = defineBalance({
  id: 'silence',
  title: 'No fan turns',
  equation: 'L = 0',
  result: { name: 'sound level', variable: 'level_dBA', symbol: 'L' },
  symbols: {},
  evaluate: () => 0,
});

export const nearestWall = defineBalance({
  id: 'nearestWall',
  title: 'Room to the nearest wall, before or behind the fan',
  equation: 's = min(s_1, s_2)',
  result: { name: 'room', variable: 'space_m', symbol: 's' },
  symbols: { inlet_m: 's_1', outlet_m: 's_2' },
  words: { inlet_m: 'free space before the inlet', outlet_m: 'free space behind the fan' },
  evaluate: ({ inlet_m, outlet_m }) => Math.min(inlet_m, outlet_m),
});

export const standingLoss = defineBalance({
  id: 'standingLoss',
  title: 'Velocity heads of all fans at a stand',
  equation: 'K = (A/A_e)²',
  result: { name: 'loss coefficient on the rings of the first kind', variable: 'loss', symbol: 'K' },
  symbols: { rings_m2: 'A', equal_m2: 'A_e' },
  words: {
    rings_m2: 'area between hub and rim, of all fans of the first kind side by side',
    equal_m2:
      'area at which one velocity head would be lost: A/√K side by side, K/A² behind one another added',
  },
  evaluate: ({ rings_m2, equal_m2 }) => (rings_m2 / equal_m2) ** 2,
});

export const slowInRings = defineBalance({
  id: 'slowInRings',
  title: 'Speed below which the loss turns linear, between hub and rim',
  equation: 'v_0 = μ/(ρ·D·√K)',
  result: { name: 'speed', variable: 'slow_mPerS', symbol: 'v_0' },
  symbols: { mu_PaS: 'μ', rho_kgPerM3: 'ρ', opening_m: 'D', loss: 'K' },
  words: { opening_m: 'diameter of the opening', loss: 'loss coefficient' },
  evaluate: ({ mu_PaS, rho_kgPerM3, opening_m, loss }) =>
    mu_PaS / (rho_kgPerM3 * opening_m * Math.sqrt(loss)),
});

export const fanBalances = [
  fanWatts,
  flowOfOne,
  flowAtRated,
  sharedByFans,
  pressureByFans,
  freeDelivery,
  turns,
  soundEnergy,
  silence,
  nearestWall,
  standingLoss,
  slowInRings,
] as const;
