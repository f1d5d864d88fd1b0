import { render } from 'svelte/server';
import { describe, expect, test } from 'vitest';
import { type JointPlan, inches, planJoint } from '../../src/core/index.ts';
import Layout from '../../src/diagrams/layout/Layout.svelte';
import Section from '../../src/diagrams/section/Section.svelte';
import Stop from '../../src/diagrams/stop/Stop.svelte';
import { KINDS, ordinaryJoint } from '../support/joints.ts';

const plans = KINDS.map(
  (kind) => [kind, planJoint(ordinaryJoint(kind, 'in', inches(3 / 4)))] as const,
);
const corner = plans.find(([kind]) => kind === 'corner')![1];
const drawings = { Section, Layout, Stop } as const;

function draw(name: keyof typeof drawings, plan: JointPlan, more: object = {}): string {
  return render(drawings[name], { props: { plan, unit: 'in', width: 360, ...more } }).body;
}

describe.each(['Section', 'Layout', 'Stop'] as const)('%s on the server', (name) => {
  test.each(plans)('%s joint looks as it did', (_, plan) => {
    expect(draw(name, plan)).toMatchSnapshot();
  });

  test('is a named image with a description that gives its values', () => {
    const html = draw(name, corner);
    expect(html).toContain('role="img"');
    const [, ids] = /aria-labelledby="([^"]+)"/.exec(html)!;
    for (const id of ids!.split(' ')) expect(html).toContain(`id="${id}"`);
    expect(/<desc[^>]*>([^<]+)<\/desc>/.exec(html)![1]).toMatch(/\d inch/);
  });

  test('has no style attribute, which the content security policy would block', () => {
    expect(draw(name, corner, { unit: 'both' })).not.toMatch(/\sstyle=/);
  });

  test('in both units marks each text with its unit', () => {
    const html = draw(name, corner, { unit: 'both' });
    const count = (unit: string) =>
      html.match(new RegExp(`class="[^"]*\\b${unit}\\b[^"]*"`, 'g'))!.length;
    expect(count('in')).toBe(count('mm'));
    expect(count('in')).toBeGreaterThan(2);
  });

  test('in one unit leaves no text for the page to hide', () => {
    expect(draw(name, corner)).not.toMatch(/class="[^"]*\b(in|mm)\b[^"]*"/);
  });
});

describe('Section', () => {
  test('draws what the reader sets in the accent, and bold', () => {
    expect(
      draw('Section', corner, { set: ['b.thickness'] }).match(/class="number set/g),
    ).toHaveLength(1);
    expect(draw('Section', corner)).not.toMatch(/class="number set/);
  });

  test('keeps its height when the joint is pulled apart', () => {
    const height = (html: string) => /<svg[^>]* height="(\d+)"/.exec(html)![1];
    const home = height(draw('Section', corner));
    for (const apart of [0.01, 0.5, 1]) {
      expect(height(draw('Section', corner, { apart }))).toBe(home);
    }
  });
});
