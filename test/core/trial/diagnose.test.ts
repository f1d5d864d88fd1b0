import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { type JointSpec, plainText, planJoint } from '../../../src/core/index.ts';
import { mm } from '../../../src/core/length/mm.ts';
import { type ClassicMistake, classicMistakes } from '../../../src/core/trial/classicMistakes.ts';
import { diagnose } from '../../../src/core/trial/diagnose.ts';
import { type BenchSetup, soundSetup } from '../../../src/core/trial/drill.ts';
import { signsOfSetup } from '../../../src/core/trial/hypothesis.ts';
import type { Signs } from '../../../src/core/trial/signs.ts';
import { summarize } from '../../../src/core/tools/readings.ts';
import { sensibleSpec } from '../../support/joints.ts';

/** A setup for a spec that can be made with a pin that goes in its holes; skips the others. */
function soundFor(spec: JointSpec): BenchSetup {
  const b = spec.kind === 'miter' ? { ...spec.b, width: spec.a.width } : spec.b;
  const plan = planJoint({ ...spec, b, pin: 'choose', bit: {} });
  fc.pre(plan.ok && plan.holes.length > 1);
  return soundSetup(plan);
}

/** Every length that a person could measure on the joint. */
function measures(signs: Required<Signs>): readonly number[] {
  const { opening, step, endsOff, through, endRoom } = signs;
  return [
    opening.start,
    opening.end,
    step.start,
    step.end,
    endsOff,
    through.a.by ?? 0,
    through.b.by ?? 0,
    endRoom,
  ];
}

/** Whether a mistake changes what can be seen by more than a tenth of a millimeter. */
function shows(sound: Required<Signs>, wrong: Required<Signs>): boolean {
  const before = measures(sound);
  return (
    measures(wrong).some((value, k) => Math.abs(value - (before[k] as number)) > 0.1) ||
    sound.pins !== wrong.pins
  );
}

/** Mistakes of any size and on either board. */
const mistakes: fc.Arbitrary<{
  readonly code: string;
  readonly wrong: (of: BenchSetup) => BenchSetup;
}> = fc.oneof(
  fc
    .record({
      after: fc.integer({ min: 1, max: 5 }),
      by: fc.double({ min: -10, max: 10, noNaN: true }),
    })
    .map(({ after, by }) => ({
      code: 'stop-slipped',
      wrong: (of: BenchSetup) => {
        // Between the boards it could not be told from a stop set wrongly for the second.
        fc.pre(after % of.plan.holes.length !== 0);
        return { ...of, slip: { after, by: mm(by) } };
      },
    })),
  fc
    .record({
      member: fc.constantFrom('a' as const, 'b' as const),
      along: fc.double({ min: -4, max: 4, noNaN: true }),
      across: fc.double({ min: -4, max: 4, noNaN: true }),
    })
    .map(({ member, along, across }) => ({
      code: 'guide-rocked',
      wrong: (of: BenchSetup) => ({ ...of, [member]: { ...of[member], lean: { along, across } } }),
    })),
  fc.constantFrom('a' as const, 'b' as const).map((member) => ({
    code: 'opposite-ends',
    wrong: (of: BenchSetup) => ({ ...of, [member]: { ...of[member], end: 'other' as const } }),
  })),
  fc
    .record({
      member: fc.constantFrom('a' as const, 'b' as const),
      offset: fc.double({ min: -1.5, max: 1.5, noNaN: true }),
    })
    .map(({ member, offset }) => ({
      code: 'turned-over',
      wrong: (of: BenchSetup) => ({
        ...of,
        guide: { ...of.guide, offset: mm(of.guide.offset + offset) },
        [member]: { ...of[member], face: 'other' as const },
      }),
    })),
  fc.constantFrom('a' as const, 'b' as const).map((member) => ({
    code: 'forgot-bushing',
    wrong: (of: BenchSetup) => {
      const { stop } = of[member];
      const collar = mm('collar' in stop ? Math.max(0, stop.collar - of.guide.bushing) : 0);
      return { ...of, [member]: { ...of[member], stop: { collar } } };
    },
  })),
);

