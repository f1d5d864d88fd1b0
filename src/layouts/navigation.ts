/** The pages in every page's head, in order. Add a line when a page exists. */
export const navigation = [
  { label: 'Contents', path: '/' },
  { label: 'Practice', path: '/practice/' },
  { label: 'Bench', path: '/bench/' },
  { label: 'Trial run', path: '/trial/' },
  { label: 'Measure and correct', path: '/measure/' },
  { label: 'Your work', path: '/your-work/' },
  { label: 'Teach', path: '/teach/' },
  { label: 'Checks', path: '/checks/' },
] as const;
