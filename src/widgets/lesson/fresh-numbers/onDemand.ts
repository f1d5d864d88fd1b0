/**
 * What a page needs once a question with fresh numbers is asked for, and not before: the
 * calculator, all templates and their drawings.
 */
export { default as AskedQuestion } from './AskedQuestion.svelte';
export { makeDrawn } from './makeDrawn.ts';
