import { spawn } from 'node:child_process';
import { root } from '../../src/cli/prepare.mjs';

/**
 * Runs a program in the project folder and keeps what it says. Colours and the caller's NODE_ENV are left behind.
 * @param {string} program
 * @param {readonly string[]} args
 * @param {NodeJS.ProcessEnv} [more] further environment
 * @returns {Promise<{ ok: boolean, output: string }>}
 */
export function runProgram(program, args, more = {}) {
  const { NODE_ENV: _, ...rest } = process.env;
  const env = { ...rest, CI: 'true', NO_COLOR: '1', FORCE_COLOR: '0', ...more };
  const shell = program === 'npm' && process.platform === 'win32';
  return new Promise((resolve) => {
    const child = spawn(program, args, { cwd: root, env, shell, stdio: ['ignore', 'pipe', 'pipe'] });
    let output = '';
    /** @param {Buffer} data */
    const keep = (data) => {
      output += data;
    };
    child.stdout.on('data', keep);
    child.stderr.on('data', keep);
    child.on('error', (error) => resolve({ ok: false, output: `${output}\n${error.message}` }));
    child.on('close', (code) => resolve({ ok: code === 0, output }));
  });
}
