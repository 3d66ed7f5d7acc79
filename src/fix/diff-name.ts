// The name of a file in the head of a diff, so that `patch` and git find the file again.

export interface DiffPlace {
  /** With slashes, and without any `..`, which `patch` and git refuse. */
  readonly name: string
  /** The folder in which the diff holds, seen from the current one: `.`, or `../..` for a file that stands outside. */
  readonly folder: string
}

/** @param path from the current folder, with slashes and no needless `..`; a file on another drive has its whole path */
export function toDiffPlace(path: string): DiffPlace {
  const [up] = /^(?:\.\.\/)*/.exec(path) ?? ['']
  return { name: path.slice(up.length).replace(/^\/+/, ''), folder: up === '' ? '.' : up.slice(0, -1) }
}

/** As git writes it: quoted where it holds a quote, a backslash or a control character; a tab ends a name with spaces. */
export function toHeadName(name: string): string {
  const isOdd = /["\\\p{Cc}]/u.test(name)
  const shown = isOdd ? `"${name.replace(/["\\\p{Cc}]/gu, toEscape)}"` : name
  return name.includes(' ') ? `${shown}\t` : shown
}

const ESCAPES: Readonly<Record<string, string>> = {
  ...{ '\u0007': 'a', '\b': 'b', '\t': 't', '\n': 'n', '\v': 'v', '\f': 'f', '\r': 'r' },
  ...{ '"': '"', '\\': '\\' },
}

/** Control characters without a letter of their own go byte by byte in octal. */
const toEscape = (character: string): string =>
  `\\${ESCAPES[character] ?? [...new TextEncoder().encode(character)].map(toOctal).join('\\')}`

const toOctal = (byte: number): string => byte.toString(8).padStart(3, '0')
