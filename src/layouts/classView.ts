/**
 * Any figure alone on the whole screen, large enough to be read from the back of the room, and
 * driven by the four keys that a presenter's remote or a keyboard has: left and right (or page up
 * and down) move what is chosen, up and down choose.
 */

/** The height that a figure is laid out for, whatever the screen: the rest is magnification. */
const LAID_OUT_FOR = 540;

const FORWARD = new Set(['ArrowRight', 'PageDown']);
const BACK = new Set(['ArrowLeft', 'PageUp']);

/**
 * Shows a figure alone on the screen, until the reader leaves it.
 * @param panel the sheet with the figure and its controls
 * @param open the button that was pressed
 */
export function showToClass(panel: HTMLElement, open: HTMLElement): void {
  const bar = document.createElement('p');
  bar.className = 'class-view-bar';
  bar.hidden = true;
  panel.append(bar);
  const session = new AbortController();
  const { signal } = session;

  let chosen: HTMLInputElement | undefined;

  const sliders = () => [
    ...panel.querySelectorAll<HTMLInputElement>('input[type=range]:not(:disabled)'),
  ];

  const show = () => {
    const name = chosen && (chosen.labels?.[0]?.textContent.trim() || chosen.ariaLabel);
    const value = chosen?.getAttribute('aria-valuetext') ?? chosen?.value;
    bar.textContent = name
      ? `${name}: ${value}  ·  keys left and right change it, up and down choose another`
      : '';
    bar.hidden = !name;
  };

  const choose = (by: number) => {
    const all = sliders();
    const at = chosen ? all.indexOf(chosen) + by : 0;
    chosen = all[(at + all.length) % all.length];
    chosen?.focus({ preventScroll: true });
    show();
  };

  panel.addEventListener(
    'fullscreenchange',
    () => {
      const on = document.fullscreenElement === panel;
      panel.classList.toggle('class-view', on);
      panel.style.setProperty('--magnified', String(Math.max(1, innerHeight / LAID_OUT_FOR)));
      if (on) {
        choose(0);
        return;
      }
      session.abort();
      bar.remove();
      open.focus();
    },
    { signal },
  );

  panel.addEventListener('input', () => requestAnimationFrame(show), { signal });

  panel.addEventListener(
    'keydown',
    (event) => {
      if (document.fullscreenElement !== panel || event.altKey || event.ctrlKey) return;
      const { target, key } = event;
      // In a typed field the arrows belong to its text.
      if (target instanceof HTMLInputElement && target.type === 'text') return;
      if (key === 'ArrowUp' || key === 'ArrowDown') choose(key === 'ArrowDown' ? 1 : -1);
      else if (FORWARD.has(key)) move(chosen, 1);
      else if (BACK.has(key)) move(chosen, -1);
      else return;
      event.preventDefault();
    },
    { signal },
  );

  void panel.requestFullscreen();
}

function move(slider: HTMLInputElement | undefined, steps: number): void {
  if (!slider) return;
  if (steps > 0) slider.stepUp();
  else slider.stepDown();
  slider.dispatchEvent(new Event('input', { bubbles: true }));
}
