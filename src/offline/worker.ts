/**
 * The service worker: keeps every file of one version of the site and answers from there, so that
 * the workbook opens without a network. A newer version is fetched whole beside it and takes over
 * only when no page of the old one is open, so that no page ever gets files of both.
 */
import { cleanupOutdatedCaches, precacheAndRoute } from 'workbox-precaching';

/** The site's files from where the worker lies, put in by the build. */
declare const KEPT_FILES: { url: string; revision: string | null }[];

/** What is used here of a service worker's scope; the types of a page don't know it. */
interface ServiceWorkerScope {
  addEventListener(
    type: 'message',
    listener: (event: MessageEvent & { waitUntil(work: Promise<void>): void }) => void,
  ): void;
  readonly clients: {
    matchAll(options: { type: 'window'; includeUncontrolled: true }): Promise<readonly unknown[]>;
  };
  skipWaiting(): Promise<void>;
}

const worker = globalThis as unknown as ServiceWorkerScope;

precacheAndRoute(KEPT_FILES, {
  directoryIndex: 'index.html',
  // What stands after a question mark is for nobody here; links carry theirs after a number sign.
  ignoreURLParametersMatching: [/./],
});
cleanupOutdatedCaches();

// A page asks to open the newer version. It may where no other tab would be left with the old one.
worker.addEventListener('message', (event) => {
  if (event.data !== 'take-over') return;
  const answer = async () => {
    const open = await worker.clients.matchAll({ type: 'window', includeUncontrolled: true });
    const alone = open.length <= 1;
    if (alone) await worker.skipWaiting();
    event.ports[0]?.postMessage(alone);
  };
  event.waitUntil(answer());
});
