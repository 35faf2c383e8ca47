/**
 * The simulator on the command line. Reads files and standard input, says what it finds on standard
 * output, and writes nothing else. Exit codes: 0 done, 1 graded and not passed, 2 bad input.
 */
import { runDesk } from './run-desk.ts';

// Whoever reads the output may stop reading, as `head` does.
process.stdout.on('error', (error: NodeJS.ErrnoException) => {
  if (error.code !== 'EPIPE') throw error;
});

const { exitCode, stdout, stderr } = await runDesk(process.argv.slice(2), process.stdin);
process.exitCode = exitCode;
process.stdout.write(stdout);
process.stderr.write(stderr);
