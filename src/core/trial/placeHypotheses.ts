import { mm } from '../length/mm.ts';
import { type BenchSetup, drilledInFace } from './drill.ts';
import { type Hypothesis, change, members, signsOfSetup, suppose } from './hypothesis.ts';
import type { Signs } from './signs.ts';

/** Holes in the wrong place: faces, ends, guide and marks. */
export function placeHypotheses(
  setup: BenchSetup,
  seen: Signs,
  expected: Required<Signs>,
): readonly Hypothesis[] {
  const { plan, guide } = setup;
  const found: Hypothesis[] = [];
  const step = seen.step && (seen.step.start + seen.step.end) / 2;
  for (const member of members) {
    const hooked = change(setup, member, { end: 'other' });
    found.push(suppose('opposite-ends', 0.02, [member], signsOfSetup(hooked).endsOff, hooked));
    const turned = change(setup, member, { face: 'other' });
    const asTurned = signsOfSetup(turned);
    found.push(
      suppose('turned-over', 0, [member], asTurned.step.start || asTurned.endsOff, turned),
    );
    if (step !== undefined && !drilledInFace(plan, member)) {
      // Turned over, the guide's own offset counts twice: the one that would make this step.
      const twice = (step - asTurned.step.start) * (member === 'a' ? 1 : -1);
      const offset = mm(guide.offset + twice / 2);
      found.push(
        suppose('turned-over', 0.1, [member], step, { ...turned, guide: { ...guide, offset } }),
      );
    }
    if (step !== undefined) {
      const off = (step - expected.step.start) * (member === 'a' ? -1 : 1);
      const across = mm(setup[member].across + off);
      found.push(suppose('across-off', 0.3, [member], off, change(setup, member, { across })));
    }
    if (seen.endsOff !== undefined) {
      const off = (seen.endsOff - expected.endsOff) * (member === 'a' ? -1 : 1);
      const marks = setup[member].marks.map((mark) => mm(mark + off));
      found.push(suppose('marks-off', 0.3, [member], off, change(setup, member, { marks })));
    }
    if (seen.meets === false) {
      const marks = setup[member].marks.map((mark, j) => (j === 1 ? mm(mark + 1) : mark));
      found.push(suppose('marks-off', 0.2, [member], 1, change(setup, member, { marks })));
    }
  }
  if (!guide.centering) {
    const centered = { ...setup, guide: { ...guide, centering: true } };
    const { step: made } = signsOfSetup(centered);
    found.push(suppose('centering-guide', 0.1, members, made.start, centered));
  }
  return found;
}

/** A guide that was rocked, so that the holes of a board lean. */
export function leanHypotheses(
  setup: BenchSetup,
  seen: Signs,
  expected: Required<Signs>,
): readonly Hypothesis[] {
  return members.flatMap((member) => {
    const { engagement, holeDepth } = setup.plan[member];
    if (engagement <= 0) return [];
    const sign = member === 'a' ? -1 : 1;
    const toDegrees = (drift: number): number =>
      (Math.atan((sign * 2 * drift) / engagement) * 180) / Math.PI;
    const across = toDegrees(
      seen.step === undefined
        ? 0
        : (seen.step.start + seen.step.end - expected.step.start - expected.step.end) / 2,
    );
    const along = toDegrees(seen.endsOff === undefined ? 0 : seen.endsOff - expected.endsOff);
    const tries = [
      { along: 0, across },
      { along, across: 0 },
      { along, across },
      { along: 0, across: 3 },
      { along: 0, across: -3 },
    ];
    return tries
      .filter(({ along, across }) => Math.hypot(along, across) > 0.05)
      .map((lean) => {
        const degrees = Math.hypot(lean.along, lean.across);
        // Nobody rocks a guide by more than a few degrees without seeing it.
        const rarity = 0.05 + Math.max(0, degrees - 5) / 5;
        const size = Math.tan((degrees * Math.PI) / 180) * holeDepth;
        return suppose('guide-rocked', rarity, [member], size, change(setup, member, { lean }));
      });
  });
}
