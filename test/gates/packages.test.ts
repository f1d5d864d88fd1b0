import { readFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { expect, it } from 'vitest';

const root = resolve(import.meta.dirname, '../..');
const read = (name: string) => readFileSync(join(root, name), 'utf8');
const { dependencies, devDependencies, optionalDependencies } = JSON.parse(
  read('package.json'),
) as Record<string, Record<string, string>>;
const packages = { ...dependencies, ...devDependencies, ...optionalDependencies };

it('pins every package, and DEVELOPERS.md says why each is there', () => {
  const reasons = read('DEVELOPERS.md').split('## The packages')[1]!.split('\n## ')[0]!;
  const named = [...reasons.matchAll(/`([^`]+)`/g)].map(([, name]) => name);
  expect(named.sort()).toEqual(Object.keys(packages).sort());
  expect(
    Object.entries(packages).filter(([, version]) => !/^\d+\.\d+\.\d+$/.test(version)),
  ).toEqual([]);
});
