import type { WriteStream } from 'node:tty';

/** Tells a person how far long work has come: one line that changes on a terminal, a line a step elsewhere. */
interface Progress {
  step(done: number, total: number, what: string): void;
  /** Ends the changing line. */
  end(): void;
}

/**
 * @param label - what is being done, such as "PDF"
 * @param stream - where to; a terminal gets one changing line
 * @param now - milliseconds, for the rate
 */
export function startProgress(
  label: string,
  stream: Pick<WriteStream, 'write' | 'isTTY'> & { readonly columns?: number },
  now: () => number = () => performance.now(),
): Progress {
  const begun = now();
  let open = false;
  return {
    step(done, total, what) {
      const seconds = (now() - begun) / 1000;
      const rate = seconds > 0 ? `${(done / seconds).toFixed(1)}/s` : '';
      const line = `${label} ${done}/${total} ${what} ${rate}`.trimEnd();
      if (stream.isTTY) {
        stream.write(`\r\u001B[2K${line.slice(0, (stream.columns ?? 80) - 1)}`);
        open = true;
      } else {
        stream.write(`${line}\n`);
      }
    },
    end() {
      if (open) stream.write('\n');
      open = false;
    },
  };
}
