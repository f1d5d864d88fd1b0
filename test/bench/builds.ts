/**
 * How the time of a build grows with the number of lessons: copies of the ones there are, each
 * with its questions. For a person to read: `npm run bench:builds`, or for other numbers of lessons
 * `npm run bench:builds -- 20 500`.
 */
import {
  cpSync,
  mkdtempSync,
  readFileSync,
  readdirSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import { join, resolve } from 'node:path';
import { spawnSync } from 'node:child_process';

const root = resolve(import.meta.dirname, '../..');
let first: { lessons: number; seconds: number } | undefined;

const counts = process.argv.slice(2).map(Number);
for (const lessons of counts.length > 0 ? counts : [20, 200, 1000]) {
  const copy = mkdtempSync(join(tmpdir(), 'matched-holes-'));
  try {
    for (const name of [
      'src',
      'content',
      'test',
      'package.json',
      'astro.config.mjs',
      'tsconfig.json',
    ]) {
      cpSync(join(root, name), join(copy, name), { recursive: true });
    }
    symlinkSync(join(root, 'node_modules'), join(copy, 'node_modules'));
    const names = readdirSync(join(copy, 'content/lessons')).map((file) =>
      file.replace('.mdx', ''),
    );
    const all = Array.from({ length: lessons }, (_, i) => {
      const name = names[i % names.length]!;
      const id = i < names.length ? name : `${name}-${i}`;
      for (const [folder, end] of [
        ['lessons', 'mdx'],
        ['questions', 'yaml'],
      ] as const) {
        const text = readFileSync(join(root, `content/${folder}/${name}.${end}`));
        writeFileSync(join(copy, `content/${folder}/${id}.${end}`), text);
      }
      return id;
    });
    const left = names.slice(lessons);
    const course = `units:\n  - title: All\n    lessons:\n${[...all, ...left].map((id) => `      - ${id}\n`).join('')}`;
    writeFileSync(join(copy, 'content/course.yaml'), course);
    const start = performance.now();
    const { status, signal, stdout, stderr } = spawnSync('astro', ['build'], {
      cwd: copy,
      encoding: 'utf8',
      maxBuffer: Infinity, // a line for each page
      env: {
        ...process.env,
        ASTRO_TELEMETRY_DISABLED: '1',
        NODE_OPTIONS: '--max-old-space-size=4096',
      },
    });
    const seconds = (performance.now() - start) / 1000;
    if (status !== 0) throw new Error(`${signal ?? status}: ${(stdout + stderr).slice(-2000)}`);
    first ??= { lessons, seconds };
    console.log(
      `${String(lessons).padStart(5)} lessons: ${seconds.toFixed(1)} s, ${((1000 * seconds) / lessons).toFixed(0)} ms each;` +
        ` ${(lessons / first.lessons).toFixed(0)} × the lessons take ${(seconds / first.seconds).toFixed(1)} × the time`,
    );
  } finally {
    rmSync(copy, { recursive: true, force: true });
  }
}
