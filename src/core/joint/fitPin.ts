import { unmeasuredPinUndersize } from '../fit/fit.ts';
import { type Mm, lessThan, mm } from '../length/mm.ts';
import { fixedLength, product, least, quantity, sum } from '../working/expression.ts';
import { reckon, taken } from '../working/reckon.ts';
import { type Sentence, say } from '../working/sentence.ts';
import type { WorkingStep } from '../working/types.ts';
import { type Across, placeAcross } from './across.ts';
import { type Finding, finding } from './finding.ts';
import { reckonAllowance, reckonLeave, resolveGuide } from './defaults.ts';
import { offBoard, reckonJointLine } from './jointLine.ts';
import { reckonLimitA, reckonLimitB } from './limits.ts';
import { planMiter } from './miter.ts';
import { type Row, spacePins } from './spacing.ts';
import { type Share, type Split, splitPin } from './split.ts';
import { DEFAULT_POINT, reckonTip } from './tip.ts';
import type { Guide, Hole, JointSpec, Pin } from './types.ts';

/** Glue room above which a fit is called loose, mm of diameter. */
const LOOSE = 0.2;
/** Published advice for the depth in each member, in pin diameters; second-hand. */
const ADVISED = { least: 2, most: 2.5, note: 1.5 };

/** One pin tried in a joint: everything that depends on the pin. */
export interface FittedPin {
  readonly pin: Pin;
  readonly bit: Mm;
  readonly guide: Required<Guide>;
  readonly split: Split;
  readonly row: Row;
  readonly across: Across;
  readonly limit: { readonly a: WorkingStep; readonly b: WorkingStep };
  readonly line: WorkingStep;
  readonly tip: WorkingStep;
  readonly leave: WorkingStep;
  readonly allowance: WorkingStep;
  readonly stop: {
    readonly a: readonly [WorkingStep, WorkingStep];
    readonly b: readonly [WorkingStep, WorkingStep];
  };
  readonly holes: readonly Hole[];
  readonly secondRow: readonly Mm[];
  /** How far the pin's length is from what both boards would like, mm. */
  readonly lengthMiss: number;
  readonly cautions: readonly Finding[];
  readonly working: readonly WorkingStep[];
}

/** True where nothing stands against the pin. */
export function fits(fitted: FittedPin): boolean {
  return !fitted.cautions.some((each) => each.severity === 'error');
}

function reckonStop(
  side: 'a' | 'b',
  guide: Required<Guide>,
  holeDepth: WorkingStep,
  tip: WorkingStep,
): readonly [WorkingStep, WorkingStep] {
  const letter = side.toUpperCase();
  const stop = reckon({
    id: `${side}.stop`,
    label: `Stop for ${letter}, from the collar to the bit's full diameter`,
    symbol: `stop_${letter}`,
    formula: sum(
      quantity('bushing', guide.bushing),
      quantity('standoff', guide.standoff),
      taken(holeDepth),
    ),
    source: 'geometry',
  });
  const fromPoint = reckon({
    id: `${side}.stopFromPoint`,
    label: `Stop for ${letter}, from the collar to the very point`,
    symbol: `stop point_${letter}`,
    formula: sum(taken(stop), taken(tip)),
    source: 'geometry',
  });
  return [stop, fromPoint];
}

/** A note where a member holds less of the pin than 1.5 diameters, and why. */
function shallowNotes(pin: Pin, split: Split): readonly Finding[] {
  return (['b', 'a'] as const).flatMap((side) => {
    const share: Share = split[side];
    if (!lessThan(share.engagement.result, ADVISED.note * pin.diameter)) return [];
    const letter = side.toUpperCase();
    const advice = mm(ADVISED.least * pin.diameter);
    const times = (share.engagement.result / pin.diameter).toFixed(1);
    const why: Sentence = lessThan(share.most.result, advice)
      ? say`This board can hold at most ${share.most.result}: the rest goes to the bit's point, the free depth and the wood left behind.`
      : say`The pin is no longer than ${pin.length}.`;
    return [
      finding(
        'shallow',
        'note',
        [
          ...say`Board ${letter} holds ${share.engagement.result} of the pin, ${times} diameters; the published advice is 2 to 2.5 diameters, ${advice} and more. `,
          ...why,
        ],
        lessThan(share.most.result, advice)
          ? say`Nothing to mend if the board can't be thicker: the pin's other end takes the rest. More pins share the load.`
          : say`Take a longer pin where you have one.`,
      ),
    ];
  });
}

