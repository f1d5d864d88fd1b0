import { mdxToJs } from 'satteri';
import { describe, expect, it } from 'vitest';
import { lessonMarkdown } from '../../src/layouts/lessonMarkdown.ts';

function compiled(source: string, base = '/'): string {
  return mdxToJs(source, {
    fileURL: new URL('file:///book/content/lessons/one.mdx'),
    mdastPlugins: [lessonMarkdown({ root: '/book', base })],
  }).code;
}

describe('lessonMarkdown', () => {
  it('tells a component, in a paragraph or on its own, where it stands', () => {
    const code = compiled('First\n\n<Figure thickness={19} />\n\nA <Length mm={3} /> here.\n');
    expect(code).toContain('at: "content/lessons/one.mdx:3"');
    expect(code).toContain('at: "content/lessons/one.mdx:5"');
    expect(code).toContain('thickness: 19');
  });

  it('leaves plain elements alone', () => {
    expect(compiled('<details>\n\nText\n\n</details>\n')).not.toContain('at:');
  });

  it("puts the site's base in front of links into the site, and of no others", () => {
    const code = compiled(
      '[a](/bench/) [b](#wall) [c](https://school.example/)',
      '/woodshop/holes/',
    );
    expect(code).toContain('href: "/woodshop/holes/bench/"');
    expect(code).toContain('href: "#wall"');
    expect(code).toContain('href: "https://school.example/"');
  });

  it('keeps a mixed number and its unit on one line', () => {
    expect(compiled('a pin 1 1/2 in long, 40 mm')).toContain(
      String.raw`a pin 1\xA01/2\xA0in long, 40\xA0mm`,
    );
  });

  it('refuses an import, with file and line', () => {
    expect(() => compiled("Text\n\nimport Figure from './Figure.astro';\n")).toThrow(
      'content/lessons/one.mdx:3: a lesson has no imports or exports',
    );
  });
});
