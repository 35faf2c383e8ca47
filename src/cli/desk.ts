/**
 * The simulator on the command line. Reads files and standard input, says what it finds on standard
 * output and how far it is on standard error, and writes only the files that `grade-class` is told to.
 * Exit codes: 0 done, 1 graded and not passed, 2 bad input, 3 done but for files that were set aside.
 */
import { runDesk } from './run-desk.ts';

// Whoever reads the output may stop reading, as `head` does.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
});

/** On a terminal one line that changes and is gone at the end; in a file a line each time. */
const isTerminal = process.stderr.isTTY;
const end = isTerminal ? '\r' : '\n';
const erase = isTerminal ? '\u001b[K' : '';
const { exitCode, stdout, stderr } = await runDesk(process.argv.slice(2), process.stdin, (line) => {
  process.stderr.write(`${line}${end}`);
});
process.exitCode = exitCode;
process.stderr.write(erase + stderr);
process.stdout.write(stdout);
