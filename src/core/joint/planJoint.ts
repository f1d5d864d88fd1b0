import { type Mm, mm } from '../length/mm.ts';
import { fixedLength } from '../working/expression.ts';
import { reckon } from '../working/reckon.ts';
import { say } from '../working/sentence.ts';
import type { WorkingStep } from '../working/types.ts';
import { allowedDiameters } from '../stock/diameterRules.ts';
import { centeringCautions } from './across.ts';
import { type Finding, finding, toCaution } from './finding.ts';
import { checkSpec } from './checkSpec.ts';
import { choosePin, decidingThickness } from './choosePin.ts';
import { crossGrainCautions } from './crossGrain.ts';
import { defaults, resolveGuide } from './defaults.ts';
import { type FittedPin, fitPin } from './fitPin.ts';
import { drilledSide } from './jointLine.ts';
import { defaultMinPitch, toMark } from './spacing.ts';
import { DEFAULT_POINT } from './tip.ts';
import type {
  Caution,
  ConsideredPin,
  JointPlan,
  JointSpec,
  MemberPlan,
  ResolvedSpec,
  System,
} from './types.ts';

const SEVERITIES = ['error', 'caution', 'note'] as const;

/** The findings as cautions of the plan, the worst first. */
function asCautions(findings: readonly Finding[], system: System): readonly Caution[] {
  return SEVERITIES.flatMap((severity) =>
    findings.filter((each) => each.severity === severity).map((each) => toCaution(each, system)),
  );
}

/** What a spec sets that does not depend on the pin. */
function resolveCommon(spec: JointSpec) {
  const zero = mm(0);
  return {
    kind: spec.kind,
    system: spec.system,
    a: spec.a,
    b: spec.b,
    drilled: drilledSide(spec),
    diameterRule: spec.diameterRule ?? 'shop-table',
    guide: resolveGuide(spec),
    overhang: spec.overhang ?? zero,
    at: spec.at ?? zero,
    reveal: spec.reveal ?? zero,
    setback: spec.setback ?? defaults[spec.system].setback,
    stagger: spec.stagger ?? zero,
  } as const;
}

/** A plan for input that gives nothing to plan with: zeros, and the errors that say why. */
function emptyPlan(
  spec: JointSpec,
  cautions: readonly Finding[],
  considered: readonly ConsideredPin[],
): JointPlan {
  const zero = mm(0);
  const usual = defaults[spec.system];
  const none: MemberPlan = {
    engagement: zero,
    holeDepth: zero,
    limit: zero,
    woodLeft: zero,
    wall: null,
    stop: zero,
    stopFromPoint: zero,
  };
  const bit = spec.bit?.diameter ?? zero;
  return {
    kind: spec.kind,
    system: spec.system,
    ok: false,
    spec: {
      ...resolveCommon(spec),
      jointLength: spec.jointLength ?? zero,
      allowance: spec.allowance ?? usual.allowance,
      leave: spec.leave ?? usual.leaveAtPoint,
      bit: { diameter: bit, point: spec.bit?.point ?? DEFAULT_POINT, tip: zero },
      layout: {
        endMargin: spec.layout?.endMargin ?? zero,
        maxPitch: spec.layout?.maxPitch ?? usual.maxPitch,
        minPitch: spec.layout?.minPitch ?? defaultMinPitch(spec.kind, spec.system, bit),
        graduation: spec.layout?.graduation ?? usual.graduation,
      },
    },
    pin: null,
    a: none,
    b: none,
    holes: [],
    positions: [],
    marks: [],
    secondRow: [],
    considered,
    cautions: asCautions(cautions, spec.system),
    working: [],
  };
}

function member(fitted: FittedPin, side: 'a' | 'b'): MemberPlan {
  const share = fitted.split[side];
  const wall = side === 'a' ? fitted.across.wallA : fitted.across.wallB;
  const [stop, stopFromPoint] = fitted.stop[side];
  return {
    engagement: mm(share.engagement.result),
    holeDepth: mm(share.holeDepth.result),
    limit: mm(fitted.limit[side].result),
    woodLeft: mm(share.woodLeft.result),
    wall: wall === null ? null : mm(wall.result),
    stop: mm(stop.result),
    stopFromPoint: mm(stopFromPoint.result),
  };
}

/** The farthest mark that leaves wood beyond the bit. Only a miter's holes grow nearer to an edge along the row. */
function farthestMark({ kind }: JointSpec, { row, split }: FittedPin): Mm {
  if (kind !== 'miter') return mm(Infinity);
  const spare = Math.max(0, split.a.woodLeft.result) * Math.SQRT2;
  return mm(Math.max(...row.positions) + spare);
}

