/**
 * What tells one build of planish from another: in the bundle a digest of its code (.build/bundle.mjs), for two builds of one version
 * may read a pack otherwise. Undefined where planish runs from its sources.
 */
export const buildId: string | undefined = process.env.PLANISH_BUILD_ID;
