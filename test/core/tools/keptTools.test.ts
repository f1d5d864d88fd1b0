import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { planJoint } from '../../../src/core/index.ts';
import { inches, mm } from '../../../src/core/length/mm.ts';
import {
  type ReadToolbox,
  type Toolbox,
  emptyToolbox,
  readToolbox,
  writeToolbox,
} from '../../../src/core/tools/keptTools.ts';
import { measuredTools, toolLimits } from '../../../src/core/tools/toolSet.ts';
import { ordinaryJoint } from '../../support/joints.ts';

const toolbox: Toolbox = {
  sets: [
    {
      name: 'School guide',
      guide: { bushing: inches(1), standoff: mm(0), offset: mm(-0.4), centering: true },
      bit: { hole: mm(9.6), point: { kind: 'twist', angle: 118 } },
      pins: { nominal: inches(3 / 8), readings: [mm(9.4), mm(9.5)] },
    },
    { name: '', guide: {}, bit: { point: { kind: 'brad' } }, pins: { readings: [] } },
  ],
  inUse: 1,
};

/** What is read back must serve the planner, whatever it was. */
function usable(read: ReadToolbox): void {
  if (!read.ok) return;
  for (const set of read.toolbox.sets) {
    const { guide, bit } = measuredTools(set);
    const plan = planJoint({ ...ordinaryJoint('edge', 'in', inches(3 / 4)), guide, bit });
    expect(Number.isNaN(plan.a.stop)).toBe(false);
  }
  expect(read.toolbox.inUse).toBeGreaterThanOrEqual(0);
}

/** As the browser would keep it; a bigint or a circle can't have been kept, and comes out empty. */
function asText(kept: unknown): string {
  try {
    return JSON.stringify(kept);
  } catch {
    return writeToolbox(emptyToolbox);
  }
}

describe('a toolbox that is kept', () => {
  it('comes back as it was', () => {
    for (const one of [toolbox, emptyToolbox]) {
      expect(readToolbox(writeToolbox(one))).toEqual({ ok: true, toolbox: one });
    }
  });

  it('is left alone where a later version wrote it', () => {
    const later = writeToolbox(toolbox).replace('"version":1', '"version":2');
    expect(readToolbox(later)).toEqual({ ok: false, why: 'newer' });
  });

  it.each(['', 'null', '{}', '[]', '"x"', '{"version":1}', '{"version":"1","sets":[]}', '{"ver'])(
    'is given up where it is damaged: %s',
    (text) => {
      expect(readToolbox(text)).toEqual({ ok: false, why: 'damaged' });
    },
  );

  it('loses what is not what it should be, and keeps the rest', () => {
    const text = JSON.stringify({
      version: 1,
      inUse: 7,
      sets: [
        {
          name: 'x'.repeat(500),
          guide: { bushing: '25', standoff: -1, offset: 1e9, centering: 1, other: 3 },
          bit: { hole: 0, point: { kind: 'twist', angle: 400 } },
          pins: { nominal: null, readings: [9.5, 'a', null, -2, 0, 9.6] },
        },
        null,
      ],
    });
    expect(readToolbox(text)).toEqual({
      ok: true,
      toolbox: {
        sets: [
          {
            name: 'x'.repeat(toolLimits.name),
            guide: {},
            bit: {},
            pins: { readings: [9.5, 9.6] },
          },
          { name: '', guide: {}, bit: {}, pins: { readings: [] } },
        ],
        inUse: 1,
      },
    });
  });

  it('never throws and never misleads the planner, whatever is found in its place', () => {
    const anything = fc.oneof(fc.string(), fc.json(), fc.double().map(String));
    fc.assert(
      fc.property(anything, (text) => usable(readToolbox(text))),
      { numRuns: 150 },
    );
    const field = fc.oneof(fc.anything(), fc.double(), fc.constantFrom(toolbox.sets[0]!.guide));
    const like = fc.record({
      version: fc.constant(1),
      inUse: field,
      sets: fc.array(
        fc.oneof(
          field,
          fc.record({
            name: field,
            guide: fc.record({ bushing: field, standoff: field, offset: field, centering: field }),
            bit: fc.record({
              hole: field,
              point: fc.record({
                kind: fc.constantFrom('twist', 'brad', 'center', 'square', 'x'),
                angle: field,
                spur: field,
              }),
            }),
            pins: fc.record({ nominal: field, readings: fc.array(field) }),
          }),
        ),
      ),
    });
    fc.assert(
      fc.property(like, (kept) => {
        const read = readToolbox(asText(kept));
        expect(read.ok).toBe(true);
        usable(read);
      }),
      { numRuns: 150 },
    );
  });
});
