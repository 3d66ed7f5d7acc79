// Goes through a paragraph mark by mark and knows how much emphasis and how many brackets stand open.
//
// It follows https://spec.commonmark.org/0.31.2/#inlines as far as that is simple, and says where it is not.

interface MarkScanner {
  /** The plain text up to the next mark, or up to the end. */
  toNext(): { readonly start: number; readonly end: number; readonly isLast: boolean }
  /** Reads that mark; false where it cannot tell what it means. */
  read(): boolean
  /** How much stands open. */
  open(): number
}

const mark = /[\\`*_[\]<]/g
const run = /(.)\1*/y
/** Whether it is HTML, an address or neither: it holds no mark that would mean more, so it may be passed over. */
const bare = /<[^<>\\`*_[\]]*>/y
const resource = /\([ \t]*[^\s()<>\\`*_[\]&]*(?:[ \t]+"[^"\\`*_[\]<&\n]*")?[ \t]*\)/y

export function createMarkScanner(text: string, stop: number): MarkScanner {
  const stack: string[] = []
  const closers = createCloserFinder(text)
  let at = 0
  const skip = (pattern: RegExp, from: number): boolean => {
    pattern.lastIndex = from
    if (!pattern.test(text)) return false
    at = pattern.lastIndex
    return at <= stop
  }
  const readCode = (length: number): boolean => {
    const close = closers.find(length, at + length)
    at = close === undefined ? at + length : close + length
    return at <= stop
  }
  const readAngle = (): boolean => {
    if (!/[A-Za-z/!?]/.test(text.charAt(at + 1))) {
      at++
      return true
    }
    if (!text.startsWith('<!--', at)) return skip(bare, at)
    const close = /^<!--(?!-?>)/.test(text.slice(at, at + 6)) ? text.indexOf('-->', at + 4) : -1
    at = close + 3
    return close !== -1 && at <= stop
  }
  const readBracket = (): boolean => {
    at++
    if (stack.at(-1) !== '[') return !stack.includes('[')
    stack.pop()
    return text[at] !== '(' || skip(resource, at)
  }
  const readEmphasis = (length: number): boolean => {
    const { canOpen, canClose } = toFlanks(text, at, length)
    const own = text.slice(at, at + length)
    at += length
    if (canClose && stack.at(-1) === own) {
      stack.pop()
      return true
    }
    if (canClose && stack.some((one) => one[0] === own[0])) return false
    if (canOpen) stack.push(own)
    return true
  }
  return {
    toNext() {
      mark.lastIndex = at
      const found = mark.exec(text)
      const isLast = found === null || found.index >= stop
      const plain = { start: at, end: isLast ? stop : found.index, isLast }
      at = plain.end
      return plain
    },
    read() {
      const letter = text[at]
      run.lastIndex = at
      run.test(text)
      const length = run.lastIndex - at
      if (letter === '\\') at += 2
      else if (letter === '`') return readCode(length)
      else if (letter === '<') return readAngle()
      else if (letter === ']') return readBracket()
      else if (letter !== '[') return readEmphasis(length)
      else {
        stack.push(letter)
        at++
      }
      return true
    },
    open: () => stack.length,
  }
}

/** Where the next run of just so many backticks begins; that there is none further on is found out once. */
function createCloserFinder(text: string) {
  const none = new Set<number>()
  return {
    find(length: number, from: number): number | undefined {
      if (none.has(length)) return undefined
      const closer = new RegExp(`(?<!\`)\`{${length}}(?!\`)`, 'g')
      closer.lastIndex = from
      const found = closer.exec(text)?.index
      if (found === undefined) none.add(length)
      return found
    },
  }
}

/** Whether a run of asterisks or underscores can open or close emphasis, as the parser asks it. */
function toFlanks(text: string, at: number, length: number) {
  const [before, after] = [toKind(text[at - 1]), toKind(text[at + length])]
  const opens = after === 'letter' || (after === 'mark' && before !== 'letter')
  const closes = before === 'letter' || (before === 'mark' && after !== 'letter')
  if (text[at] === '*') return { canOpen: opens, canClose: closes }
  return {
    canOpen: opens && (before !== 'letter' || !closes),
    canClose: closes && (after !== 'letter' || !opens),
  }
}

function toKind(letter: string | undefined): 'space' | 'mark' | 'letter' {
  if (letter === undefined || /\s/.test(letter)) return 'space'
  return /\p{P}|\p{S}/u.test(letter) ? 'mark' : 'letter'
}
