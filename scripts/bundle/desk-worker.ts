// Bundles the desk's worker for the browser: one script without imports, so that it also runs from a blob in a page of one file.

import { type BuildResult, build } from 'esbuild'

/**
 * @param outfile where it goes, from the root
 * @param minify for what is shipped; tests want the names of functions
 */
export function bundleWorker(root: string, outfile: string, minify = true): Promise<BuildResult<{ metafile: true }>> {
  return build({
    absWorkingDir: root,
    entryPoints: ['src/desk/core/worker.ts'],
    outfile,
    bundle: true,
    format: 'iife',
    platform: 'browser',
    target: ['es2022'],
    // With `browser`, decode-named-character-reference would take the build that asks `document`, which a worker has not.
    conditions: ['worker', 'module'],
    mainFields: ['module', 'main'],
    // pdfkit names a colour profile by where it lies, which it opens only for documents that we do not make.
    define: { 'import.meta.url': '"file:///"' },
    minify,
    metafile: true,
    logLevel: 'warning',
    legalComments: 'none',
  })
}
