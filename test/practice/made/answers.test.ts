import { describe, expect, it } from 'vitest';
import { planJoint } from '../../../src/core/joint/planJoint.ts';
import type { JointPlan, JointSpec, System } from '../../../src/core/joint/types.ts';
import { type Mm, mm } from '../../../src/core/length/mm.ts';
import type { Species } from '../../../src/core/moisture/species.ts';
import { shopTable } from '../../../src/core/stock/diameterRules.ts';
import type { PulledPin } from '../../../src/core/strength/compare.ts';
import { type BenchSetup, drill, soundSetup } from '../../../src/core/trial/drill.ts';
import { dryFit } from '../../../src/core/trial/dryFit.ts';
import { templates } from '../../../src/practice/made/index.ts';
import { draftOf } from '../../../src/practice/made/makeQuestion.ts';
import type { Draft } from '../../../src/practice/made/template.ts';
import { valueOf } from '../../../src/practice/made/values.ts';
import { benchSetup } from '../../../src/practice/questions/drawnSetup.ts';
import { isJoint } from '../../../src/practice/questions/setupKinds.ts';

/** A question's numbers, and its joint where it has one. */
interface Asked {
  readonly draft: Draft;
  readonly spec: JointSpec;
  readonly plan: JointPlan;
  readonly system: System;
  /** A number that the question gives, by the name that its texts call it. */
  readonly given: (name: string) => number;
  /** The settings of a calculation other than a joint's. */
  readonly values: Record<string, unknown>;
}

/** The joint drilled as planned, but for what is changed; then pushed together. */
function tried({ spec }: Pick<Asked, 'spec'>, change: (sound: BenchSetup) => BenchSetup) {
  const trial = drill(change(soundSetup(planJoint(spec))));
  return { trial, outcome: dryFit(trial) };
}

/** Both boards drilled to these depths. */
function drilledTo(asked: Asked, inA: number, inB: number) {
  return tried(asked, (sound) => {
    const { bushing, standoff } = sound.guide;
    const collar = (depth: number) => ({ collar: mm(bushing + standoff + depth) });
    return {
      ...sound,
      a: { ...sound.a, stop: collar(inA) },
      b: { ...sound.b, stop: collar(inB) },
    };
  }).outcome;
}

/** The length of a bit's point, from its angle or its spur. */
function pointOf({ spec, plan }: Asked): number {
  const point = spec.bit?.point;
  if (point?.kind === 'brad') return point.spur ?? NaN;
  if (point?.kind === 'twist') {
    return (plan.spec.bit.diameter / 2) * (1 / Math.tan((point.angle / 2) * (Math.PI / 180)));
  }
  return NaN;
}

/** Pins put down one by one, until the last stands within a space of the far margin. */
function pinsNeeded(length: number, margin: number, widest: number): number {
  let spaces = 1;
  while ((length - 2 * margin) / spaces > widest + 1e-6) spaces++;
  return spaces + 1;
}

/** How much of its pin B can hold, by hand. */
function mostInFace(asked: Asked): number {
  const { b, leave = NaN, allowance = NaN } = asked.spec;
  return b.thickness - leave - pointOf(asked) - allowance;
}

const halfOfPin = ({ plan }: Asked) => (plan.pin?.length ?? NaN) / 2;

/** Bushing, gap and the hole that holds so much of the pin. */
function stopFor(asked: Asked, inBoard: number): number {
  const { bushing = NaN, standoff = NaN } = asked.spec.guide ?? {};
  return bushing + standoff + inBoard + (asked.spec.allowance ?? NaN);
}

