/** Drills and tries every likely mistake off the main thread: a joint comes in, its causes go out. */
import { type SeenJoint, diagnoseJoint } from './diagnoseJoint.ts';

addEventListener('message', ({ data }: MessageEvent<SeenJoint>) => {
  postMessage(diagnoseJoint(data));
});
