/** One subject of measuring, a few sentences each. */
export interface Practice {
  readonly title: string;
  readonly lines: readonly string[];
}

/** How to read a prototype: common practice, no source. Safety first. */
export const benchPractice: readonly Practice[] = [
  {
    title: 'Before anything: live parts, hot parts, blades',
    lines: [
      'Films, terminals and all that is soldered to them carry the supply: on the mains, or on any dangerous voltage, they can kill. Never tape a bare bead there, and touch neither bead nor lead while power is on.',
      'Use probes that are insulated for that voltage, and an instrument that runs from its own battery or is isolated and rated for it: a bead on a live part puts the meter’s other terminals at that voltage.',
      'Fix and move probes with the power off, unplugged and shown to be dead. Work on mains belongs to a licensed person, by the local code.',
      'Parts stay hot for minutes after the power goes. Leave the fan’s guard on and tie every lead clear of the blades. Do not leave a prototype alone.',
    ],
  },
  {
    title: 'Where a thermocouple goes',
    lines: [
      'On a sink: on its plate beside the chip, half-way along the fins, not on a fin’s tip. Thin wire, 0.2 mm or less, the bead in a dab of heat-conducting glue or under heat-proof tape, and the first 20 to 30 mm of lead along the metal: a lead in the air cools its bead.',
      'Cover the bead against the stream with a crumb of foam or a second tape; a bead that the air blows on reads too low.',
      'The film lies under its sink and cannot be reached: what is read beside it reads less, so call that a terminal or a sink. With a known temperature coefficient the resistance, taken at once after the power goes, tells the film’s mean.',
      'Exhaust: the bead hangs free in the stream, out of sight of hot fins; read several spots across the outlet and put in their mean.',
      'An infrared spot on bare metal shows the reflection of the room: put a patch of matt tape or paint there first.',
    ],
  },
  {
    title: 'Watts, room and fan',
    lines: [
      'Watts are volts times amps at the resistors, true effective values where the supply is chopped. The room is the air that the fan takes in, read a hand’s width before its guard.',
      'Volts at the fan are read at its own plug while it turns.',
      'Sound: at the listening distance, with everything else so quiet that it lies 10 dB below.',
    ],
  },
  {
    title: 'Pressure in the plenum',
    lines: [
      'A tap in the wall: a hole of 1 mm at a right angle, no burr on the inside, away from the fan’s jet; a thin hose to a manometer whose other side is open to the room. Turn the hole’s place: two taps that differ show a jet, not a pressure.',
    ],
  },
  {
    title: 'Flow without a flow meter',
    lines: [
      'A bag: tape a large thin bag of known volume flat over the outlet and time it until it is just full, not tight; volume over time, the mean of five runs, is good to some 5 %.',
      'An orifice: a box with a sharp round hole at the outlet, its pressure and the hole’s area tell the flow. It hinders the air, so that the box moves less than without it: take it only with a helper fan that brings the pressure before the hole’s box back to nil.',
    ],
  },
];
