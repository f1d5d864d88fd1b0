/** Registers the service worker, and says in the foot of the page how far it is. */
export async function keepThisSite(): Promise<void> {
  const { keep, base } = document.documentElement.dataset;
  if (keep === undefined || base === undefined || !('serviceWorker' in navigator)) return;
  try {
    const registration = await navigator.serviceWorker.register(`${base}offline.js`, {
      scope: base,
    });
    show(registration);
    registration.addEventListener('updatefound', () => {
      show(registration);
      const { installing } = registration;
      installing?.addEventListener('statechange', () =>
        show(registration, installing.state === 'redundant'),
      );
    });
  } catch {
    say('This browser does not keep the workbook: it opens with a network only.');
  }
}

function show({ installing, waiting, active }: ServiceWorkerRegistration, failed = false): void {
  offerNewer(waiting);
  if (waiting) {
    say('A newer version is kept. It opens when every tab of the workbook has been closed.');
  } else if (active) say('Kept on this machine: every page opens without a network.');
  else if (failed) say('There was no room to keep the workbook: it opens with a network only.');
  else if (installing) say('Being kept for use without a network …');
}

/** Offers to change over now, and does it where no other tab is open. */
function offerNewer(waiting: ServiceWorker | null): void {
  const button = document.querySelector<HTMLButtonElement>('[data-offline-take-over]');
  if (!button) return;
  button.hidden = waiting === null;
  button.onclick = () => {
    const { port1, port2 } = new MessageChannel();
    port1.onmessage = ({ data: alone }) => {
      if (alone === true) return;
      say('Close the other tabs of the workbook first, so that none is left with the old version.');
    };
    navigator.serviceWorker.addEventListener('controllerchange', () => location.reload());
    waiting?.postMessage('take-over', [port2]);
  };
}

function say(text: string): void {
  const line = document.querySelector('[data-offline]');
  if (line && line.textContent !== text) line.textContent = text;
}
