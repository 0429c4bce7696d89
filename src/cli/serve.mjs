import { ensureBuilt, ensureInstalled, root } from './prepare.mjs';

const usualPort = 4680;

/**
 * `npm start`: installs and builds what is missing, serves the app on this computer only, and prints the address.
 * @param {readonly string[]} args
 */
export async function start(args) {
  const port = readPort(args);
  if (port === null) {
    console.error('Usage: npm start [-- --port NUMBER]   (a number from 1 to 65535)');
    process.exitCode = 2;
    return;
  }
  if (!ensureInstalled() || !ensureBuilt()) {
    process.exitCode = 3;
    return;
  }
  const { preview } = await import('vite');
  const server = await preview({
    root,
    logLevel: 'error',
    preview: { host: '127.0.0.1', port, strictPort: false, open: false },
  });
  const address = server.resolvedUrls?.local[0] ?? '';
  const moved = address.includes(`:${port}/`) ? '' : `, because port ${port} is in use`;
  console.log(`Throughfin is at ${address}${moved} (Ctrl-C stops it)`);
  process.once('SIGINT', () => {
    console.log('\nStopped.');
    process.exit(0);
  });
}

/**
 * @param {readonly string[]} args
 * @returns {number | null} null where the arguments make no sense
 */
function readPort(args) {
  if (args.length === 0) return usualPort;
  const [first = '', second] = args;
  const text = first === '--port' && args.length === 2 ? second : /^--port=(.*)$/.exec(first)?.[1];
  const port = Number(text);
  return /^\d+$/.test(text ?? '') && port >= 1 && port <= 65535 ? port : null;
}
