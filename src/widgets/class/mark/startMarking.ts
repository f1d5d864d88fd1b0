import type { MarkEvent, MarkRequest } from './markFiles.ts';

/** So long the page may be kept from drawing a frame where there is no worker, in ms. */
const SLICE = 12;

/**
 * Marks files in a worker; where none can be started, a little at a time between the page's
 * frames.
 * @param request plain data: it is copied
 * @param tell gets what marking says
 * @returns ends it
 */
export function startMarking(request: MarkRequest, tell: (event: MarkEvent) => void): () => void {
  const worker = startWorker();
  if (!worker) return markInSlices(request, tell);
  let inSlices: (() => void) | undefined;
  worker.onmessage = ({ data }: MessageEvent<MarkEvent>) => tell(data);
  worker.onerror = () => {
    worker.terminate();
    inSlices ??= markInSlices(request, tell);
  };
  worker.postMessage(request);
  return () => {
    worker.terminate();
    inSlices?.();
  };
}

function startWorker(): Worker | null {
  try {
    return new Worker(new URL('./mark.worker.ts', import.meta.url), { type: 'module' });
  } catch {
    return null;
  }
}

function markInSlices(request: MarkRequest, tell: (event: MarkEvent) => void): () => void {
  let ended = false;
  void (async () => {
    const { markFiles } = await import('./markFiles.ts');
    let paused = performance.now();
    for await (const event of markFiles(request)) {
      if (ended) return;
      const progress = event.kind === 'read' || event.kind === 'marked';
      const pause = performance.now() - paused > SLICE;
      if (!progress || pause) tell(event);
      if (!pause) continue;
      await new Promise((resume) => setTimeout(resume));
      paused = performance.now();
    }
  })();
  return () => {
    ended = true;
  };
}
