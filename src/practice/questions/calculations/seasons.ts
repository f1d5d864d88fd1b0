import { holeAndPin } from '../../../core/moisture/holeAndPin.ts';
import { named } from '../numbers.ts';
import { calculation, length, setting, wood } from './calculation.ts';
import { moisture } from './equilibrium.ts';

/** A hole and its pin after the air has brought both to another moisture. */
export const seasonsOf = calculation(
  {
    hole: setting(length),
    wood: setting(wood),
    surface: setting((entry) => entry.oneOf(['face', 'edge', 'end'])),
    sawn: setting((entry) => entry.oneOf(['flat', 'quarter'])),
    moisture: setting(moisture),
    /** The pin's diameter as measured. */
    pin: setting(length),
    pinWood: setting(wood),
    pinMoisture: setting(moisture),
    to: setting(moisture),
  },
  ({ hole, wood: board, surface, sawn, moisture: drilledAt, pin, pinWood, pinMoisture, to }) => {
    const outcome = holeAndPin(
      { diameter: hole, wood: board, surface, sawn, moisture: drilledAt },
      { diameter: pin, wood: pinWood, moisture: pinMoisture },
      to,
    );
    if (!outcome.ok) return { ...named([]), errors: [outcome.reason] };
    const [holeOne, holeOther] = outcome.hole;
    const [pinAcross, pinAlong] = outcome.pin;
    return {
      ...named([
        ['hole', 'D', hole],
        ['pin', 'd', pin],
        ['moisture', 'M_hole', drilledAt, 'percent'],
        ['pinMoisture', 'M_pin', pinMoisture, 'percent'],
        ['to', 'M_to', to, 'percent'],
        ['before', 'clearance before', hole - pin, 'fine'],
        ['least', 'least clearance', outcome.clearance.least, 'fine'],
        ['greatest', 'greatest clearance', outcome.clearance.greatest, 'fine'],
        // A hole in a face or edge is named by the grain of its board, one in an end by its rings.
        [surface === 'end' ? 'hole.acrossRings' : 'hole.alongGrain', 'D_1', holeOne.width, 'fine'],
        [
          surface === 'end' ? 'hole.alongRings' : 'hole.acrossGrain',
          'D_2',
          holeOther.width,
          'fine',
        ],
        ['pin.acrossRings', 'd_1', pinAcross.width, 'fine'],
        ['pin.alongRings', 'd_2', pinAlong.width, 'fine'],
      ]),
      errors: outcome.coefficientsHold
        ? []
        : ['The coefficients are said to hold from 6 to 14 % only.'],
    };
  },
);