/** The right length or number of each template, worked out by another path than the question's. */
const EXPECTED: Readonly<Record<string, (asked: Asked) => number>> = {
  'free-room': (asked) => drilledTo(asked, asked.given('hole.a'), asked.given('hole.b')).endRoom,
  'gap-that-stays': (asked) => drilledTo(asked, asked.given('hole.a'), asked.given('hole.b')).gap,
  'rule-on-the-other-end': (asked) => {
    const mark = mm(asked.given('mark'));
    const marks = asked.plan.marks.map(() => mark);
    const { trial } = tried(asked, (sound) => ({
      ...sound,
      a: { ...sound.a, marks },
      b: { ...sound.b, marks, end: 'other' },
    }));
    const [pin] = trial.pins;
    return Math.abs((pin?.b.along ?? NaN) - (pin?.a.along ?? NaN));
  },
  'middle-of-the-edge': ({ spec }) => spec.a.thickness / 2,
  'most-in-the-face': mostInFace,
  'rest-in-the-end': (asked) =>
    2 * halfOfPin(asked) - Math.min(halfOfPin(asked), mostInFace(asked)),
  'wood-left': (asked) => tried(asked, (sound) => sound).outcome.pins[0]?.woodLeft.b ?? NaN,
  'stop-for-a-board': (asked) => {
    const board = asked.draft.kind === 'length' && asked.draft.answer.startsWith('a') ? 'a' : 'b';
    // The leg's rows meet as far in as the setback, half the apron and half the bit leave room.
    const { spec, plan } = asked;
    const room =
      spec.kind === 'leg'
        ? spec.b.thickness -
          plan.spec.setback -
          spec.a.thickness / 2 -
          plan.spec.bit.diameter / 2 -
          spec.b.thickness
        : 0;
    const inB = Math.min(halfOfPin(asked), mostInFace(asked) + room);
    return stopFor(asked, board === 'b' ? inB : 2 * halfOfPin(asked) - inB);
  },
  'stop-in-an-edge': (asked) => stopFor(asked, halfOfPin(asked)),
  'hole-from-the-stop': (asked) =>
    tried(asked, (sound) => ({
      ...sound,
      b: { ...sound.b, stop: { collar: mm(asked.given('stop')) } },
    })).trial.pins[0]?.b.depth ?? NaN,
  'how-many-pins': ({ plan, spec }) =>
    pinsNeeded(plan.spec.jointLength, spec.layout?.endMargin ?? NaN, spec.layout?.maxPitch ?? NaN),
  'pitch-of-a-row': ({ plan }) => (plan.positions[1] ?? NaN) - (plan.positions[0] ?? NaN),
  'place-of-a-pin': ({ plan, draft }) => {
    const pin = Number(/pin (\d+)/.exec(draft.ask)?.[1]);
    return plan.marks[pin - 1] ?? NaN;
  },
  'hole-in-the-edge': (asked) => halfOfPin(asked) + (asked.spec.allowance ?? NaN),
  'clamps-for-a-panel': ({ values }) => {
    const [length, board, caul] = ['length', 'boardWidth', 'caul'].map((name) =>
      Number(values[name]),
    ) as [number, number, number];
    let clamps = 2;
    while (clamps * 2 * (board + caul) < length - 1e-6) clamps++;
    return clamps;
  },
  'overhang-of-the-top': ({ spec }) => (spec.overhang ?? NaN) + spec.a.thickness / 2,
  'height-of-the-shelf': ({ spec }) => (spec.at ?? NaN) + spec.a.thickness / 2,
  'marks-on-the-stile': ({ plan, draft }) =>
    plan.holes[draft.ask.includes('upper') ? 1 : 0]?.alongB ?? NaN,
  'reveal-of-the-rail': ({ spec }) => (spec.reveal ?? NaN) + spec.a.thickness / 2,
  'line-of-the-miter': ({ spec }) => Math.hypot(spec.a.width, spec.a.width),
  'pin-to-the-toe': ({ plan }) => plan.b.limit,
  'setback-of-the-apron': ({ spec }) => (spec.setback ?? NaN) + spec.a.thickness / 2,
  'room-in-the-leg': ({ spec, plan }) =>
    spec.b.thickness - (spec.setback ?? NaN) - spec.a.thickness / 2 - plan.spec.bit.diameter / 2,
  'glue-line': ({ values }) => (Number(values['hole']) - Number(values['measured'])) / 2,
  'board-in-a-season': ({ values }) => {
    const { tangential, radial } = values['wood'] as Species;
    const rise = Number(values['to']) - Number(values['from']);
    const perPercent = values['rings'] === 'along' ? tangential : (radial ?? NaN);
    return Number(values['size']) * perPercent * rise;
  },
  'pins-disagree': ({ values }) => Number(values['secondFarther']) + Number(values['thirdNearer']),
  'pull-of-a-pin': ({ values }) => {
    const [first, second] = [values['first'], values['second']] as [PulledPin, PulledPin];
    const byDepth = (second.engagement / first.engagement) ** 0.89;
    return (second.diameter / first.diameter) * byDepth;
  },
  'pins-for-a-piece': ({ plan, spec, draft }) => {
    const shelves = Number(/(\d) shelves/.exec(draft.situation)?.[1]);
    const { endMargin = NaN, maxPitch = NaN } = spec.layout ?? {};
    return (2 + 2 * shelves) * pinsNeeded(plan.spec.jointLength, endMargin, maxPitch);
  },
};

