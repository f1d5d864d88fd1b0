import { describe, expect, it } from 'vitest';
import { filesNamed, packPage, packStyles } from '../../../src/class/scorm/packagePages.ts';

const packing = {
  base: '/woodshop/holes/',
  pages: ['assignment/', 'lessons/stop/'],
  assignment: '1;title="A&B"',
};

const html = `<!doctype html><html lang="en-US" data-base="/woodshop/holes/" data-keep><head>
<link rel="canonical" href="https://school.example/woodshop/holes/assignment/">
<link rel="preload" href="/woodshop/holes/_astro/face.woff2" as="font">
<script src="/woodshop/holes/settings.js"></script>
<script>const home = '<a href="/woodshop/holes/">';</script></head>
<body><a href="#main">Skip</a><a href="/woodshop/holes/" class="x">Contents</a>
<a href="/woodshop/holes/lessons/stop/#worked-example">The lesson</a><a href="/woodshop/holes/bench/">Bench</a>
<astro-island component-url="/woodshop/holes/_astro/A.js" renderer-url="/woodshop/holes/_astro/client.js"></astro-island>
</body></html>`;

describe('a packed page', () => {
  const packed = packPage(html, 'assignment/', packing);

  it('has only relative addresses, from its own depth', () => {
    const outsideScripts = packed.replace(/<script>[\s\S]*?<\/script>/g, '');
    expect(outsideScripts).not.toContain('/woodshop');
    expect(packed).toContain('href="../_astro/face.woff2"');
    expect(packed).toContain('component-url="../_astro/A.js" renderer-url="../_astro/client.js"');
    expect(packed).toContain('<script src="../settings.js">');
    expect(packPage(html, 'lessons/stop/', packing)).toContain('component-url="../../_astro/A.js"');
  });

  it('links to the pages that go along, and to no other', () => {
    expect(packed).toContain('<a href="../lessons/stop/index.html#worked-example">The lesson</a>');
    expect(packed).toContain('<a>Bench</a>');
    expect(packed).toContain('<a class="x">Contents</a>');
    expect(packed).toContain('<a href="#main">');
  });

  it('leaves the scripts in the page as they are, since their hashes are known', () => {
    expect(packed).toContain(`<script>const home = '<a href="/woodshop/holes/">';</script>`);
  });

  it('says what it is, and is not kept for offline use', () => {
    expect(packed).toContain(
      '<html lang="en-US" data-base="../" data-package data-assignment="1;title=&quot;A&amp;B&quot;">',
    );
  });
});

describe('what a package needs', () => {
  const named = new Map(
    Object.entries({
      'A.js':
        'import "./B.js"; import("./lazy.js"); new Worker(new URL("odds.js", import.meta.url))',
      'B.js': 'import "./A.js"',
      'lazy.js': 'const map = ["./A.css"]',
      'odds.js': '',
      'A.css': 'src: url(/woodshop/holes/_astro/face.woff2)',
      'face.woff2': null,
      'Other.js': '',
    }).map(([name, text]) => [name, { path: `_astro/${name}`, text }]),
  );

  it('is every file that a page leads to, and no other', () => {
    expect(filesNamed('component-url="/woodshop/holes/_astro/A.js"', named)).toEqual(
      ['A.css', 'A.js', 'B.js', 'face.woff2', 'lazy.js', 'odds.js'].map((name) => `_astro/${name}`),
    );
  });

  it('finds a face beside its style sheet', () => {
    expect(packStyles('src: url(/woodshop/holes/_astro/face.woff2)', '/woodshop/holes/')).toBe(
      'src: url(face.woff2)',
    );
  });
});
