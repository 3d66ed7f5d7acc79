// Prints how right the engine is: one table, each figure counted as the command runs.
//
//   npm run accuracy                 the table
//   npm run accuracy -- spellings    each sound's spellings and each spelling's sounds, with their shares
//   npm run accuracy -- accent       the words that differ from the independent voice

import { measureAccent } from './accent.ts'
import { openEngine } from './engine.ts'
import { PARTS, type Row, toPercent } from './rows.ts'
import { measureSpellings, type Table } from './spellings.ts'

const print = (line: string): void => {
  process.stdout.write(`${line}\n`)
}

async function printTable(): Promise<void> {
  const engine = openEngine()
  print('| what | published | ours | where theirs comes from | remark |\n| --- | --- | --- | --- | --- |')
  for (const part of PARTS) for (const row of await part(engine)) print(toLine(row))
}

const toLine = ({ what, published, ours, source, note = '' }: Row): string =>
  `| ${[what, published, ours, source, note].join(' | ')} |`

function printSpellings(): void {
  const { bySound, bySpelling } = measureSpellings(openEngine())
  print('Each sound, with its spellings (General American):')
  for (const table of bySound) printShares(table)
  print('\nEach spelling, with its sounds:')
  for (const table of bySpelling) printShares(table)
}

const printShares = ({ name, count, shares }: Table): void =>
  print(`${name}  ${count}: ${shares.map((one) => `${one.name} ${toPercent(one.share)} ${one.example}`).join(', ')}`)

async function printAccent(): Promise<void> {
  const { words, agreed, differing } = await measureAccent(openEngine().phonics['southern-british'])
  print(`${agreed} of ${words} agree. The others, most used first: word, ours, theirs.`)
  for (const { word, ours, theirs } of differing) print(`${word}\t${ours.join(' or ')}\t${theirs}`)
}

const [what] = process.argv.slice(2)
if (what === 'spellings') printSpellings()
else if (what === 'accent') await printAccent()
else if (what === undefined) await printTable()
else {
  process.stderr.write(`There is no part called \`${what}\`. Say \`spellings\`, \`accent\` or nothing.\n`)
  process.exitCode = 2
}
