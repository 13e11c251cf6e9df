import { describe, expect, it } from 'vitest';
import { widthOf, wrapText } from '../../src/draw/wrap-text.ts';

describe('a text in a drawing', () => {
  it('keeps a number with its unit', () => {
    expect(wrapText('Starting battery, 70 Ah', widthOf('Starting battery, 70'))).toEqual([
      'Starting battery,',
      '70\u00A0Ah',
    ]);
    expect(wrapText('2 × House battery', widthOf('2 × House'))).toEqual([
      '2\u00A0× House',
      'battery',
    ]);
  });

  it('parts a number from a word that is no unit', () => {
    expect(wrapText('Panel of 6 switches', widthOf('Panel of 6'))).toEqual([
      'Panel of 6',
      'switches',
    ]);
  });

  it('breaks a word that is wider than a line and loses no letter', () => {
    const lines = wrapText('Antifoulingprimer', widthOf('Antifoul'));
    expect(lines.length).toBeGreaterThan(1);
    expect(lines.join('')).toBe('Antifoulingprimer');
  });
});
