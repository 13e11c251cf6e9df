import { type Finding, FINDING_CODES } from '../../findings/index.ts';
import type { Letter } from '../blocks/letter.ts';
import { part, words } from '../blocks/block.ts';
import { sentence } from './words.ts';

/** The band of a paper that must not leave the shop. */
const BAND = 'Draft: not to be sent';

/** A paper with open findings of safety: banded, and they stand on top. */
export function notToBeSent(letter: Letter, open: readonly Finding[]): Letter {
  const lines = open.map(({ code, received, expected, remedy }) =>
    [
      sentence(FINDING_CODES[code].means),
      sentence(`Found: ${received}`),
      ...(expected === undefined ? [] : [sentence(`Expected: ${expected}`)]),
      sentence(remedy),
    ].join(' '),
  );
  return {
    ...letter,
    document: {
      ...letter.document,
      title: `${BAND}. ${letter.document.title}`,
      pdf: '',
      runningHead: `${BAND}. ${letter.document.runningHead}`,
    },
    standing: {
      kind: 'not-to-be-sent',
      word: BAND,
      sentence: 'What stands below is open, so no PDF is made of this page.',
    },
    parts: [
      ...part('open', 'What stands in the way', ...words('known', ...lines)),
      ...letter.parts,
    ],
  };
}
