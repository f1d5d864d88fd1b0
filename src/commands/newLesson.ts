/**
 * Makes the files of a lesson to be written, and gives it its place in the course:
 * `npm run new-lesson -- "Sliding shelf" "Joints"`.
 */
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { join, resolve } from 'node:path';
import { parse } from 'yaml';

const root = resolve(import.meta.dirname, '../..');
const [title = '', unit = ''] = process.argv.slice(2);
const id = title
  .toLowerCase()
  .replace(/[^a-z0-9]+/g, '-')
  .replace(/^-|-$/g, '');
const lesson = join(root, `content/lessons/${id}.mdx`);
const questions = join(root, `content/questions/${id}.yaml`);
const course = join(root, 'content/course.yaml');

function refuse(sentence: string): never {
  process.stderr.write(`${sentence}\n`);
  process.exit(1);
}

const text = readFileSync(course, 'utf8');
const units = (parse(text) as { units: { title: string }[] }).units.map((each) => each.title);
if (id === '')
  refuse('Say what the lesson is called: npm run new-lesson -- "Sliding shelf" "Joints"');
if (existsSync(lesson)) refuse(`There is a lesson of that name: content/lessons/${id}.mdx`);
if (!units.includes(unit)) refuse(`Say which unit it belongs to: ${units.join(', ')}.`);

// Behind the last lesson of its unit; comments and order of the file stay as they are.
const lines = text.split('\n');
const head = lines.findIndex((line) => line.trim().replace(/^- title: /, '') === unit);
let end = head + 2;
while (lines[end]?.startsWith('      - ')) end += 1;
lines.splice(end, 0, `      - ${id}`);

writeFileSync(
  lesson,
  `---
title: ${JSON.stringify(title)}
summary: What is decided in this lesson, in one sentence.
outcomes:
  - say or do something that a bench can show
minutes: 45
---

Begin with what the student has in hand.

## Make a prediction

<Prediction id="what-will-happen" />

## Check yourself

<SelfCheck />
`,
);
writeFileSync(
  questions,
  `# Questions of the lesson '${title.replaceAll("'", '’')}'. Ids are never used again for another
# question; raise \`revision\` whenever a change could alter what is right.

- id: what-will-happen
  revision: 1
  part: prediction
  kind: one
  setup: stand-corner
  ask: A board is {b.thickness} thick. What will happen?
  choices:
    - id: this
      says: This, which is right
      right: true
      why: Say here why it is so, in a sentence or two.
    - id: that
      says: That
      misconception: split-in-half
      why: Say here what whoever chooses it has in mind, and why it is not so.
`,
);
writeFileSync(course, lines.join('\n'));
process.stdout.write(
  `Write on: content/lessons/${id}.mdx and content/questions/${id}.yaml.\n` +
    'npm run dev shows it while you write; DEVELOPERS.md says what a lesson can name.\n',
);
