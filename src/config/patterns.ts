// Patterns of paths as in .gitignore, with braces. The matcher is loaded only where there is a pattern.

export type Matcher = (path: string) => boolean

/** `{pink,blue}/*.md` → `pink/*.md`, `blue/*.md`. Braces without a comma stay. */
function expandBraces(pattern: string): readonly string[] {
  const match = /\{([^{}]*,[^{}]*)\}/.exec(pattern)
  if (!match) return [pattern]
  const before = pattern.slice(0, match.index)
  const after = pattern.slice(match.index + match[0].length)
  return (match[1] ?? '').split(',').flatMap((choice) => expandBraces(before + choice + after))
}

/** Paths are relative, with forward slashes; one that leads out of the folder never matches. */
export async function toMatcher(patterns: readonly string[]): Promise<Matcher> {
  if (patterns.length === 0) return () => false
  const { default: ignore } = await import('ignore')
  const rules = ignore({ ignoreCase: false }).add(patterns.flatMap(expandBraces))
  return (path) => ignore.isPathValid(path) && rules.ignores(path)
}
