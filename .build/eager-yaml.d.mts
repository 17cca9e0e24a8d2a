import type { Plugin } from 'esbuild';

export declare const eagerYaml: Plugin;
