/** Puts a button under every figure that shows it to the class; the rest loads when it is pressed. */
export function offerClassView(): void {
  if (!document.fullscreenEnabled) return;
  for (const panel of document.querySelectorAll<HTMLElement>('.panel:has(figure)')) {
    const open = document.createElement('button');
    open.type = 'button';
    open.className = 'class-view-open';
    open.textContent = 'Show to the class';
    open.addEventListener('click', async () => {
      const { showToClass } = await import('./classView.ts');
      showToClass(panel, open);
    });
    panel.append(open);
  }
}
