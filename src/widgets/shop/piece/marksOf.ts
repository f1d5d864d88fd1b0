import { toMark } from '../../../core/joint/spacing.ts';
import type { Mm } from '../../../core/length/mm.ts';
import { type PlannedJoint, markOf, membersOf, placesOf } from '../../../core/piece/planPiece.ts';
import { type References, referencesOf } from '../../../core/piece/references.ts';
import { jointNames } from '../bench/startingJoints.ts';

/** Rows of holes that are laid out alike, with what is written at them. */
export interface MarkedRows {
  /** Such as '1A' and '1B'. */
  readonly marks: readonly string[];
  readonly from: References['along'];
  /** Nearest divisions of the rule. */
  readonly places: readonly Mm[];
}

/** A joint's rows with their marks: one list serves both boards, but for a rail and a leg's aprons. */
export function marksOf({ plan, numbers }: PlannedJoint): readonly MarkedRows[] {
  const { a, b } = referencesOf(plan);
  const lists = membersOf(plan).map((member) => ({
    marks: [markOf(numbers, member)],
    from: member.startsWith('a') ? a.along : b.along,
    // A miter's marks keep away from its toe, which rounding alone would not.
    places:
      plan.kind === 'miter'
        ? plan.marks
        : placesOf(plan, member).map((place) => toMark(place, plan.spec.layout.graduation)),
  }));
  return lists.reduce<typeof lists>((kept, list) => {
    const alike = kept.find(
      (each) => each.from === list.from && each.places.join() === list.places.join(),
    );
    if (alike === undefined) return [...kept, list];
    alike.marks.push(...list.marks);
    return kept;
  }, []);
}

/** What a joint is called: as named, else by its kind. */
export function nameOf({ label, plan }: PlannedJoint): string {
  return label.name || `${jointNames.find(({ kind }) => kind === plan.kind)!.name} joint`;
}
