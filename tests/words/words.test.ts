import { describe, expect, it } from 'vitest';
import { EDITED_WORDS, editedData, inEdition } from '../../src/words/index.ts';

describe('the words of an edition', () => {
  it.each([
    ['en-AU', 'Draught: the moulding, its centreline and the petrol'],
    ['en-NZ', 'Draught: the moulding, its centreline and the petrol'],
    ['en-GB', 'Draught: the moulding, its centreline and the petrol'],
    ['de-DE', 'Draught: the moulding, its centreline and the petrol'],
    ['en-US', 'Draft: the molding, its centerline and the gasoline'],
  ])('are those of %s', (locale, said) => {
    const text = '{Draught}: the {moulding}, its {centreline} and the {petrol}';
    expect(inEdition(text, { locale })).toBe(said);
  });

  it.each([
    ['en-AU', undefined, 'Drive-away price, the drive-away price'],
    ['en-NZ', undefined, 'Drive-away price, the drive-away price'],
    ['en-GB', undefined, 'Total price, the total price'],
    ['en-US', undefined, 'Total price, the total price'],
    ['en-AU', 'Price on the water', 'Price on the water, the price on the water'],
    ['en-AU', 'GST-inclusive price', 'GST-inclusive price, the GST-inclusive price'],
  ])('name the final price of %s, the shop’s own name (%s) first', (locale, finalPrice, said) => {
    expect(inEdition('{Final price}, the {final price}', { locale, finalPrice })).toBe(said);
  });

  it('leave other braces and everything that a user typed as it is', () => {
    const text = '{ size: A4; } {thing} {constructor} mould, {{ view }} ${name}';
    expect(inEdition(text, { locale: 'en-US' })).toBe(text);
  });

  it('reach a drawing inside a page', () => {
    const svg = `<img src="data:image/svg+xml,${encodeURIComponent('<text>{Mould}, {Final price}</text>')}">`;
    const told = /,([^"]*)"/.exec(inEdition(svg, { locale: 'en-US' }))?.[1] ?? '';
    expect(decodeURIComponent(told)).toBe('<text>Mold, Total price</text>');
  });

  it('reach every text of plain data, its shape kept', () => {
    const data = { a: ['{Tyres}', 2], b: { 'c.d': 'tyre {tyre}' } };
    expect(editedData(data, { locale: 'en-US' })).toEqual({
      a: ['Tires', 2],
      b: { 'c.d': 'tyre tire' },
    });
  });

  it('keep plain data whole whatever the shop calls the final price', () => {
    const finalPrice = 'Price "on the water" \\ ready';
    expect(editedData(['{Final price}'], { locale: 'en-AU', finalPrice })).toEqual([finalPrice]);
  });

  it('are told apart in both spellings', () => {
    for (const word of EDITED_WORDS)
      expect(inEdition(`{${word}}`, { locale: 'en-US' })).not.toBe(
        inEdition(`{${word}}`, { locale: 'en-GB' }),
      );
  });
});
