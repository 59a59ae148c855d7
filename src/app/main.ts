#!/usr/bin/env node
/** The program as it is called: its own process, whose exit code says how it went. */
import { runCommandLine } from './command-line.js';

// A reader that goes away (`chalkleaf check | head`) is no fault.
process.stdout.on('error', (fault: NodeJS.ErrnoException) => {
  if (fault.code !== 'EPIPE') throw fault;
});
process.exitCode = await runCommandLine(process.argv.slice(2));
