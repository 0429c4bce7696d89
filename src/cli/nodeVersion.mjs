/**
 * Whether this Node can run the tools. Says so in one sentence if not. Written without newer syntax on purpose:
 * an old Node has to be able to read this file.
 * @returns {boolean}
 */
export function isNodeNewEnough() {
  const parts = process.versions.node.split('.');
  const major = Number(parts[0]);
  const minor = Number(parts[1]);
  const ok = (major === 20 && minor >= 19) || (major === 22 && minor >= 12) || major >= 23;
  if (!ok) {
    console.error(
      'Throughfin needs Node 20.19, 22.12 or newer; this is ' +
        process.versions.node +
        '. A current one is at https://nodejs.org',
    );
    process.exitCode = 3;
  }
  return ok;
}
