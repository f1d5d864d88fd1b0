import type { Component } from 'svelte';
import type { Question } from '../../../practice/questions/types.ts';
import type { AnswerProps } from './answering.ts';
import ChosenAnswer from './ChosenAnswer.svelte';
import OrderedAnswer from './OrderedAnswer.svelte';
import PointedAnswer from './PointedAnswer.svelte';
import ReadAnswer from './ReadAnswer.svelte';
import TypedAnswer from './TypedAnswer.svelte';

/** What a question of each kind is answered with. */
export const answerFields: Readonly<
  Record<Question['kind'], Component<AnswerProps, object, 'given'>>
> = {
  one: ChosenAnswer,
  several: ChosenAnswer,
  length: TypedAnswer,
  rule: ReadAnswer,
  order: OrderedAnswer,
  fault: PointedAnswer,
};
