// Many short lines in one text: headings, and under each its lines, `what is expected: what is asked`.

export interface Block {
  readonly heading: string
  readonly lines: readonly (readonly [expected: string, asked: string])[]
}

/** A heading stands two spaces in, its lines four. */
export function toBlocks(text: string): readonly Block[] {
  return text
    .trim()
    .split(/\n {2}(?=\S)/)
    .map((block) => {
      const [heading = '', ...lines] = block.trim().split(/\n\s+/)
      return { heading, lines: lines.map((line) => line.split(': ') as [string, string]) }
    })
}
