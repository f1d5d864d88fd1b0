import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type JointSpec,
  decodeSetup,
  encodeSetup,
  inches,
  mm,
  planJoint,
} from '../../../src/core/index.ts';
import { tidyName } from '../../../src/core/setup/labels.ts';
import { anyText } from '../../support/anyText.ts';
import { ordinaryJoint, sensibleSpec } from '../../support/joints.ts';

function joints(link: string): readonly JointSpec[] {
  const decoded = decodeSetup(link);
  if (!decoded.ok) throw new Error(decoded.reason);
  return decoded.setup.joints;
}

describe('a setup link', () => {
  it('of version 1 means for ever what it means today', () => {
    const [corner] = joints(
      '#1;show=in;kind=corner;system=in;a=19.05x139.7x609.6;b=19.05x139.7x609.6',
    );
    expect(corner).toEqual({
      kind: 'corner',
      system: 'in',
      a: { thickness: 19.05, width: 139.7, length: 609.6 },
      b: { thickness: 19.05, width: 139.7, length: 609.6 },
      pin: 'choose',
      allowance: 3.175,
      bit: { point: { kind: 'twist', angle: 118 } },
      guide: { bushing: 25.4, standoff: 0, offset: 0, centering: false },
      overhang: 0,
      at: 0,
      reveal: 0,
      setback: 3.175,
      stagger: 0,
    });
    const [frame] = joints(
      '#1;kind=frame;system=mm;a=18x50x350;b=18x50x600;a.wood=oak-white;pin=8x40;' +
        'allowance=1.5;leave=2;bit=8;point=brad:2.4;bushing=20;standoff=3;offset=-0.2;' +
        'centering=1;margin=12;widest=100;closest=20;at=50;reveal=-3',
    );
    expect(frame).toEqual({
      kind: 'frame',
      system: 'mm',
      a: { thickness: 18, width: 50, length: 350, species: 'oak, white' },
      b: { thickness: 18, width: 50, length: 600 },
      pin: { diameter: 8, length: 40 },
      allowance: 1.5,
      leave: 2,
      bit: { diameter: 8, point: { kind: 'brad', spur: 2.4 } },
      guide: { bushing: 20, standoff: 3, offset: -0.2, centering: true },
      layout: { endMargin: 12, maxPitch: 100, minPitch: 20 },
      overhang: 0,
      at: 50,
      reveal: -3,
      setback: 3,
      stagger: 0,
    });
  });

  it('plans the same joint at the other end, to the last figure', () => {
    // A link keeps nanometers, so the joint is first cut to those.
    const cut = (spec: JointSpec): JointSpec =>
      JSON.parse(JSON.stringify(spec), (_, value: unknown) =>
        typeof value === 'number' ? Math.round(value * 1e6) / 1e6 : value,
      ) as JointSpec;
    fc.assert(
      fc.property(sensibleSpec.map(cut), (spec) => {
        const [back] = joints(encodeSetup({ joints: [spec] }));
        expect(JSON.stringify(planJoint(back!))).toBe(JSON.stringify(planJoint(spec)));
      }),
      { numRuns: 1000 },
    );
  });

  it('is short, and holds several joints and the unit of its sender', () => {
    const one = ordinaryJoint('corner', 'in', inches(3 / 4));
    const two = ordinaryJoint('edge', 'mm', mm(18));
    const link = encodeSetup({ joints: [one, two], show: 'mm' });
    expect(link.length).toBeLessThan(160);
    expect(link).toMatch(/^1;show=mm;kind=corner;/);
    const decoded = decodeSetup(link);
    expect(decoded.ok && decoded.setup.show).toBe('mm');
    expect(joints(link).map(({ kind }) => kind)).toEqual(['corner', 'edge']);
  });

  it('brings what joints, boards and the piece are called, whatever was typed', () => {
    const name = anyText(90);
    const count = fc.integer({ min: 1, max: 60 });
    fc.assert(
      fc.property(name, name, name, count, name, (title, joint, board, count, other) => {
        const labels = [{ name: joint, count, boardA: board, boardB: other }];
        const boards = [{ name: `x${board}`, count: count - 1 }];
        const link = encodeSetup({
          joints: [ordinaryJoint('tee', 'in', inches(3 / 4))],
          labels,
          piece: { title, boards },
        });
        expect(link).toMatch(/^[a-z0-9.,:;=&%-]*$/i);
        const decoded = decodeSetup(link);
        if (!decoded.ok) throw new Error(decoded.reason);
        expect(decoded.setup.labels).toEqual([
          { name: tidyName(joint), count, boardA: tidyName(board), boardB: tidyName(other) },
        ]);
        expect(decoded.setup.piece).toEqual({
          title: tidyName(title),
          boards: [{ name: tidyName(`x${board}`), count: count - 1 }],
        });
      }),
      { numRuns: 500 },
    );
  });

  it('says nothing of names where there are none', () => {
    const decoded = decodeSetup(encodeSetup({ joints: [ordinaryJoint('edge', 'mm', mm(18))] }));
    expect(decoded.ok && decoded.setup.labels).toEqual([
      { name: '', count: 1, boardA: '', boardB: '' },
    ]);
    expect(decoded.ok && decoded.setup.piece).toEqual({ title: '', boards: [] });
  });

  it('is legible in an address as it is', () => {
    fc.assert(
      fc.property(sensibleSpec, (spec) =>
        /^[a-z0-9.,:;=&-]*$/i.test(encodeSetup({ joints: [spec], show: 'in' })),
      ),
    );
  });

  const board = 'a=19.05x140x600;b=19.05x140x600';
  it.each([
    ['', /not a setup/],
    ['#', /not a setup/],
    ['#plan-numbers', /not a setup/],
    ['#2;kind=corner', /newer edition/],
    [`#1;kind=butt;system=in;${board}`, /kind/],
    [`#1;kind=corner;system=cm;${board}`, /system/],
    ['#1;kind=corner;system=in;a=19.05x140x600', /no board B/],
    [`#1;kind=corner;system=in;${board};a=1x1x1`, /twice/],
    [`#1;kind=corner;system=in;${board};__proto__=1`, /means nothing/],
    [`#1;kind=corner;system=in;${board};constructor=1`, /means nothing/],
    [`#1;kind=corner;system=in;${board};leave=`, /no value/],
    [`#1;kind=corner;system=in;${board};leave=NaN`, /not a length/],
    [`#1;kind=corner;system=in;${board};leave=1e9`, /not a length/],
    [`#1;kind=corner;system=in;${board};leave=-3`, /not a length/],
    [`#1;kind=corner;system=in;${board};a.wood=plastic`, /wood/],
    [`#1;kind=corner;system=in;${board};point=<script>`, /point/],
    ['#1;kind=leg;system=in;a=19.05x140x600;b=40x45x600', /not square/],
    [`#1;kind=corner;system=in;${board};pin=8`, /2 lengths/],
    [`#1;${'x'.repeat(9000)}`, /too long/],
    [`#1;show=in;show=mm;kind=corner;system=in;${board}`, /twice/],
    [`#1;show=ft;kind=corner;system=in;${board}`, /show/],
    [`#1;name=%E0%A4;kind=corner;system=in;${board}`, /no name/],
    [`#1;name=two%0Alines;kind=corner;system=in;${board}`, /no name/],
    [`#1;name=${'long'.repeat(20)};kind=corner;system=in;${board}`, /no name/],
    [`#1;count=0;kind=corner;system=in;${board}`, /count/],
    [`#1;count=61;kind=corner;system=in;${board}`, /count/],
    [`#1;boards=Side;kind=corner;system=in;${board}`, /count/],
    [`#1;boards=Side:61;kind=corner;system=in;${board}`, /“boards” is not a count from 0 to 60/],
    [`#1;boards=Side:-1;kind=corner;system=in;${board}`, /count from 0/],
    [`#1;boards=Side:2,Side:1;kind=corner;system=in;${board}`, /twice/],
    [`#1;count=40;kind=edge;system=in;${board}&count=40;kind=edge;system=in;${board}`, /60 joints/],
  ])('that reads %j is refused in a sentence', (link, why) => {
    const decoded = decodeSetup(link);
    expect(decoded.ok).toBe(false);
    if (!decoded.ok) expect(decoded.reason).toMatch(why);
  });

  it('from anyone can be planned or is refused: nothing throws', () => {
    const good = encodeSetup({ joints: [ordinaryJoint('leg', 'mm', mm(20))], show: 'mm' });
    const mangled = fc
      .tuple(fc.nat(good.length), fc.nat(6), anyText(6))
      .map(([at, cut, put]) => good.slice(0, at) + put + good.slice(at + cut));
    const pieces = fc
      .array(
        fc.constantFrom('1', ';', '=', '&', 'kind', 'leg', 'a', 'x', '19.05', '-', 'point', ':'),
        { maxLength: 40 },
      )
      .map((parts) => parts.join(''));
    fc.assert(
      fc.property(fc.oneof(mangled, pieces, anyText()), (link) => {
        const decoded = decodeSetup(link);
        if (!decoded.ok) return decoded.reason.endsWith('.');
        return decoded.setup.joints.every((joint) => planJoint(joint).cautions.length >= 0);
      }),
      { numRuns: 5000 },
    );
  });
});
