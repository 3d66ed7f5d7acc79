// Adds our scripts to a package.json, and leaves all else as it is.

export interface PackageChange {
  readonly text: string
  /** What was added, for people; empty where everything was there. */
  readonly added: readonly string[]
  /** Scripts that have a name of ours, with another content. */
  readonly kept: readonly string[]
  readonly names: ScriptNames
  /** Whether `npm install` brings our package. */
  readonly isListed: boolean
  /** From where it does so, where that was added. */
  readonly source: string | undefined
}

export interface ScriptNames {
  readonly check: string
  readonly watch: string
}

type Json = Readonly<Record<string, unknown>>

const USUAL: ScriptNames = { check: 'check', watch: 'check:watch' }

/** Where a name of the usual ones is taken. */
const OTHER: ScriptNames = { check: 'check:stories', watch: 'check:stories:watch' }

const toScripts = ({ check, watch }: ScriptNames, stories: string): Readonly<Record<string, string>> => ({
  [check]: `battledore check ${stories}`,
  [watch]: `battledore check ${stories} --watch`,
})

/**
 * Undefined where the text is not a package.json that can be read.
 * @param before undefined: there is none yet
 * @param source from where npm installs our package; undefined where that is not known
 */
export function addToPackage(
  before: string | undefined,
  stories: string,
  source: string | undefined,
): PackageChange | undefined {
  const read = before === undefined ? { private: true } : parse(before)
  const scripts = read && toObject(read['scripts'])
  if (!read || !scripts) return undefined
  const names = chooseNames(scripts)
  const wanted = toScripts(names, stories)
  const missing = Object.keys(wanted).filter((name) => !(name in scripts))
  const isThere = ['dependencies', 'devDependencies', 'optionalDependencies'].some(
    (key) => 'battledore' in (toObject(read[key]) ?? {}),
  )
  const isAdded = !isThere && source !== undefined
  const after = {
    ...read,
    ...(missing.length > 0
      ? { scripts: { ...scripts, ...Object.fromEntries(missing.map((name) => [name, wanted[name]])) } }
      : {}),
    ...(isAdded ? { devDependencies: { ...toObject(read['devDependencies']), battledore: source } } : {}),
  }
  const looked = new Set([USUAL, names].flatMap(({ check, watch }) => [check, watch]))
  return {
    text: before !== undefined && missing.length === 0 && !isAdded ? before : toText(after, before),
    added: [...missing.map((name) => `script \`${name}\``), ...(isAdded ? ['development package `battledore`'] : [])],
    kept: [...looked].filter((name) => name in scripts && scripts[name] !== wanted[name]),
    names,
    isListed: isThere || isAdded,
    source: isAdded ? source : undefined,
  }
}

/** A script that somebody has changed, but that still checks stories, is ours. */
function chooseNames(scripts: Json): ScriptNames {
  const isFree = (name: string): boolean => !(name in scripts) || /\bbattledore check\b/.test(String(scripts[name]))
  return isFree(USUAL.check) && isFree(USUAL.watch) ? USUAL : OTHER
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
