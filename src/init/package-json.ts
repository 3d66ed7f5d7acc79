// Adds our scripts to a package.json, and leaves all else as it is.

export interface PackageChange {
  readonly text: string
  /** What was added, for people; empty where everything was there. */
  readonly added: readonly string[]
  /** Scripts of ours that are there with another content. */
  readonly kept: readonly string[]
}

type Json = Readonly<Record<string, unknown>>

export const toScripts = (stories: string): Readonly<Record<string, string>> => ({
  check: `battledore check ${stories}`,
  'check:watch': `battledore check ${stories} --watch`,
})

/** Undefined where the text is not a package.json that can be read. `before` undefined: there is none yet. */
export function addToPackage(before: string | undefined, stories: string, version: string): PackageChange | undefined {
  const read = before === undefined ? { private: true } : parse(before)
  const scripts = read && toObject(read['scripts'])
  if (!read || !scripts) return undefined
  const wanted = toScripts(stories)
  const missing = Object.keys(wanted).filter((name) => !(name in scripts))
  const isInstalled = ['dependencies', 'devDependencies', 'optionalDependencies'].some(
    (key) => 'battledore' in (toObject(read[key]) ?? {}),
  )
  const after = {
    ...read,
    ...(missing.length > 0
      ? { scripts: { ...scripts, ...Object.fromEntries(missing.map((name) => [name, wanted[name]])) } }
      : {}),
    ...(isInstalled ? {} : { devDependencies: { ...toObject(read['devDependencies']), battledore: `^${version}` } }),
  }
  return {
    text: missing.length === 0 && isInstalled ? (before ?? '') : toText(after, before),
    added: [
      ...missing.map((name) => `script \`${name}\``),
      ...(isInstalled ? [] : ['development package `battledore`']),
    ],
    kept: Object.keys(wanted).filter((name) => name in scripts && scripts[name] !== wanted[name]),
  }
}

function parse(text: string): Json | undefined {
  try {
    return toObject(JSON.parse(text.replace(/^\uFEFF/, '')))
  } catch {
    return undefined
  }
}

/** An empty object for nothing; undefined for what is no object. */
function toObject(value: unknown): Json | undefined {
  if (value === undefined) return {}
  return typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Json) : undefined
}

/** In the indent and with the line ends of the file. */
function toText(value: Json, before: string | undefined): string {
  const indent = before?.match(/\n([ \t]+)"/)?.[1] ?? '  '
  const text = `${JSON.stringify(value, null, indent)}\n`
  return before?.includes('\r\n') ? text.replaceAll('\n', '\r\n') : text
}
