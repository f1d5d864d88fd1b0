import { diameterOfPin, fit, fitBands, unmeasuredPinUndersize } from '../../../core/fit/fit.ts';
import { difference, quantity, quotient } from '../../../core/working/expression.ts';
import { reckon, taken } from '../../../core/working/reckon.ts';
import { named } from '../numbers.ts';
import { calculation, length, optional, setting } from './calculation.ts';

/** How a pin fits its hole; `measured` is the pin by caliper, else it is taken a little under its name. */
export const fitOf = calculation(
  { hole: setting(length), pin: setting(length), measured: optional(length) },
  ({ hole, pin: diameter, measured }) => {
    const pin = diameterOfPin({ diameter, ...(measured !== undefined && { measured }) });
    fit({ hole, pin }); // refuses diameters that make no sense
    const clearance = reckon({
      id: 'clearance',
      label: 'Clearance, the hole less the pin',
      symbol: 'clearance',
      formula: difference(quantity('D', hole, 'fine'), quantity('d', pin, 'fine')),
      unit: 'fine',
      source: 'geometry',
    });
    const glueLine = reckon({
      id: 'glueLine',
      label: 'Glue line, half of the clearance',
      symbol: 'glue line',
      formula: quotient(taken(clearance), 2),
      unit: 'fine',
      source: 'geometry',
    });
    return {
      ...named(
        [
          ['hole', 'D', hole, 'caliper'],
          ['pin', 'd', pin, 'caliper'],
          ['pin.named', 'd_named', diameter],
          ['pin.under', 'under its name', unmeasuredPinUndersize, 'fine'],
          ['goodFrom', 'good from', fitBands.goodFrom, 'fine'],
          ['goodTo', 'good to', fitBands.goodTo, 'fine'],
          // How far the clearance lies outside what is good: nothing where it is good.
          ['offGood', 'off', offGood(clearance.result), 'fine'],
        ],
        [clearance, glueLine],
      ),
      errors: [],
    };
  },
);

function offGood(clearance: number): number {
  return Math.max(0, fitBands.goodFrom - clearance, clearance - fitBands.goodTo);
}
