/**
 * An assignment as a package, in an independent runtime of SCORM 1.2 (scorm-again) that is held to
 * the standard's strict rules: what a lenient one would let pass is a fault here.
 */
import { readFileSync } from 'node:fs';
import { type IncomingMessage, type Server, type ServerResponse, createServer } from 'node:http';
import { createRequire } from 'node:module';
import { extname } from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import { type FrameLocator, type Page, expect, test } from 'playwright/test';
import { encodeAssignment } from '../../src/class/assignment/assignmentLink.ts';
import type { Assignment } from '../../src/class/assignment/assignment.ts';
import { stopAssignment } from '../support/classOf.ts';

const FOLDER = '/courses/shop%20101/odd+name_(2)/';
const TYPES: Record<string, string> = {
  '.html': 'text/html',
  '.js': 'text/javascript',
  '.css': 'text/css',
  '.svg': 'image/svg+xml',
};

const assignment: Assignment = {
  ...stopAssignment,
  templates: ['name-the-joint', 'glue-line'],
  count: 4,
  passMark: 50,
  feedback: 'end',
  limits: {},
};

const require = createRequire(import.meta.url);
const runtime = readFileSync(require.resolve('scorm-again/scorm12/min').replace('/esm/', '/'));

/** A learning system's page: the runtime, strict, around the package; what it kept outlives it. */
const LMS = `<!doctype html><meta charset="utf-8"><title>Learning system</title>
<script src="/runtime.js"></script><script>
  const kept = JSON.parse(sessionStorage.getItem('cmi') ?? 'null');
  const api = new Scorm12API({ autocommit: false, logLevel: 5 });
  if (kept) api.loadFromJSON(kept, 'cmi');
  else api.cmi.core.student_id = 'student-4711';
  window.faults = []; window.calls = []; let over = false;
  const strict = (name, look) => (...args) => {
    window.calls.push([name, ...args]);
    if (over) window.faults.push(name + ' after the end');
    for (const arg of args) if (typeof arg !== 'string') window.faults.push(name + ': not a text');
    look?.(...args);
    const result = api[name](...args);
    if (name === 'LMSSetValue' && result !== 'true') window.faults.push(args.join(' = ') + ' refused');
    if (name === 'LMSFinish') over = true;
    sessionStorage.setItem('cmi', JSON.stringify(api.cmi.toJSON ? JSON.parse(JSON.stringify(api.cmi)) : {}));
    return String(result);
  };
  window.API = Object.fromEntries(['LMSInitialize', 'LMSFinish', 'LMSGetValue', 'LMSCommit', 'LMSGetLastError', 'LMSGetErrorString', 'LMSGetDiagnostic'].map((name) => [name, strict(name)]));
  window.API.LMSSetValue = strict('LMSSetValue', (element, value) => {
    if (element === 'cmi.suspend_data' && value.length > 4096) window.faults.push('suspend_data too long');
    if (element === 'cmi.core.lesson_status' && !['passed', 'completed', 'failed', 'incomplete', 'browsed'].includes(value)) window.faults.push('status ' + value);
    if (element === 'cmi.core.score.raw' && !(Number(value) >= 0 && Number(value) <= 100)) window.faults.push('score ' + value);
  });
</script><iframe title="Assignment" width="1100" height="900" src="${FOLDER}assignment/index.html"></iframe>`;

let files: Record<string, Uint8Array> = {};
let server: Server;
let origin: string;
const strangers: string[] = [];

function answer(request: IncomingMessage, response: ServerResponse): void {
  const path = new URL(request.url ?? '/', 'http://lms').pathname;
  if (path === '/') return void response.writeHead(200, { 'content-type': 'text/html' }).end(LMS);
  if (path === '/runtime.js')
    return void response.writeHead(200, { 'content-type': 'text/javascript' }).end(runtime);
  const file = path.startsWith(FOLDER) ? files[path.slice(FOLDER.length)] : undefined;
  if (!file) {
    if (path === '/favicon.ico') return void response.writeHead(204).end();
    strangers.push(path);
    return void response.writeHead(404).end();
  }
  response.writeHead(200, { 'content-type': TYPES[extname(path)] ?? 'application/octet-stream' });
  response.end(file);
}