/** What a draft says is right: its length, or the value of its right choice. */
function rightOf(draft: Draft): number {
  const { numbers } = draft;
  if (draft.kind === 'length' || draft.kind === 'rule') {
    return valueOf(draft.answer, { numbers }).value;
  }
  const right = draft.kind === 'one' ? draft.choices.find((choice) => choice.right) : undefined;
  if (right?.of === undefined) throw new Error('there is no one number that is right');
  return valueOf(right.of, { numbers, changed: right.changed }).value;
}

/** The id of the right choice. */
function chosen(draft: Draft): string | undefined {
  return draft.kind === 'one' ? draft.choices.find(({ right }) => right)?.id : undefined;
}

const SEEDS = Array.from({ length: 30 }, (_, i) => 1 + i * 104_729);

/** Calls back with the drafts of a template. */
function eachDraft(id: string, check: (asked: Asked, where: string) => void): void {
  const template = templates.find((each) => each.id === id);
  if (!template) throw new Error(`no template '${id}'`);
  for (const seed of SEEDS) {
    for (const system of ['in', 'mm'] as const) {
      const draft = draftOf(template, seed, system);
      const { setup, numbers } = draft;
      const spec = setup && isJoint(setup) ? setup : (undefined as unknown as JointSpec);
      const asked: Asked = {
        ...{ draft, spec, system },
        plan: spec && planJoint(spec),
        given: (name) => valueOf(name, { numbers }).value,
        values: setup && !isJoint(setup) ? (setup.values as Record<string, unknown>) : {},
      };
      check(asked, `seed ${seed}, ${system}`);
    }
  }
}

/** Templates whose right answer is no number: each has a test of its own below. */
const OTHERWISE = [
  'name-the-joint',
  'order-at-the-drill',
  'one-board-turned-over',
  'read-the-rule',
  'pin-diameter',
  'pins-that-do-not-fit',
  'wrong-depth',
  'wrong-hole',
  'order-at-the-bench',
  'verdict-of-a-fit',
  'order-of-a-piece',
];