describe('diagnose, fed all the signs of one known mistake', () => {
  it.each(classicMistakes)(
    'lists "$title" among its first two causes, in any setup where it shows',
    (mistake: ClassicMistake) => {
      let shown = 0;
      fc.assert(
        fc.property(sensibleSpec, fc.constantFrom('a' as const, 'b' as const), (spec, first) => {
          const sound = { ...soundFor(spec), first };
          const signs = signsOfSetup(mistake.make(sound));
          fc.pre(shows(signsOfSetup(sound), signs));
          shown++;
          const codes = diagnose(sound, signs).map(({ code }) => code);
          expect(codes.slice(0, 2)).toContain(mistake.code);
        }),
        { numRuns: 40, maxSkipsPerRun: 1000 },
      );
      expect(shown).toBeGreaterThanOrEqual(40);
    },
  );

  it('lists a mistake of any size, on either board, among its first two causes', () => {
    fc.assert(
      fc.property(sensibleSpec, mistakes, (spec, { code, wrong }) => {
        const sound = soundFor(spec);
        const signs = signsOfSetup(wrong(sound));
        fc.pre(shows(signsOfSetup(sound), signs));
        const codes = diagnose(sound, signs).map((each) => each.code);
        expect(codes.slice(0, 2)).toContain(code);
      }),
      { numRuns: 150, maxSkipsPerRun: 1000 },
    );
  });
});

const plan = planJoint({
  kind: 'edge',
  system: 'mm',
  a: { thickness: mm(18), width: mm(90), length: mm(600) },
  b: { thickness: mm(18), width: mm(110), length: mm(600) },
});
const sound = soundSetup(plan);

