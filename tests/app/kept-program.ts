/**
 * The compiled program in a thread that is kept: it is loaded once for many commands, and reads and writes as it does in
 * a process of its own. Whoever gives it words waits for the answer; see `run-chalkleaf.ts`.
 */
import { type MessagePort, parentPort } from 'node:worker_threads';
import { runCommandLine } from '../../src/app/command-line.js';

export interface Asked {
  readonly args: readonly string[];
  /** One number, set to 1 and woken when the answer is there. */
  readonly done: Int32Array;
  readonly answer: MessagePort;
}

let said = { out: '', err: '' };
const listen = (stream: NodeJS.WriteStream, to: keyof typeof said): void => {
  stream.write = (text: string | Uint8Array): boolean => {
    said[to] += typeof text === 'string' ? text : Buffer.from(text).toString('utf8');
    return true;
  };
};
listen(process.stdout, 'out');
listen(process.stderr, 'err');

parentPort?.on('message', async ({ args, done, answer }: Asked) => {
  said = { out: '', err: '' };
  const code = await runCommandLine(args);
  answer.postMessage({ code, ...said });
  Atomics.store(done, 0, 1);
  Atomics.notify(done, 0);
});