describe('what a template says is right', () => {
  it('is worked out again for every one of them', () => {
    const tried = [...Object.keys(EXPECTED), ...OTHERWISE];
    expect(tried.sort()).toEqual(templates.map(({ id }) => id).sort());
  });

  it.each(Object.keys(EXPECTED))('%s: the calculator gives the same by another path', (id) => {
    eachDraft(id, (asked, where) => {
      expect(rightOf(asked.draft), where).toBeCloseTo(EXPECTED[id]!(asked), 6);
    });
  });

  it('name-the-joint: the joint that is described', () => {
    eachDraft('name-the-joint', ({ draft, spec }) => expect(chosen(draft)).toBe(spec.kind));
  });

  it('one-board-turned-over: the step that comes of drilling so', () => {
    eachDraft('one-board-turned-over', ({ draft, values }, where) => {
      const spec = values['joint'] as JointSpec;
      const offset = values['guideOff'] as Mm;
      const { step } = tried({ spec }, (sound) => ({
        ...sound,
        guide: { ...sound.guide, offset },
        b: { ...sound.b, face: draft.situation.includes('turned over') ? 'other' : 'reference' },
      })).outcome;
      const flush = chosen(draft) === 'flush';
      expect(Math.abs(step.start), where).toBeCloseTo(flush ? 0 : rightOf(draft), 6);
    });
  });

  it('read-the-rule: the line stands on a mark, and the answer is what it marks', () => {
    eachDraft('read-the-rule', ({ draft }) => {
      if (draft.kind !== 'rule') throw new Error('not a rule');
      const { division, line, from, to } = draft.rule;
      const one = division.unit === 'in' ? 25.4 / division.denominator : division.step;
      expect(line / one).toBeCloseTo(Math.round(line / one), 6);
      expect(Math.round(line / one) % 2).toBe(1);
      expect(rightOf(draft)).toBeCloseTo(line, 6);
      expect(from < line && line < to).toBe(true);
    });
  });

  it('pin-diameter: the only one of the table that belongs to A', () => {
    eachDraft('pin-diameter', ({ draft, spec, system }, where) => {
      const rows = shopTable[system].filter(
        ({ from, to }) => from <= spec.a.thickness && spec.a.thickness <= to,
      );
      expect(rows, where).toHaveLength(1);
      expect(rightOf(draft), where).toBe(rows[0]?.diameter);
    });
  });

  it('pins-that-do-not-fit: those that the table or the boards refuse', () => {
    eachDraft('pins-that-do-not-fit', ({ draft, spec, system }, where) => {
      if (draft.kind !== 'several') throw new Error('not several');
      draft.choices.forEach(({ right }, i) => {
        const [diameter, length] = [`d.${i}`, `l.${i}`].map((name) =>
          mm(valueOf(name, { numbers: draft.numbers }).value),
        ) as [Mm, Mm];
        const inTable = shopTable[system].some(
          (row) =>
            row.from <= spec.a.thickness && spec.a.thickness <= row.to && row.diameter === diameter,
        );
        const possible = planJoint({ ...spec, pin: { diameter, length } }).ok;
        expect(right, `${where}: ${diameter} × ${length}`).toBe(!(inTable && possible));
      });
    });
  });

  it('verdict-of-a-fit: what the bands say of hole less pin', () => {
    eachDraft('verdict-of-a-fit', ({ draft, values }) => {
      const clearance = Number(values['hole']) - Number(values['measured']);
      const verdict =
        clearance < 0
          ? 'ease-the-pin'
          : clearance < 0.05
            ? 'starved'
            : clearance <= 0.2
              ? 'good'
              : 'thick';
      expect(chosen(draft)).toBe(verdict);
    });
  });

  it.each([
    ['wrong-depth', ['stop-off', 'same-stop', 'forgot-allowance']],
    ['wrong-hole', ['marks-off']],
  ])('%s: the only board that a dry fit blames', (id, codes) => {
    eachDraft(id, ({ draft }, where) => {
      if (draft.kind !== 'fault') throw new Error('not a fault');
      const right = draft.places.filter((place) => place.right);
      const { causes } = dryFit(drill(benchSetup(draft.drawing.setup)));
      expect(
        causes.map(({ members }) => members),
        where,
      ).toEqual([[right[0]?.at.member]]);
      expect(codes, where).toContain(causes[0]?.code);
    });
  });

  it('wrong-hole: the only hole that is not where the plan has it', () => {
    eachDraft('wrong-hole', ({ draft, plan }) => {
      if (draft.kind !== 'fault') throw new Error('not a fault');
      const { setup } = draft.drawing;
      const wrong = draft.places.filter(({ at }) => {
        if (at.part !== 'hole') return false;
        const drilled = setup[at.member]?.marks?.[at.hole] ?? plan.marks[at.hole];
        return Math.abs((drilled ?? NaN) - (plan.positions[at.hole] ?? NaN)) > 1e-6;
      });
      expect(wrong.map(({ id }) => id)).toEqual(
        draft.places.filter(({ right }) => right).map(({ id }) => id),
      );
    });
  });

  it.each(['order-at-the-drill', 'order-at-the-bench', 'order-of-a-piece'])(
    '%s: safety and choice come before the drill, the dry fit before the glue',
    (id) => {
      eachDraft(id, ({ draft }) => {
        if (draft.kind !== 'order') throw new Error('not an order');
        const place = (step: string) => draft.steps.findIndex((each) => each.id === step);
        for (const [first, then] of [
          ['manual', 'power-off'],
          ['power-off', 'bit'],
          ['bit', 'power-on'],
          ['scrap', 'board'],
          ['pin', 'split'],
          ['scrap', 'drill'],
          ['drill', 'dry-fit'],
          ['dry-fit', 'glue'],
          ['sign-off', 'glue'],
          ['glue', 'clamp'],
        ] as const) {
          if (place(first) >= 0 && place(then) >= 0) expect(place(first)).toBeLessThan(place(then));
        }
        if (id === 'order-at-the-drill') expect(place('manual')).toBe(0);
      });
    },
  );
});
