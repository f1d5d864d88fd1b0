import { describe, expect, it } from 'vitest';
import { passagesOf } from '../../src/search/passages.ts';

const page = `<!doctype html><html><head><title>No</title></head><body><nav>Menu</nav><main>
  <h1>Setting the stop</h1><p>Where the collar <b>sits</b>.</p><p>Next.</p>
  <h2 id="worked-example">Worked&nbsp;example</h2>
  <p>It is <span class="in">3/4 in</span><span class="mm">19.05 mm</span> deep.</p>
  <p>A <button type="button" class="term">collar</button><span popover>A ring</span> slips.</p>
  <button>Check</button><svg><text>12</text></svg><script>let x</script>
  <h2>No anchor</h2><p>Still the example.</p>
</main></body></html>`;

describe('passagesOf', () => {
  const passages = passagesOf(page, 'lessons/stop/');

  it('cuts a page at its headings that have an anchor', () => {
    expect(passages.map(({ path, page, section }) => [path, page, section])).toEqual([
      ['lessons/stop/', 'Setting the stop', undefined],
      ['lessons/stop/#worked-example', 'Setting the stop', 'Worked example'],
    ]);
  });

  it('reads what a reader reads: one unit, no drawings, no controls, terms but not what opens', () => {
    expect(passages.map(({ text }) => text)).toEqual([
      'Where the collar sits. Next.',
      'It is 3/4 in deep. A collar slips. No anchor Still the example.',
    ]);
  });

  it('finds nothing on a page without a heading', () => {
    expect(passagesOf('<main><p>Moved.</p></main>', 'x/')).toEqual([]);
  });
});
