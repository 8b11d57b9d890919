import { spawn } from 'node:child_process';
import { constants } from 'node:os';
import { root } from './root.mjs';

/** How long a program may take to end after it was told to, before it is killed. */
const grace_ms = 10_000;

/** How often it is looked whether npm is still there. */
const look_ms = 1000;

/**
 * @typedef {object} RunOptions
 * @property {string} [cwd] where to run; the project's folder unless told
 * @property {NodeJS.ProcessEnv} [env] its whole environment; ours unless told
 * @property {number} [timeout_ms] ended when it takes longer; no limit unless told
 */

/**
 * Runs a program with our own input and output, passes signals on to it, and waits for its end. When a signal
 * came for us, we end with it and with its exit code.
 * @param {string} command
 * @param {readonly string[]} args
 * @param {RunOptions} [options]
 * @returns {Promise<number>} its exit code; 128 + the signal's number when a signal ended it, as a shell says it;
 *   127 when it could not be started
 */
export function run(command, args, options = {}) {
  return new Promise((resolve) => {
    const child = spawn(command, args, {
      cwd: options.cwd ?? root,
      env: options.env ?? process.env,
      timeout: options.timeout_ms,
      stdio: 'inherit',
    });
    const stopPassing = passSignals(child);
    child.once('error', (cause) => {
      stopPassing();
      process.stderr.write(`${command} could not be started: ${cause.message}\n`);
      resolve(127);
    });
    child.once('exit', (code, signal) => {
      if (stopPassing()) process.exit(exitCode(code, signal));
      resolve(exitCode(code, signal));
    });
  });
}

/**
 * @param {number | null} code
 * @param {NodeJS.Signals | null} signal
 * @returns {number}
 */
export function exitCode(code, signal) {
  return code ?? 128 + (signal === null ? 0 : constants.signals[signal]);
}

/**
 * @param {import('node:child_process').ChildProcess} child
 * @returns {() => boolean} stops the passing on, and says whether a signal came
 */
function passSignals(child) {
  /** @type {NodeJS.Timeout | undefined} */
  let last;
  /** @param {NodeJS.Signals} signal */
  const pass = (signal) => {
    // A terminal sends Ctrl-C to every program in front of it, so the child has it already.
    if (signal !== 'SIGINT' || !process.stdin.isTTY) child.kill(signal);
    last ??= setTimeout(() => child.kill('SIGKILL'), grace_ms);
  };
  /** @type {NodeJS.Signals[]} */
  const signals = ['SIGINT', 'SIGTERM', 'SIGHUP'];
  for (const signal of signals) process.on(signal, pass);
  // npm hands a signal to the shell in which it runs us; that shell ends and tells nobody.
  const parent = process.ppid;
  const isUnderNpm = process.env['npm_lifecycle_event'] !== undefined;
  const watch = setInterval(() => {
    if (isUnderNpm && last === undefined && process.ppid !== parent) pass('SIGTERM');
  }, look_ms);
  return () => {
    clearTimeout(last);
    clearInterval(watch);
    for (const signal of signals) process.off(signal, pass);
    return last !== undefined;
  };
}