/** The diameter and by which rule it was taken: the first line of the working. */
function reckonDiameter(spec: JointSpec, fitted: FittedPin): WorkingStep {
  const step = {
    id: 'pin.diameter',
    label: 'Diameter of the pin',
    symbol: 'd',
    formula: fixedLength(fitted.pin.diameter),
  } as const;
  if (spec.pin !== undefined && spec.pin !== 'choose') {
    return reckon({ ...step, source: 'setting' });
  }
  const rule = allowedDiameters(
    mm(decidingThickness(spec)),
    spec.diameterRule ?? 'shop-table',
    spec.system,
  );
  return rule.rule === 'ratio'
    ? reckon({ ...step, source: 'is-3845', rule: '1/3 to 1/2 of the thickness' })
    : reckon({
        ...step,
        source: spec.system === 'in' ? 'shop-practice' : 'from-memory',
        rule: 'the shop table',
      });
}

/** A note where the user's own pin is not what the rule would take. */
function ownPinNotes(spec: JointSpec, fitted: FittedPin): readonly Finding[] {
  const thickness = mm(decidingThickness(spec));
  const rule = allowedDiameters(thickness, spec.diameterRule ?? 'shop-table', spec.system);
  if (rule.allows(fitted.pin)) return [];
  return [
    finding(
      'outside-rule',
      'note',
      rule.most > rule.least
        ? say`The rule would take a pin of ${rule.least} to ${rule.most} for a board ${thickness} thick; this one is ${fitted.pin.diameter}.`
        : say`The rule would take a pin of ${rule.least} for a board ${thickness} thick; this one is ${fitted.pin.diameter}.`,
      say`Look at the wood beside the holes, and try the joint in offcuts first.`,
    ),
  ];
}

/** Two boards that a joint needs alike, and are not. */
function mismatchCautions(spec: JointSpec): readonly Finding[] {
  if (spec.kind !== 'miter' || spec.a.width === spec.b.width) return [];
  return [
    finding(
      'members-differ',
      'error',
      say`A miter at 45° needs both members equally wide; A is ${spec.a.width} and B ${spec.b.width}.`,
      say`Rip both to one width, or cut another joint.`,
    ),
  ];
}

/**
 * Plans a dowel joint: which pin, how its length is split between the boards, how deep each hole
 * is, where the stop goes, where the holes go, and what to beware of.
 *
 * @param spec what the learner sets; lengths in mm (see `JointSpec`)
 * @returns the plan; where the joint can't be made, `ok` is false and an error caution says
 *   which limit failed, by how much and what would mend it. Every number is finite and no depth
 *   is negative, whatever was typed.
 * @throws SpecError for a programmer's mistake (NaN, a wrong type, an unknown kind); it names
 *   the field
 * @example planJoint({ kind: 'corner', system: 'in', a: board, b: board }).b.stop
 */
export function planJoint(spec: JointSpec): JointPlan {
  const typed = checkSpec(spec);
  if (typed.length > 0) return emptyPlan(spec, typed, []);

  const choosing = spec.pin === undefined || spec.pin === 'choose';
  const choice = choosing
    ? choosePin(spec)
    : { chosen: fitPin(spec, spec.pin), considered: [], cautions: [] };
  const fitted = choice.chosen;
  if (fitted === null) return emptyPlan(spec, choice.cautions, choice.considered);

  const { positions } = fitted.row;
  const span = mm((positions.at(-1) ?? 0) - (positions[0] ?? 0));
  const cautions = asCautions(
    [
      ...mismatchCautions(spec),
      ...choice.cautions,
      ...fitted.cautions,
      ...centeringCautions(spec, fitted.guide, fitted.across),
      ...(choosing ? [] : ownPinNotes(spec, fitted)),
      ...crossGrainCautions(spec, fitted.pin, span, fitted.bit),
    ],
    spec.system,
  );
  const resolved: ResolvedSpec = {
    ...resolveCommon(spec),
    jointLength: mm(fitted.line.result),
    allowance: mm(fitted.allowance.result),
    leave: mm(fitted.leave.result),
    bit: {
      diameter: fitted.bit,
      point: spec.bit?.point ?? DEFAULT_POINT,
      tip: mm(fitted.tip.result),
    },
    layout: fitted.row.rule,
  };
  return {
    kind: spec.kind,
    system: spec.system,
    ok: !cautions.some((each) => each.severity === 'error'),
    spec: resolved,
    pin: fitted.pin,
    a: member(fitted, 'a'),
    b: member(fitted, 'b'),
    holes: fitted.holes,
    positions,
    marks: positions.map((each): Mm =>
      toMark(each, fitted.row.rule.graduation, farthestMark(spec, fitted)),
    ),
    secondRow: fitted.secondRow,
    considered: choice.considered,
    cautions,
    working: [reckonDiameter(spec, fitted), ...fitted.working],
  };
}
