/**
 * Any figure alone on the whole screen, large enough to be read from the back of the room, and
 * driven by the four keys that a presenter's remote or a keyboard has: left and right (or page up
 * and down) move what is chosen, up and down choose.
 */

/** The height that a figure is laid out for, whatever the screen: the rest is magnification. */
const LAID_OUT_FOR = 540;

const FORWARD = new Set(['ArrowRight', 'PageDown']);
const BACK = new Set(['ArrowLeft', 'PageUp']);

export function offerClassView(): void {
  if (!document.fullscreenEnabled) return;
  for (const panel of document.querySelectorAll<HTMLElement>('.panel:has(figure)')) offer(panel);
}

function offer(panel: HTMLElement): void {
  const open = document.createElement('button');
  open.type = 'button';
  open.className = 'class-view-open';
  open.textContent = 'Show to the class';
  open.addEventListener('click', () => void panel.requestFullscreen());

  const bar = document.createElement('p');
  bar.className = 'class-view-bar';
  bar.hidden = true;
  panel.append(open, bar);

  let chosen: HTMLInputElement | undefined;

  const sliders = () => [
    ...panel.querySelectorAll<HTMLInputElement>('input[type=range]:not(:disabled)'),
  ];

  const show = () => {
    const name = chosen && (chosen.labels?.[0]?.textContent.trim() || chosen.ariaLabel);
    const value = chosen?.getAttribute('aria-valuetext') ?? chosen?.value;
    bar.textContent = name ? `${name}: ${value}  ·  ◀ ▶ change, ▲ ▼ choose another` : '';
    bar.hidden = !name;
  };

  const choose = (by: number) => {
    const all = sliders();
    const at = chosen ? all.indexOf(chosen) + by : 0;
    chosen = all[(at + all.length) % all.length];
    chosen?.focus({ preventScroll: true });
    show();
  };

  panel.addEventListener('fullscreenchange', () => {
    const on = document.fullscreenElement === panel;
    panel.classList.toggle('class-view', on);
    panel.style.setProperty('--magnified', String(Math.max(1, innerHeight / LAID_OUT_FOR)));
    if (on) choose(0);
    else {
      bar.hidden = true;
      open.focus();
    }
  });

  panel.addEventListener('input', () => requestAnimationFrame(show));

  panel.addEventListener('keydown', (event) => {
    if (document.fullscreenElement !== panel || event.altKey || event.ctrlKey) return;
    const { target, key } = event;
    // In a typed field the arrows belong to its text.
    if (target instanceof HTMLInputElement && target.type === 'text') return;
    if (key === 'ArrowUp' || key === 'ArrowDown') choose(key === 'ArrowDown' ? 1 : -1);
    else if (FORWARD.has(key)) move(chosen, 1);
    else if (BACK.has(key)) move(chosen, -1);
    else return;
    event.preventDefault();
  });
}

function move(slider: HTMLInputElement | undefined, steps: number): void {
  if (!slider) return;
  if (steps > 0) slider.stepUp();
  else slider.stepDown();
  slider.dispatchEvent(new Event('input', { bubbles: true }));
}
