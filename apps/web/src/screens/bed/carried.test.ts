import { expect, it } from 'vitest';
import { carriedPath, readCarried } from './carried.ts';

it('what was reckoned reads back out of an address as it went in', () => {
  const products = [
    { material: 'finished-compost', measure: 'barrow', count: 2.5 },
    { material: 'my own stuff', measure: 'bucket-20l', count: 1 },
  ];
  expect(readCarried(carriedPath('top', products))).toEqual({
    lies: 'top',
    stuff: [
      { material: 'finished-compost', amount: { measure: 'barrow', count: 2.5 } },
      { material: 'my own stuff', amount: { measure: 'bucket-20l', count: 1 } },
    ],
  });
});

it('an address that carries nothing, or what nobody wrote, leaves the page empty', () => {
  expect(readCarried([])).toEqual({ lies: 'dug', stuff: [] });
  expect(
    readCarried(['sideways', 'some', '0 barrow straw', '-1 barrow straw', 'x barrow straw', 'Infinity a b']),
  ).toEqual({
    lies: 'dug',
    stuff: [],
  });
});
