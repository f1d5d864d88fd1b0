/** The pages in every page's head, in order. Add a line when a page exists. */
export const navigation = [
  { label: 'Contents', path: '/' },
  { label: 'Practice', path: '/practice/' },
  { label: 'Bench', path: '/bench/' },
  { label: 'Trial run', path: '/trial/' },
  { label: 'Measure and correct', path: '/measure/' },
  { label: 'Your work', path: '/your-work/' },
  { label: 'Teach', path: '/teach/' },
  { label: 'Search', path: '/search/' },
] as const;

/** What is looked up: in every page's foot. */
export const reference = [
  { label: 'Glossary', path: '/glossary/' },
  { label: 'Sources', path: '/sources/' },
  { label: 'Checks', path: '/checks/' },
] as const;
