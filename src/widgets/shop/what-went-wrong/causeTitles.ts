import type { Diagnosis } from '../../../core/trial/diagnose.ts';

/** What a cause is called, in a few words. */
export const causeTitles: Readonly<Record<Diagnosis['code'], string>> = {
  'forgot-bushing': 'The bushing was left out of the stop',
  'forgot-standoff': 'The gap under the bushing was left out of the stop',
  'forgot-allowance': 'No free depth past the pin',
  'same-stop': 'One stop for both boards',
  'other-guide': 'The stop was set for another guide',
  'stop-off': 'The stop was set wrong',
  'stop-slipped': 'The stop slipped',
  'no-stop': 'No stop on the bit',
  'turned-over': 'A board was turned over',
  'opposite-ends': 'The rule was hooked on opposite ends',
  'centering-guide': 'A guide that centers, on boards of two thicknesses',
  'across-off': 'The guide was set off for one board',
  'marks-off': 'Marks that do not match',
  'guide-rocked': 'The guide rocked: the holes lean',
  'mixed-systems': 'Pin and bit of different systems',
  'other-pin': 'Another pin than planned',
  'other-bit': 'Another bit than planned',
  'pin-swollen': 'Swollen or thick pins',
  'pin-thin': 'Thin pins, or a hole cut wide',
  'other-length': 'Pins of another length',
  'other-point': 'A bit with another point',
  chips: 'Chips in a hole',
  'out-of-square': 'An end or edge out of square',
  cupped: 'A cupped board, or an edge that is not straight',
};

/** Causes that do not come from drilling. */
export const inTheWood: ReadonlySet<Diagnosis['code']> = new Set([
  'chips',
  'out-of-square',
  'cupped',
  'pin-swollen',
]);
