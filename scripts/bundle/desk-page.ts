// Bundles the desk's page for the browser: one script and one style sheet, each without imports.

import { type BuildResult, build } from 'esbuild'

/** @param outdir from the root; `desk.js` and `desk.css` go there */
export function bundlePage(
  root: string,
  entry: string,
  outdir: string,
  minify = true,
): Promise<BuildResult<{ metafile: true }>> {
  return build({
    absWorkingDir: root,
    entryPoints: [
      { in: entry, out: 'desk' },
      { in: 'src/desk/style.css', out: 'desk' },
    ],
    outdir,
    bundle: true,
    format: 'iife',
    platform: 'browser',
    // The style sheet too: older browsers know no nested rules.
    target: ['es2022', 'chrome105', 'firefox115', 'safari16'],
    minify,
    metafile: true,
    logLevel: 'warning',
    legalComments: 'none',
  })
}
