// The version of the program; the build replaces the constant by that of package.json.

declare const BATTLEDORE_VERSION: string | undefined

export const VERSION: string = typeof BATTLEDORE_VERSION === 'string' ? BATTLEDORE_VERSION : '0.0.0-source'
