import { expect, it } from 'vitest';
import { isPublic } from '../../../../src/widgets/class/assign/publicAddress.ts';

it.each([
  ['https://school.example/woodshop/assignment/', true],
  ['http://192.168.1.20:4321/assignment/', true], // the school's own network
  ['http://localhost:4321/assignment/', false],
  ['http://shop.localhost/assignment/', false],
  ['http://127.0.0.1/assignment/', false],
  ['http://[::1]:80/assignment/', false],
  ['file:///C:/holes/index.html', false],
  ['javascript:alert(1)', false],
  ['', false],
])('knows whether others can open it: %s', (address, is) => {
  expect(isPublic(address)).toBe(is);
});