/** Whether the pin suits the bit, where they differ. */
function bitCautions(pin: Pin, bit: Mm): readonly Finding[] {
  const clearance = bit - (pin.diameter - unmeasuredPinUndersize);
  if (lessThan(clearance, 0)) {
    return [
      finding(
        'pin-tight',
        'caution',
        say`A ${pin.diameter} pin does not go into a ${bit} hole.`,
        say`Use the bit that belongs to the pin, or measure both: names of two systems rarely match.`,
      ),
    ];
  }
  if (lessThan(LOOSE, clearance)) {
    return [
      finding(
        'pin-loose',
        'caution',
        say`A ${pin.diameter} pin rattles in a ${bit} hole: the glue line would be thick and weak.`,
        say`Use the bit that belongs to the pin.`,
      ),
    ];
  }
  return [];
}

/** The length that would give each board its best, and the miss of this pin. */
function reckonWanted(pin: Pin, split: Split): WorkingStep {
  const best = product(ADVISED.most, quantity('d', pin.diameter));
  return reckon({
    id: 'pin.wanted',
    label: 'Length of pin that would suit both boards',
    symbol: 'L wanted',
    formula: sum(least(best, taken(split.a.most)), least(best, taken(split.b.most))),
    source: 'is-3845',
    rule: '2.5 diameters in each board, or as much as it can hold',
  });
}

/** Works a joint out for one pin. */
export function fitPin(spec: JointSpec, pin: Pin): FittedPin {
  const bit = spec.bit?.diameter ?? pin.diameter;
  const guide = resolveGuide(spec);
  const tip = reckonTip(spec.bit?.point ?? DEFAULT_POINT, bit);
  const leave = reckonLeave(spec, tip);
  const allowance = reckonAllowance(spec);
  const line = reckonJointLine(spec);
  const across = placeAcross(spec, guide, bit);
  const length = reckon({
    id: 'pin.length',
    label: 'Length of the pin',
    symbol: 'L',
    formula: fixedLength(pin.length),
    source: 'setting',
  });

  let row: Row;
  let split: Split;
  let limit: FittedPin['limit'];
  let between: readonly WorkingStep[];
  let secondRow: readonly Mm[] = [];
  if (spec.kind === 'miter') {
    const miter = planMiter({ spec, pin, bit, line, tip, leave, allowance });
    ({ row, split, limit } = miter);
    between = miter.working;
  } else {
    row = spacePins(spec, line, bit);
    if (spec.kind === 'leg') {
      secondRow = row.positions.map((each) => mm(each + (spec.stagger ?? 0)));
    }
    limit = {
      a: reckonLimitA(spec),
      b: reckonLimitB(spec, across, row.positions, secondRow, bit, leave),
    };
    split = splitPin({ pin, limit, tip, leave, allowance });
    between = [];
  }
  const stop = {
    a: reckonStop('a', guide, split.a.holeDepth, tip),
    b: reckonStop('b', guide, split.b.holeDepth, tip),
  };
  const along = spec.kind === 'frame' ? (spec.at ?? 0) : 0;
  const holes = row.positions.map((position) => ({
    along: position,
    alongB: mm(position + along),
    acrossA: mm(across.a.result),
    acrossB: mm(across.b.result),
  }));
  const wanted = reckonWanted(pin, split);
  const fault = split.fault;
  return {
    pin,
    bit,
    guide,
    split,
    row,
    across,
    limit,
    line,
    tip,
    leave,
    allowance,
    stop,
    holes,
    secondRow,
    lengthMiss: Math.abs(pin.length - wanted.result),
    cautions: [
      ...(fault ? [finding(fault.code, 'error', fault.message, fault.remedy)] : []),
      ...offBoard(spec, line, holes, bit),
      ...row.cautions,
      ...across.cautions,
      ...bitCautions(pin, bit),
      ...(fault ? [] : shallowNotes(pin, split)),
    ],
    // In the order of reckoning; a miter's two members share some steps.
    working: [
      ...new Set([
        length,
        line,
        across.a,
        across.b,
        tip,
        leave,
        allowance,
        ...between,
        // Elsewhere the limit decides the split; in a miter it follows from where the pins stand.
        ...(spec.kind === 'miter' ? [] : [limit.b, limit.a]),
        split.b.most,
        split.a.most,
        wanted,
        split.b.engagement,
        split.a.engagement,
        split.b.holeDepth,
        split.a.holeDepth,
        ...row.working,
        limit.b,
        limit.a,
        split.b.woodLeft,
        split.a.woodLeft,
        ...stop.b,
        ...stop.a,
        across.wallA,
        ...(across.wallB === null ? [] : [across.wallB]),
      ]),
    ],
  };
}
