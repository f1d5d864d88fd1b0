/** Marks off the main thread: files come in, what `markFiles` says goes out. */
import { type MarkRequest, markFiles } from './markFiles.ts';

/** Progress is told at most so often, in ms: more would only keep the page busy. */
const EVERY = 60;

addEventListener('message', async ({ data }: MessageEvent<MarkRequest>) => {
  let told = 0;
  for await (const event of markFiles(data)) {
    const progress = event.kind === 'read' || event.kind === 'marked';
    if (progress && performance.now() - told < EVERY) continue;
    told = performance.now();
    postMessage(event);
  }
});
