// Reads the reviewed table of pictures: word, name of the picture, what a screen reader says, and why it is clear to a child.

export interface TableRow {
  readonly word: string
  readonly picture: string
  readonly alt: string
  readonly reason: string
}

const HEAD = 'word\tpicture\talt\treason'

export function readTable(text: string): { readonly rows: readonly TableRow[]; readonly problems: readonly string[] } {
  const [head, ...lines] = text.split(/\r?\n/).filter((line) => line.trim() !== '' && !line.startsWith('#'))
  const problems = head === HEAD ? [] : [`its first line must be ${HEAD.replaceAll('\t', ', ')}`]
  const rows = lines.flatMap((line): TableRow[] => {
    const [word = '', picture = '', alt = '', reason = '', ...more] = line.split('\t').map((cell) => cell.trim())
    if (word !== '' && picture !== '' && alt !== '' && reason !== '' && more.length === 0)
      return [{ word, picture, alt, reason }]
    problems.push(`this row must have four cells: ${line}`)
    return []
  })
  rows.forEach(({ word }, at) => {
    const before = rows[at - 1]?.word ?? ''
    if (before >= word) problems.push(`\`${word}\` must come ${before === word ? 'once' : `before \`${before}\``}`)
  })
  return { rows, problems }
}
