import { equilibriumMoisture, tableReach } from '../../../core/moisture/equilibriumMoisture.ts';
import { evaluate } from '../../../core/working/expression.ts';
import { named } from '../numbers.ts';
import { isJoint } from '../setupKinds.ts';
import type { Setups } from '../setups.ts';
import type { YamlEntry } from '../yamlEntry.ts';
import { calculation, percent, setting } from './calculation.ts';

/** A temperature in °C, written `21 °C` or `70 °F`. */
function temperature(entry: YamlEntry): number {
  return entry.text().endsWith('F') ? (entry.measure('°F') - 32) / 1.8 : entry.measure('°C');
}

/**
 * The moisture of a piece of wood in percent: written so (`8 %`), or the name of air that stands
 * above and that the wood has come to.
 */
export function moisture(entry: YamlEntry, setups: Setups): number {
  if (entry.text().endsWith('%')) return entry.measure('%');
  const air = setups.get(entry.text());
  if (!air || isJoint(air) || air.calculation !== 'equilibrium') {
    entry.fail(`write such as '8 %', or the name of an 'equilibrium' that stands above`);
  }
  return evaluate(equilibriumOf.find(air.values).quantities.get('moisture')!);
}

/** The moisture that wood comes to in air of a temperature and a relative humidity. */
export const equilibriumOf = calculation(
  { temperature: setting(temperature), humidity: setting(percent) },
  ({ temperature: celsius, humidity }) => ({
    ...named([
      ['temperature', 'T', celsius, 'temperature'],
      ['humidity', 'H', humidity, 'percent'],
      ['moisture', 'M', equilibriumMoisture(celsius, humidity / 100), 'percent'],
    ]),
    errors:
      tableReach(celsius) === 'within the table'
        ? []
        : ['This temperature lies beyond the published table.'],
  }),
);
