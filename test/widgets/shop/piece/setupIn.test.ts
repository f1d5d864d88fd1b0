import { describe, expect, it } from 'vitest';
import { encodeSetup, mm } from '../../../../src/core/index.ts';
import { setupIn } from '../../../../src/widgets/shop/piece/setupIn.ts';
import { ordinaryJoint } from '../../../support/joints.ts';

const link = encodeSetup({ joints: [ordinaryJoint('corner', 'mm', mm(18))] });

describe('a setup in a text', () => {
  it.each([
    ['alone', link],
    ['behind its sign', `#${link}`],
    ['in an address', `https://example.org/bench/#${link}\n`],
    ['in a message', `Stand #2, see <https://example.org/bench/#${link} and tell me`],
    ['as the last of two', `a#1;kind=leg;broken b#${link}`],
  ])('is found %s', (_, text) => {
    const read = setupIn(text);
    expect(read.ok && read.setup.joints[0]!.kind).toBe('corner');
  });

  it.each(['', 'nothing here', '#', 'https://example.org/bench/'])('is not in “%s”', (text) => {
    expect(setupIn(text)).toMatchObject({ ok: false, reason: /it is not a setup/ });
  });
});
