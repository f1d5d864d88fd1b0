import { relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import {
  defineMdastPlugin,
  type MdastNode,
  type MdxJsxFlowElement,
  type MdxJsxTextElement,
} from 'satteri';

interface Site {
  /** The project's folder; files are named from here. */
  readonly root: string;
  /** The folder that the site will live in, as Astro's `base`. */
  readonly base: string;
}

/**
 * Three things that a lesson's author should not have to think of. Every component gets `at`, the
 * file and line where it stands, so that a wrong property can be reported there; a link that
 * starts with a slash gets the site's base in front; and `1 1/2 in` is not torn apart at the end
 * of a line. And one that they must not do: import things.
 */
export function lessonMarkdown({ root, base }: Site) {
  const prefix = base.replace(/\/$/, '');
  return defineMdastPlugin({
    name: 'lesson-markdown',
    options: { position: true },
    mdxJsxFlowElement: (node, { fileURL }) => withPlace(node, root, fileURL),
    mdxJsxTextElement: (node, { fileURL }) => withPlace(node, root, fileURL),
    mdxjsEsm(node, { fileURL }) {
      throw new Error(
        `${place(root, fileURL, node)}: a lesson has no imports or exports; it names components, and src/widgets/lesson/lesson-components.ts knows them`,
      );
    },
    link(node, context) {
      if (node.url.startsWith('/')) context.setProperty(node, 'url', prefix + node.url);
    },
    text(node, context) {
      const tied = node.value.replace(/(\d) (?=\d+\/\d)|(\d) (?=(?:in|mm)\b)/g, '$1$2\u00a0');
      if (tied !== node.value) context.setProperty(node, 'value', tied);
    },
  });
}

function withPlace<N extends MdxJsxFlowElement | MdxJsxTextElement>(
  node: Readonly<N>,
  root: string,
  file: URL | undefined,
): N | undefined {
  const isComponent = node.name !== null && /^[A-Z]/.test(node.name);
  if (!isComponent) return undefined;
  const at = place(root, file, node);
  return {
    ...node,
    attributes: [...node.attributes, { type: 'mdxJsxAttribute', name: 'at', value: at }],
  };
}

/** File and line: 'content/lessons/one.mdx:8'. */
function place(root: string, file: URL | undefined, { position }: Pick<MdastNode, 'position'>) {
  const name = file ? relative(root, fileURLToPath(file)).replaceAll('\\', '/') : 'a lesson';
  return `${name}:${position?.start.line ?? '?'}`;
}
