import packageJson from '../../package.json' with { type: 'json' };

/** The version of planish, as its package says. */
export const version: string = packageJson.version;
