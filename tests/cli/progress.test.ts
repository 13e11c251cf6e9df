import { expect, it } from 'vitest';
import { startProgress } from '../../src/cli/progress.ts';

function record(isTTY: boolean, columns = 80) {
  const written: string[] = [];
  let clock = 0;
  const stream = { isTTY, columns, write: (text: string) => written.push(text) > 0 };
  const progress = startProgress('PDF', stream, () => clock);
  return { written, progress, pass: (ms: number) => (clock += ms) };
}

it('changes one line on a terminal: done, total, what and rate', () => {
  const { written, progress, pass } = record(true);
  pass(500);
  progress.step(1, 4, 'quote.pdf');
  pass(500);
  progress.step(2, 4, 'build-sheet.pdf');
  progress.end();
  progress.end();
  expect(written).toEqual([
    '\r\u001B[2KPDF 1/4 quote.pdf 2.0/s',
    '\r\u001B[2KPDF 2/4 build-sheet.pdf 2.0/s',
    '\n',
  ]);
});

it('never wraps: a line is cut to the width of the terminal', () => {
  const { written, progress } = record(true, 20);
  progress.step(1, 4, 'a-name-that-is-far-too-long-for-this');
  expect(written[0]?.length).toBe('\r\u001B[2K'.length + 19);
});

it('writes plain lines where there is no terminal', () => {
  const { written, progress, pass } = record(false);
  pass(1000);
  progress.step(1, 2, 'quote.pdf');
  progress.end();
  expect(written).toEqual(['PDF 1/2 quote.pdf 1.0/s\n']);
});
