import { expect, test } from 'vitest';
import { fastenerCoat } from '../../src/joint/fastener-coat.ts';

// How shops and data sheets write it; from memory.
test.each([
  ['zinc flake', 'coated'],
  ['zinc-nickel, 8 µm', 'coated'],
  ['ZnNi', 'coated'],
  ['A2-70', 'coated'],
  ['stainless A4', 'coated'],
  ['1.4301', 'coated'],
  ['bare aluminium', 'coated'],
  ['aluminium with a stainless mandrel', 'coated'],
  ['KTL', 'coated'],
  ['galvanised', 'coated'],
  ['bare steel', 'bare'],
  ['none', 'bare'],
  ['No coating', 'bare'],
  ['plain', 'bare'],
  ['uncoated', 'bare'],
  ['steel, not plated', 'bare'],
  ['ungalvanised', 'bare'],
  ['steel', 'not told'],
  ['black', 'not told'],
  ['as delivered', 'not told'],
  ['', 'not told'],
])('“%s” is %s', (text, coat) => {
  expect(fastenerCoat(text)).toBe(coat);
});
