// Commander takes node:child_process for programs beside the command, which planish has none of, and `--changed-since` takes it for git. To
// load it costs each start more than a millisecond, so in the bundle it is loaded when it is first called.

/** An esbuild plugin. */
export const lazyChildProcess = {
  name: 'lazy child_process',
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^(?:node:)?child_process$/ }, () => ({ path: 'child_process', namespace: 'lazy' }));
    onLoad({ filter: /.*/, namespace: 'lazy' }, () => ({ contents: code, loader: 'js' }));
  },
};

/** The functions that are called in the bundle; another one would be undefined, and the tests of the command line would say so. */
const code = ['spawn', 'spawnSync', 'execFileSync']
  .map(
    (name) =>
      `exports.${name} = (...given) => process.getBuiltinModule('node:child_process').${name}(...given);`,
  )
  .join('\n');
