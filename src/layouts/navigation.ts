/** The pages in every page's head, in order. Add a line when a page exists. */
export const navigation = [
  { label: 'Contents', path: '/' },
  { label: 'Bench', path: '/bench/' },
  { label: 'Checks', path: '/checks/' },
] as const;
