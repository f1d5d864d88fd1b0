import type { JointKind } from '../../core/joint/types.ts';
import type { NamedMistake } from '../../practice/questions/types.ts';
import type { Reviewable } from '../../practice/review/due.ts';
import type { Asked } from '../../practice/review/sitting.ts';

/** A lesson as practice knows it. */
export interface PracticeLesson {
  readonly id: string;
  readonly number: string;
  readonly title: string;
  /** Null while it is in preparation. */
  readonly address: string | null;
  /** The ids of the questions of its own that can be asked again, as reviewables have them. */
  readonly questions: readonly string[];
}

/** What makes questions, as practice knows it without loading it. */
export interface PracticeTemplate extends Reviewable {
  /** The joints that its questions can be about; none where they are about no joint in particular. */
  readonly joints: readonly JointKind[];
}

/** What there is to practice with, found when the site is built. */
export interface PracticeMaterial {
  /** In the order of the course. */
  readonly lessons: readonly PracticeLesson[];
  readonly templates: readonly PracticeTemplate[];
  readonly misconceptions: readonly NamedMistake[];
  /** The address of a lesson's own questions is this, its id and '.json'. */
  readonly bank: string;
}

/** What the student wants to practice: everything, where nothing is chosen. */
export interface Chosen {
  readonly lessons: readonly string[];
  readonly joints: readonly JointKind[];
}

/** A question of a sitting and what became of it. */
export interface Result {
  readonly asked: Asked;
  /** Whether the first answer was right; undefined before there is one. */
  readonly right?: boolean;
  /** What the first answer was mistaken in. */
  readonly mistakes?: readonly NamedMistake[];
}

/** What can be asked of what was chosen, in the order of the course. */
export function reviewables(
  { lessons, templates }: PracticeMaterial,
  chosen: Chosen,
): readonly Reviewable[] {
  const wanted = (id: string) => chosen.lessons.length === 0 || chosen.lessons.includes(id);
  const about = ({ joints }: PracticeTemplate) =>
    chosen.joints.length === 0 || joints.some((joint) => chosen.joints.includes(joint));
  return lessons
    .filter(({ id }) => wanted(id))
    .flatMap(({ id: lesson, questions }) => [
      // A lesson's own question may be about any joint.
      ...(chosen.joints.length === 0 ? questions.map((id) => ({ id, lesson })) : []),
      ...templates.filter((each) => each.lesson === lesson && about(each)),
    ]);
}
