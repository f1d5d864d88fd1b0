/**
 * Questions that are made from the calculator: `templates` says which there are, `makeQuestion`
 * makes one. To add a template, copy a file of the folder `templates` and list it there.
 */
export { LARGEST_SEED, type MakeOptions, NoFairDraft, makeQuestion } from './makeQuestion.ts';
export type { MisconceptionNames } from './questionOf.ts';
export type { Template } from './template.ts';
export { templates } from './templates/index.ts';
