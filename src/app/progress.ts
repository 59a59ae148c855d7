/** One line on the terminal that says what is being done; nothing at all when nobody is watching. */

export interface Progress {
  step(text: string): void;
  done(): void;
}

/** Rewrites one line of a terminal; silent on anything else. */
export function progressOn(stream: NodeJS.WriteStream): Progress {
  if (!stream.isTTY) return { step: () => undefined, done: () => undefined };
  return {
    step: (text) => {
      const width = Math.max(20, (stream.columns ?? 80) - 1);
      stream.write(`\r\u001b[2K${Array.from(text).slice(0, width).join('')}`);
    },
    done: () => {
      stream.write('\r\u001b[2K');
    },
  };
}
