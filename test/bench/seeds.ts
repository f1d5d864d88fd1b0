/**
 * Tries so many seeds of every template, each as faultsIn looks at a question, in inches and
 * millimeters by turns: `node test/bench/seeds.ts 10000`. Says what is wrong with which seed, and
 * how many drafts were passed over.
 */
import { readFileSync } from 'node:fs';
import { resolve } from 'node:path';
import { Draws } from '../../src/practice/made/draws.ts';
import { makeQuestion, templates } from '../../src/practice/made/index.ts';
import { unfair } from '../../src/practice/made/unfair.ts';
import { readMisconceptions } from '../../src/practice/questions/misconceptions.ts';
import { LEVELS } from '../../src/practice/questions/types.ts';
import { faultsIn } from '../practice/made/faultsIn.ts';

const count = Number(process.argv[2] ?? 256);
const file = 'content/misconceptions.yaml';
const text = readFileSync(resolve(import.meta.dirname, '../..', file), 'utf8');
const misconceptions = readMisconceptions(file, text);

let faulty = 0;
for (const template of templates) {
  const start = performance.now();
  let firstDrafts = 0;
  for (let seed = 0; seed < count; seed++) {
    const system = seed % 2 === 0 ? 'in' : 'mm';
    const draft = template.draft(new Draws(`${template.id}:${seed}:0`), system);
    if (unfair(draft) === null) firstDrafts++;
    // Most questions are asked on one's own; every tenth seed is tried at the other levels too.
    for (const level of seed % 10 === 0 ? LEVELS : (['own'] as const)) {
      const faults = faultsIn(makeQuestion(template.id, seed, { system, level, misconceptions }));
      if (faults.length === 0) continue;
      faulty++;
      console.log(`${template.id}, seed ${seed}, ${system}, ${level}: ${faults.join('; ')}`);
    }
  }
  const each = (performance.now() - start) / count;
  const share = Math.round((100 * firstDrafts) / count);
  console.log(
    `${template.id}: ${count} seeds, ${share} % fair at once, ${each.toFixed(2)} ms each`,
  );
}
console.log(`${templates.length * count} questions, ${faulty} faulty`);
process.exitCode = faulty === 0 ? 0 : 1;