test.beforeAll(async () => {
  server = createServer(answer);
  await new Promise<void>((listening) => server.listen(0, listening));
  const address = server.address();
  if (address === null || typeof address === 'string') throw new Error('no port');
  origin = `http://localhost:${address.port}/`;
});

test.afterAll(() => {
  server.close();
  server.closeAllConnections();
});

async function packed(page: Page): Promise<Record<string, Uint8Array>> {
  await page.goto(`teach/assign/#${encodeAssignment(assignment)}`);
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: /^Save it for a learning system/ }).click(),
  ]);
  return unzipSync(readFileSync(await download.path()));
}

async function answerOne(frame: FrameLocator): Promise<void> {
  const question = frame.getByRole('main');
  const radio = question.getByRole('radio').first();
  if (await radio.count()) await radio.check();
  else await question.getByRole('textbox').first().fill('1/64');
  await frame.getByRole('button', { name: 'Forward' }).click();
}

const cmi = (page: Page, element: string) =>
  page.evaluate(
    (name) =>
      (window as unknown as { API: { LMSGetValue(name: string): string } }).API.LMSGetValue(name),
    element,
  );

test('runs from any folder, resumes after a closed window, reports, and breaks no rule', async ({
  page,
  context,
}) => {
  test.slow();
  files = await packed(page);
  const manifest = strFromU8(files['imsmanifest.xml']!);
  for (const name of Object.keys(files)) {
    if (name !== 'imsmanifest.xml') expect(manifest).toContain(`href="${name}"`);
    expect(name).not.toMatch(/offline|packed-files|bench\//);
  }

  const lms = await context.newPage();
  const errors: string[] = [];
  lms.on('console', (message) => {
    if (message.type() === 'error') errors.push(message.text());
  });
  await lms.goto(origin);
  const frame = lms.frameLocator('iframe');
  await expect(frame.getByRole('heading', { name: 'Question 1 of 4' })).toBeVisible({
    timeout: 30_000,
  });
  expect(await cmi(lms, 'cmi.core.lesson_status')).toBe('incomplete');
  const asked = await frame.getByRole('main').locator('form').first().innerText();
  await answerOne(frame);
  await answerOne(frame);
  await expect(frame.getByRole('heading', { name: 'Question 3 of 4' })).toBeVisible();
  const kept = await cmi(lms, 'cmi.suspend_data');
  expect(kept).not.toBe('');

  // The window is closed in the middle, and the assignment opened again later.
  await lms.reload();
  await expect(frame.getByRole('heading', { name: 'Question 3 of 4' })).toBeVisible({
    timeout: 30_000,
  });
  await frame.getByRole('button', { name: /^Question 1/ }).click();
  expect(await frame.getByRole('main').locator('form').first().innerText()).toContain(
    asked.slice(0, 40),
  );
  await frame.getByRole('button', { name: /^Question 3/ }).click();
  await answerOne(frame);
  await answerOne(frame);
  await frame
    .getByRole('button', { name: /^Hand in/ })
    .last()
    .click();
  await expect(frame.getByText('Your learning system has it.')).toBeVisible();
  expect(await cmi(lms, 'cmi.core.lesson_status')).toMatch(/^(passed|failed)$/);
  expect(Number(await cmi(lms, 'cmi.core.score.raw'))).toBeGreaterThanOrEqual(0);

  // Nothing of the student stays in the school's browser, and nothing was asked for in vain.
  const stored = await frame.locator('html').evaluate(() => Object.keys(localStorage));
  expect(stored).toEqual([]);
  expect(strangers).toEqual([]);
  expect(errors).toEqual([]);
  expect(await lms.evaluate(() => (window as unknown as { faults: string[] }).faults)).toEqual([]);
});
