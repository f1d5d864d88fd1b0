import type { Diagnosis } from '../../../core/trial/diagnose.ts';
import { type AnsweringWorker, LatestAnswer } from '../../latestAnswer.ts';
import type { SeenJoint } from './diagnoseJoint.ts';

/** So long nothing may change before the main thread is kept busy with it, ms. */
const SETTLED = 150;

/** Starts the worker; its file lies beside this script, wherever the site is. */
function startWorker(): AnsweringWorker<readonly Diagnosis[]> {
  return new Worker(new URL('./diagnosis.worker.ts', import.meta.url), { type: 'module' });
}

/** It takes a tenth of a second for a long row, and can't be cut up: it waits for a pause. */
async function onceSettled(
  joint: SeenJoint,
  wanted: () => boolean,
): Promise<readonly Diagnosis[] | null> {
  await new Promise((resume) => setTimeout(resume, SETTLED));
  if (!wanted()) return null;
  const { diagnoseJoint } = await import('./diagnoseJoint.ts');
  return diagnoseJoint(joint);
}

/** Gets the causes that fit what is set latest, off the main thread. */
export class LatestDiagnosis extends LatestAnswer<SeenJoint, readonly Diagnosis[]> {
  /** @param deliver gets the causes that fit the latest joint, once */
  constructor(deliver: (causes: readonly Diagnosis[]) => void, start = startWorker) {
    super(deliver, start, onceSettled);
  }
}
