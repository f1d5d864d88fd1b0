import jsqr from 'jsqr';
import { describe, expect, it } from 'vitest';
import { encodeSetup, inches } from '../../../src/core/index.ts';
import { type QrPath, qrPath } from '../../../src/diagrams/sheet/qrPath.ts';
import { ordinaryJoint } from '../../support/joints.ts';

/** The path as a picture of `scale` px a module, painted from its own drawing orders. */
function picture({ size, d }: QrPath, scale: number): Uint8ClampedArray {
  const side = size * scale;
  const pixels = new Uint8ClampedArray(side * side * 4).fill(255);
  for (const [, x = '', y = '', run = ''] of d.matchAll(/M(\d+),(\d+)h(\d+)v1h-\d+z/g)) {
    for (let py = Number(y) * scale; py < (Number(y) + 1) * scale; py += 1) {
      for (let px = Number(x) * scale; px < (Number(x) + Number(run)) * scale; px += 1) {
        pixels.fill(0, (py * side + px) * 4, (py * side + px) * 4 + 3);
      }
    }
  }
  return pixels;
}

describe('a QR code', () => {
  it('is read back as the address of the joint', () => {
    const link = encodeSetup({
      joints: [ordinaryJoint('leg', 'in', inches(3 / 4))],
      show: 'in',
      labels: [{ name: 'Apron to leg, 3/4 in', count: 1, boardA: 'Apron', boardB: 'Leg' }],
    });
    const address = `https://school.example/woodshop/bench/#${link}`;
    const code = qrPath(address);
    const read = jsqr(picture(code, 3), code.size * 3, code.size * 3);
    expect(read?.data).toBe(address);
  });

  it('keeps a quiet zone of four modules', () => {
    const { size, d } = qrPath('https://school.example/');
    const starts = [...d.matchAll(/M(\d+),(\d+)h(\d+)/g)].map(([, x, y, run]) => ({
      left: Number(x),
      right: Number(x) + Number(run),
      top: Number(y),
    }));
    expect(Math.min(...starts.map(({ left }) => left))).toBe(4);
    expect(Math.max(...starts.map(({ right }) => right))).toBe(size - 4);
    expect(Math.min(...starts.map(({ top }) => top))).toBe(4);
  });
});
