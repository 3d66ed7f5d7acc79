// Reads the plain lists beside the tests: a row a line, lines that open with # are for people.

export function readRows(text: string): string[] {
  return text.split('\n').filter((row) => row !== '' && !row.startsWith('#'))
}
