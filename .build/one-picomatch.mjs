// Package fdir asks for a picomatch of the folder it stands in, 3 ms at each start where there is one. Package tinyglobby, which
// brings fdir, hands its own matcher over and never needs that one. A version of another form stops the build.
import { readFileSync } from 'node:fs';

/** An esbuild plugin. */
export const onePicomatch = {
  name: 'one-picomatch',
  setup(build) {
    build.onLoad({ filter: /[\\/]fdir[\\/]dist[\\/]index\.[cm]?js$/ }, ({ path }) => {
      const source = readFileSync(path, 'utf8');
      const asked =
        /\ntry \{\n\t__require\.resolve\("picomatch"\);\n\tpm = __require\("picomatch"\);\n\} catch \{\}\n/;
      if (!asked.test(source)) throw new Error(`${path} asks for picomatch in another way`);
      return { contents: source.replace(asked, '\n'), loader: 'js' };
    });
  },
};
