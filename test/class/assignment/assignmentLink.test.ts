import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  type Assignment,
  JOINTS,
  TOLERANCES,
  faultOf,
  suits,
} from '../../../src/class/assignment/assignment.ts';
import {
  decodeAssignment,
  encodeAssignment,
  templateCode,
  whatIsAsked,
} from '../../../src/class/assignment/assignmentLink.ts';
import { codeOf } from '../../../src/class/codeOf.ts';
import { mm } from '../../../src/core/length/mm.ts';
import { templates } from '../../../src/practice/made/index.ts';
import { stopAssignment } from '../../support/classOf.ts';

const assignments: fc.Arbitrary<Assignment> = fc
  .record({
    id: fc.stringMatching(/^[0-9A-HJKMNP-TV-Z]{8}$/),
    title: fc.string({ unit: 'grapheme', minLength: 1, maxLength: 20 }),
    templates: fc.subarray(
      templates.map(({ id }) => id),
      { minLength: 1 },
    ),
    count: fc.integer({ min: 1, max: 40 }),
    passMark: fc.integer({ min: 0, max: 100 }),
    system: fc.constantFrom('in' as const, 'mm' as const),
    feedback: fc.constantFrom('each' as const, 'end' as const),
    joints: fc.option(fc.subarray([...JOINTS], { minLength: 1 })),
    thicknesses: fc.option(
      fc.uniqueArray(fc.integer({ min: 10_000, max: 60_000 }), { minLength: 1, maxLength: 12 }),
    ),
    wide: fc.boolean(),
    due: fc.option(fc.constantFrom('2026-12-04', '2028-02-29')),
    calc: fc.integer({ min: 1, max: 9999 }),
    bank: fc.integer({ min: 1, max: 9999 }),
  })
  .map(({ joints, thicknesses, wide, due, ...rest }) => ({
    ...rest,
    limits: {
      ...(joints && { joints }),
      ...(thicknesses && { thicknesses: thicknesses.map((each) => mm(each / 1000)) }),
      ...(wide && { tolerance: TOLERANCES[rest.system][1]! }),
    },
    ...(due !== null && { due }),
  }))
  .filter((assignment) => faultOf(assignment) === null);

/** A link with another part, its checksum made to fit: as somebody would who means harm. */
function forged(from: string | RegExp, to: string): string {
  const text = encodeAssignment(stopAssignment).replace(/;sum=.*$/, '');
  expect(text).toMatch(from);
  const changed = text.replace(from, to);
  return `${changed};sum=${codeOf(changed, 4)}`;
}