describe('diagnose, from a few signs', () => {
  const codes = (signs: Signs): readonly string[] => diagnose(sound, signs).map(({ code }) => code);

  it('finds nothing in a sound joint, whatever was looked at', () => {
    expect(diagnose(sound, {})).toEqual([]);
    expect(diagnose(sound, signsOfSetup(sound))).toEqual([]);
    expect(diagnose(sound, { step: { start: mm(0.05), end: mm(-0.05) } })).toEqual([]);
  });
  it('thinks of the guide where a step runs along the whole joint', () => {
    expect(codes({ step: { start: mm(0.8), end: mm(0.8) }, pins: 'slide' })[0]).toBe('turned-over');
  });
  it('thinks of an end out of square where the joint is open at one end and the pins have room', () => {
    const signs: Signs = {
      opening: { start: mm(0), end: mm(1.5) },
      endRoom: mm(6),
      pins: 'slide',
    };
    expect(codes(signs)[0]).toBe('out-of-square');
    expect(codes({ ...signs, endRoom: mm(-1.5) })[0]).not.toBe('out-of-square');
  });
  it('thinks of chips where the joint is a little open and the holes are deep enough', () => {
    const signs: Signs = { opening: { start: mm(1), end: mm(1) }, endRoom: mm(6) };
    expect(codes(signs)[0]).toBe('chips');
  });
  it('thinks of swollen pins where they bind and their sizes are of one system', () => {
    expect(codes({ pins: 'bind' }).slice(0, 3)).toContain('pin-swollen');
  });
  it('thinks of a cupped board where the middle stands open', () => {
    expect(codes({ openInMiddle: true })).toEqual(['cupped']);
  });
  it('thinks of the marks where the pins do not find their holes', () => {
    expect(codes({ meets: false })[0]).toBe('marks-off');
  });
  it('gives numbers to correct by', () => {
    const [first] = diagnose(sound, {
      opening: { start: mm(3), end: mm(3) },
      endRoom: mm(-3),
    });
    expect(first?.check.length).toBeGreaterThan(0);
    expect(first?.correction.some((piece) => typeof piece !== 'string')).toBe(true);
  });
  it.each([
    ['a', -2.5, 'farther from', 'Drill the same holes again'],
    ['b', -2.5, 'farther from', 'Drill the same holes again'],
    ['b', 4, 'nearer to', 'Holes that are too deep can stay'],
  ] as const)(
    'says how to move the collar where the stop for %s was %d mm off',
    (member, error, way, then) => {
      const stop = { collar: mm(plan[member].stop + error) };
      const signs = signsOfSetup({ ...sound, [member]: { ...sound[member], stop } });
      const found = diagnose(sound, signs).find(({ code }) => code === 'stop-off')!;
      const says = plainText(found.correction, 'mm');
      expect(says).toContain(`move the collar ${Math.abs(error)} mm ${way} the tip. ${then}`);
      // Which of the two boards it was can't be seen: the holes of a pin share the error.
      expect(found.correction).toContainEqual({ mm: plan[found.members[0]!].stop });
    },
  );
  it('moves the collar by the bushing where that was forgotten, and back by as much as it slipped', () => {
    const moveIn = (signs: Signs, of: string): string =>
      plainText(diagnose(sound, signs).find(({ code }) => code === of)!.correction, 'mm');
    const forgot = {
      ...sound,
      a: { ...sound.a, stop: { collar: mm(plan.a.stop - sound.guide.bushing) } },
    };
    expect(moveIn(signsOfSetup(forgot), 'forgot-bushing')).toContain(
      `move the collar ${sound.guide.bushing} mm farther from the tip`,
    );
    const slipped = { ...sound, slip: { after: 1, by: mm(3) } };
    expect(moveIn(signsOfSetup(slipped), 'stop-slipped')).toContain(
      'move the collar 3 mm nearer to the tip',
    );
  });
  it('says which way to set the guide where a step shows that it was off', () => {
    const across = (off: number) => {
      const wrong = { ...sound, b: { ...sound.b, across: mm(sound.b.across + off) } };
      const { step } = signsOfSetup(wrong);
      const found = diagnose(sound, { step }).find(({ code }) => code === 'across-off')!;
      // Seen from the step, A may as well be off the other way.
      const toward = (found.members[0] === 'b' ? off : -off) > 0;
      const way = toward ? 'nearer to' : 'farther from';
      expect(plainText(found.correction, 'mm')).toContain(
        `set the guide 1 mm ${way} the reference face`,
      );
    };
    across(1);
    across(-1);
  });
  it('says of each cause whether it explains all', () => {
    const found = diagnose(sound, signsOfSetup({ ...sound, b: { ...sound.b, end: 'other' } }));
    expect(found.every(({ explainsAll }) => typeof explainsAll === 'boolean')).toBe(true);
  });
  it('believes readings of the pins: thick ones bind, thin ones rattle, right ones do neither', () => {
    const hole = sound.a.bit.diameter;
    const pins = (...off: number[]) => summarize(off.map((by) => mm(hole + by)))!;
    const first = (how: 'bind' | 'rattle', measured: ReturnType<typeof pins>) =>
      diagnose(sound, { pins: how }, measured)[0]!;
    const thick = first('bind', pins(0.05, 0.1, 0.15));
    expect(thick.code).toBe('pin-swollen');
    // Mean 0.1 over the hole; two spreads of 0.05 more for the thickest.
    expect(plainText(thick.message, 'mm')).toContain(
      `By your 3 readings they are: on average ${hole + 0.1} mm, the thickest about ${hole + 0.2} mm, in holes of ${hole} mm.`,
    );
    // None of these is thicker than the hole, but they differ so that others of the bag are.
    expect(first('bind', pins(-0.2, -0.1, 0)).code).toBe('pin-swollen');
    expect(first('rattle', pins(-0.3, -0.3)).code).toBe('pin-thin');
    const right = pins(-0.1, -0.11, -0.09);
    for (const [how, code] of [
      ['bind', 'pin-swollen'],
      ['rattle', 'pin-thin'],
    ] as const) {
      const found = diagnose(sound, { pins: how }, right);
      const place = found.findIndex((cause) => cause.code === code);
      expect(place).toBe(found.length - 1);
      expect(plainText(found[place]!.message, 'mm')).toContain('were not when you measured them');
    }
  });
  it('tells a pin of the other system by its readings', () => {
    const pins = summarize([mm(9.88), mm(9.91), mm(9.9)])!;
    const threeEighths = planJoint({
      kind: 'edge',
      system: 'in',
      a: { thickness: mm(19.05), width: mm(90), length: mm(600) },
      b: { thickness: mm(19.05), width: mm(110), length: mm(600) },
    });
    const [found] = diagnose(soundSetup(threeEighths), { pins: 'bind' }, pins);
    expect(found!.code).toBe('mixed-systems');
  });
  it('names a sign that is not a number', () => {
    expect(() => diagnose(sound, { endsOff: mm(NaN) })).toThrow('endsOff');
    expect(() => diagnose(sound, { step: { start: mm(0), end: mm(Infinity) } })).toThrow(
      'step.end',
    );
  });
});
