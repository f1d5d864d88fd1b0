// Runs before the page is painted, so that no one sees inches turn into millimeters. It owns the
// two settings of a reader, lengths and colors: the attributes on <html>, what is stored, and the
// controls in the page's frame. A plain script: a module would run too late.
(() => {
  const root = document.documentElement;
  root.dataset.script = 'on';

  // Names carry the site's folder: two sites may share one address.
  const stored = (name) => `${root.dataset.base}${name}`;
  const read = (name) => {
    try {
      return localStorage.getItem(stored(name));
    } catch {
      return null; // a private window, or storage is switched off
    }
  };
  const keep = (name, value) => {
    // In a learning system's package students share the school's address.
    if (root.dataset.package !== undefined) return;
    try {
      localStorage.setItem(stored(name), value);
    } catch {
      // then it holds for this page only
    }
  };

  const oneOf = (value, choices) => (choices.includes(value) ? value : undefined);
  // `show=` of a setup link; the rest of the link is read by the page that it belongs to.
  const linked = /[#;]show=(in|mm)(?:;|$)/.exec(location.hash)?.[1];
  const customary = () => {
    // Boards are sold in inches there.
    const locale = new Intl.Locale(navigator.language || 'en-US');
    const region = locale.region ?? locale.maximize().region;
    return oneOf(region, ['US', 'CA', 'LR', 'MM']) ? 'in' : 'mm';
  };

  const apply = (name, value) => {
    root.dataset[name] = value;
    for (const control of document.querySelectorAll(`[data-setting="${name}"]`)) {
      if (control.type === 'radio') control.checked = control.value === value;
      else control.value = value;
    }
  };

  apply('unit', linked ?? oneOf(read('unit'), ['in', 'mm']) ?? customary());
  apply('theme', oneOf(read('theme'), ['light', 'dark']) ?? 'system');

  document.addEventListener('choose-unit', ({ detail }) => {
    apply('unit', detail.unit);
    if (detail.keep) keep('unit', detail.unit);
    document.dispatchEvent(new CustomEvent('unit-chosen'));
  });

  document.addEventListener('change', ({ target }) => {
    if (target.dataset.setting === 'unit') {
      const detail = { unit: target.value, keep: true };
      document.dispatchEvent(new CustomEvent('choose-unit', { detail }));
    }
    if (target.dataset.setting === 'theme') {
      apply('theme', target.value);
      keep('theme', target.value);
    }
  });

  document.addEventListener('DOMContentLoaded', () => {
    apply('unit', root.dataset.unit);
    apply('theme', root.dataset.theme);
  });
})();
