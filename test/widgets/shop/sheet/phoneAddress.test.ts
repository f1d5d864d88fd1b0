import { describe, expect, it } from 'vitest';
import { phoneAddress } from '../../../../src/widgets/shop/sheet/phoneAddress.ts';

const at = (address: string, site?: string, packed = false) =>
  phoneAddress(new URL(address), '/woodshop/bench/', '1;kind=edge', site, packed);

describe('the address for a phone', () => {
  it('is the page’s own where it is published, in a school’s network too', () => {
    expect(at('https://school.example/woodshop/bench/sheet/#1;kind=leg')).toBe(
      'https://school.example/woodshop/bench/#1;kind=edge',
    );
    expect(at('http://192.168.1.20:4321/woodshop/bench/sheet/')).toBe(
      'http://192.168.1.20:4321/woodshop/bench/#1;kind=edge',
    );
  });

  it.each([
    'http://localhost:4321/woodshop/',
    'http://127.0.0.1:8080/',
    'http://[::1]:80/',
    'http://shop.localhost/',
    'file:///home/bench/index.html',
  ])('is not %s, but the place that the site was built for', (here) => {
    expect(at(here)).toBeNull();
    expect(at(here, 'https://school.example')).toBe(
      'https://school.example/woodshop/bench/#1;kind=edge',
    );
  });

  it('is none inside a package', () => {
    expect(at('https://school.example/x/', 'https://school.example', true)).toBeNull();
  });
});
