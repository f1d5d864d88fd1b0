import mdx from '@astrojs/mdx';
import svelte from '@astrojs/svelte';
import { satteri } from '@astrojs/markdown-satteri';
import { defineConfig } from 'astro/config';
import { lessonMarkdown } from './src/layouts/lessonMarkdown.ts';
import { keepForOffline } from './src/offline/keepForOffline.ts';
import { listPackedFiles } from './src/packing/listPackedFiles.ts';
import { writePassages } from './src/search/writePassages.ts';

// Where the site will live. SITE_BASE is the folder under the host ("/woodshop"; default the
// host's root) and SITE_URL the host's address ("https://school.example"), which only absolute
// links need.
const base = process.env.SITE_BASE || '/';
const site = process.env.SITE_URL || undefined;

export default defineConfig({
  base,
  ...(site && { site }),
  srcDir: './src',
  publicDir: './src/public',
  trailingSlash: 'always',
  output: 'static',
  integrations: [
    svelte({ compilerOptions: { runes: true } }),
    mdx(),
    writePassages(),
    listPackedFiles(),
    // Last: it keeps what the others have written.
    keepForOffline(),
  ],
  build: {
    // With assetsInlineLimit below: the security policy allows no inline styles and no data: files.
    inlineStylesheets: 'never',
  },
  vite: {
    build: {
      assetsInlineLimit: 0,
      // Twenty small style sheets cost a phone more than the whole, which every page then shares.
      cssCodeSplit: false,
      // Old school laptops and phones: light-dark() in the tokens is rewritten for them.
      cssTarget: ['chrome111', 'firefox114', 'safari16.4'],
    },
    experimental: {
      // A script names its worker from where it lies itself, in whatever folder the site is.
      renderBuiltUrl: (_file, { hostType }) => (hostType === 'js' ? { relative: true } : undefined),
    },
  },
  markdown: {
    syntaxHighlight: false,
    processor: satteri({ mdastPlugins: [lessonMarkdown({ root: import.meta.dirname, base })] }),
  },
  security: {
    csp: {
      directives: [
        "default-src 'none'",
        "connect-src 'self'",
        "font-src 'self'",
        "img-src 'self'",
        "manifest-src 'self'",
        "worker-src 'self'",
        "base-uri 'none'",
        "form-action 'none'",
        "object-src 'none'",
      ],
    },
  },
});
