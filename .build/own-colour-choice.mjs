// Package chalk looks at the terminal when it is loaded, for which it loads node:tty and node:os: more than a millisecond at each start.
// Planish chooses by itself (src/cli/colour-choice.ts) and tells chalk the level, so that what chalk found is never asked for.

/** An esbuild plugin. */
export const ownColourChoice = {
  name: 'own colour choice',
  setup({ onResolve, onLoad }) {
    onResolve({ filter: /^#supports-color$/ }, () => ({ path: 'supports-color', namespace: 'own choice' }));
    onLoad({ filter: /.*/, namespace: 'own choice' }, () => ({
      contents: 'export default { stdout: false, stderr: false };',
      loader: 'js',
    }));
  },
};