describe('an assignment’s link', () => {
  it('brings back the same assignment', () => {
    fc.assert(
      fc.property(assignments, (assignment) => {
        const link = encodeAssignment(assignment);
        expect(decodeAssignment(`#${link}`)).toEqual({ ok: true, assignment });
        // Only what every program passes on as part of an address.
        expect(link).toMatch(/^[A-Za-z0-9=;,.+%_-]+$/);
      }),
    );
  });

  it('is short: an ordinary one has fewer than 200 characters, one that asks everything 350', () => {
    expect(encodeAssignment(stopAssignment).length).toBeLessThan(200);
    const all = {
      ...stopAssignment,
      templates: templates.map(({ id }) => id),
      count: 40,
      limits: {},
    };
    expect(encodeAssignment(all).length).toBeLessThan(350);
  });

  it('has a code for every template, each another', () => {
    const codes = templates.map(({ id }) => templateCode(id));
    expect(new Set(codes).size).toBe(codes.length);
  });

  it('is refused with one character changed, lost or added', () => {
    const link = encodeAssignment(stopAssignment);
    fc.assert(
      fc.property(
        fc.nat({ max: link.length - 1 }),
        fc.constantFrom('', 'x', '7', ';', '='),
        (at, other) => {
          const changed = link.slice(0, at) + other + link.slice(at + 1);
          fc.pre(changed !== link);
          expect(decodeAssignment(changed).ok).toBe(false);
        },
      ),
    );
  });

  it.each([
    ['', 'holds no assignment'],
    ['hello', 'is not an assignment'],
    ['2;anything', 'newer edition'],
    ['1;kind=corner;system=in;a=19x140x600', 'missing or was changed'],
    [`1;${'x'.repeat(2000)}`, 'too long'],
    [forged('n=8', 'n=0'), '1 to 40 questions'],
    [forged('n=8', 'n=41'), '1 to 40 questions'],
    [forged('n=8', 'n=8e1'), '“n” is not a whole number'],
    [forged('n=8;', ''), '“n” is not a whole number'],
    [forged('n=8', 'n=8;n=9'), 'gives “n” twice'],
    [forged('n=8', 'n='), '“n” has no value'],
    [forged('n=8', 'n=8;__proto__=1'), 'means nothing here'],
    [forged('pass=70', 'pass=170'), 'pass mark'],
    [forged('show=in', 'show=ft'), '“show” is none of in, mm'],
    [forged('say=end', 'say=never'), '“say” is none of'],
    [forged('joints=edge', 'joints=butt'), '“joints” is none of'],
    [forged('joints=edge,corner', 'joints=edge,edge'), 'twice'],
    [forged(/joints=[a-z,]+/, 'joints=miter'), 'a joint that it leaves out'],
    [forged('boards=19.05', 'boards=1905000'), '“boards” is not a length'],
    [forged('boards=19.05', 'boards=2'), 'thinner or thicker'],
    [forged('n=8', 'n=8;within=5'), 'not one that can be chosen'],
    [forged(/ask=\w+/, 'ask=zzz'), 'does not have'],
    [forged('pass=70', 'pass=70;due=2026-02-30'), 'not a day'],
    [forged('title=Setting', 'title=%E0%A4%A'), 'title is damaged'],
    [forged('title=Setting', 'title=%E2%80%AE'), 'can’t be seen'],
    [forged(/title=.*/, `title=${'a'.repeat(61)}`), 'longer than 60'],
    [forged(/id=\w+/, 'id=../../x'), 'no name of its own'],
  ])('is refused in a sentence: %s', (link, why) => {
    const read = decodeAssignment(link);
    expect(read).toMatchObject({ ok: false, reason: expect.stringContaining(why) });
    expect(!read.ok && read.reason).toMatch(
      /^This link can’t be read: [^.]*\. Ask for it again\.$/,
    );
  });

  it('never throws, whatever it is', () => {
    fc.assert(
      fc.property(fc.string({ maxLength: 300 }), (rest) => {
        const text = `1;${rest}`;
        expect(decodeAssignment(`${text};sum=${codeOf(text, 4)}`).ok).toBe(false);
        expect(decodeAssignment(rest).ok).toBe(false);
      }),
    );
  });

  it('asks the same whatever it is called and whenever it is due, and other things otherwise', () => {
    const asked = whatIsAsked(stopAssignment);
    expect(
      whatIsAsked({ ...stopAssignment, title: 'Stops', passMark: 50, due: '2026-12-04' }),
    ).toBe(asked);
    for (const change of [
      { id: '7K2M9QXC' },
      { count: 9 },
      { limits: {} },
      { feedback: 'each' },
      { system: 'mm' },
      { bank: 2 },
    ] as const) {
      expect(whatIsAsked({ ...stopAssignment, ...change })).not.toBe(asked);
    }
  });
});

describe('what suits a class', () => {
  it('is what asks about one of its joints, or about none', () => {
    const suiting = templates.filter((template) => suits(template, { joints: ['leg'] }));
    expect(suiting.map(({ id }) => id)).toContain('setback-of-the-apron');
    expect(suiting.map(({ id }) => id)).toContain('read-the-rule');
    expect(suiting.map(({ id }) => id)).not.toContain('line-of-the-miter');
    expect(templates.every((template) => suits(template, {}))).toBe(true);
  });
});
