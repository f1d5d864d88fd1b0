/** For checkers that know TypeScript and Svelte only; `astro check` reads the files themselves. */
declare module '*.astro' {
  const component: (props: Record<string, unknown>) => unknown;
  export default component;
}
