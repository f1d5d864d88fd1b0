import type { JointSpec } from '../../../core/joint/types.ts';
import { species, speciesNames } from '../../../core/moisture/species.ts';
import type { Species } from '../../../core/moisture/species.ts';
import type { Numbers } from '../numbers.ts';
import type { Setups } from '../setups.ts';
import { isJoint } from '../setupKinds.ts';
import type { YamlEntry } from '../yamlEntry.ts';

/** One setting of a calculation: how it is read from a setup's file. */
export interface Field<Value> {
  /** @throws ContentError with file and line */
  readonly read: (entry: YamlEntry, setups: Setups) => Value;
  readonly optional: boolean;
}

type Read<Value> = Field<Value>['read'];

/** A setting that has to be there. */
export function setting<Value>(read: Read<Value>): Field<Value> {
  return { read, optional: false };
}

/** A setting that may be left out. */
export function optional<Value>(read: Read<Value>): Field<Value | undefined> {
  return { read, optional: true };
}

type Fields = Readonly<Record<string, Field<unknown>>>;

/** The settings of a calculation, read. */
export type ValuesOf<F extends Fields> = {
  readonly [Name in keyof F]: F[Name] extends Field<infer Value> ? Value : never;
};

/** What a calculation gives; the setup that it stands in knows the system. */
export type Found = Omit<Numbers, 'system'>;

/** A calculation of the core that content may set up by name. */
export interface Calculation {
  /**
   * Reads its settings; with a `base`, only what differs from it need be there.
   * @throws ContentError with file and line
   */
  readonly read: (entry: YamlEntry, base: unknown, setups: Setups) => unknown;
  /** @throws TypeError or RangeError as the core does, for values that make no sense */
  readonly find: (values: unknown) => Found;
}

/** Makes a calculation from its settings and from what it finds with them. */
export function calculation<const F extends Fields>(
  fields: F,
  find: (values: ValuesOf<F>) => Found,
): Calculation {
  const names = Object.keys(fields);
  return {
    read(entry, base, setups) {
      entry.only(...names);
      const kept = (base ?? {}) as Record<string, unknown>;
      const values = names.map((name) => {
        const field = fields[name]!;
        const given = entry.find(name);
        if (given) return [name, field.read(given, setups)];
        if (name in kept || field.optional) return [name, kept[name]];
        return [name, entry.get(name)];
      });
      return Object.fromEntries(values) as unknown;
    },
    find: (values) => find(values as ValuesOf<F>),
  };
}

export const length = (entry: YamlEntry) => entry.length();
export const count = (entry: YamlEntry) => entry.count();
export const percent = (entry: YamlEntry) => entry.measure('%');

export function yesOrNo(entry: YamlEntry): boolean {
  return entry.flag() ?? entry.fail(`write true or false`);
}

/** A wood of the calculator's tables, by its name there. */
export function wood(entry: YamlEntry): Species {
  const name = entry.text();
  return species(name) ?? entry.fail(`no wood '${name}'; there are ${speciesNames.join('; ')}`);
}

/** A joint that stands above, by its name. */
export function joint(entry: YamlEntry, setups: Setups): JointSpec {
  const name = entry.text();
  const found = setups.get(name);
  if (!found || !isJoint(found)) entry.fail(`no joint '${name}' stands above this one`);
  return found;
}
