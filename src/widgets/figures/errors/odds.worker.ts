/** Tries joints off the main thread: settings come in, the odds for each number of pins go out. */
import { allRowOdds } from './rowOdds.ts';
import type { RowSettings } from './rowSettings.ts';

addEventListener('message', ({ data }: MessageEvent<RowSettings>) => {
  postMessage(allRowOdds(data));
});
