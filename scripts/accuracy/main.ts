// Prints how right the engine is: one table, each figure counted as the command runs.
//
//   npm run accuracy                 the table
//   npm run accuracy -- docs         the table, into docs/accuracy.md; says whether it has changed
//   npm run accuracy -- spellings    each sound's spellings and each spelling's sounds, with their shares
//   npm run accuracy -- accent       the words that differ from the independent voice
//   npm run accuracy -- doubts       entries of the dictionary that the guesser and the voice both doubt
//   npm run accuracy -- family       entries that are said otherwise than the word that they are made of
//   npm run accuracy -- exceptions o ou    the shares of a spelling's sounds, and which are told as exceptions

import { readFileSync, writeFileSync } from 'node:fs'
import { measureAccent } from './accent.ts'
import { findDoubts } from './doubts.ts'
import { openEngine } from './engine.ts'
import { measureExceptions } from './exceptions.ts'
import { findFamilyDoubts } from './family-doubts.ts'
import { toPercent } from './percent.ts'
import { PARTS, type Row } from './rows.ts'
import { measureSpellings, type Table } from './spellings.ts'

const print = (line: string): void => {
  process.stdout.write(`${line}\n`)
}

const HEAD = '| what | published | ours | where theirs comes from | remark |\n| --- | --- | --- | --- | --- |'

async function printTable(write = print): Promise<void> {
  const engine = openEngine()
  write(HEAD)
  for (const part of PARTS) for (const row of await part(engine)) write(toLine(row))
}

const DOCS = new URL('../../docs/accuracy.md', import.meta.url)

/** The lines of the old table give way to those of the new one. */
async function writeDocs(): Promise<void> {
  const lines: string[] = []
  await printTable((line) => lines.push(line))
  const before = readFileSync(DOCS, 'utf8')
  const after = before.replace(/^\| what (?:.*\n)(?:\|.*\n)*/m, () => `${lines.join('\n')}\n`)
  if (!after.includes(HEAD)) throw new Error('docs/accuracy.md holds no table')
  writeFileSync(DOCS, after)
  print(before === after ? 'docs/accuracy.md is as it was.' : 'docs/accuracy.md has changed.')
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

async function printDoubts(): Promise<void> {
  for (const { word, ours, guessed, voice } of await findDoubts()) print([word, ours, guessed, voice].join('\t'))
}

function printFamily(): void {
  for (const { word, ours, stem, likely } of findFamilyDoubts(openEngine()))
    print([word, ours.join(' / '), stem, likely.join(' / ')].join('\t'))
}

const toCount = ([said, all]: readonly [number, number]): string =>
  all === 0 ? '0' : `${said} of ${all} (${toPercent(said / all)})`

function printExceptions(letters: readonly string[]): void {
  print('Sound, families of words in use, of words of the primary grades, told as exceptions, not told so:')
  for (const { key, families, childFamilies, words } of measureExceptions(
    openEngine().phonics['general-american'],
    letters,
  )) {
    const of = (isOne: boolean) => [...words].flatMap(([word, is]) => (is === isOne ? [word] : [])).slice(0, 8)
    print([key, toCount(families), toCount(childFamilies), of(true).join(' '), of(false).join(' ')].join('\t'))
  }
}

const [what, ...letters] = process.argv.slice(2)
if (what === 'spellings') printSpellings()
else if (what === 'accent') await printAccent()
else if (what === 'doubts') await printDoubts()
else if (what === 'family') printFamily()
else if (what === 'exceptions') printExceptions(letters)
else if (what === 'docs') await writeDocs()
else if (what === undefined) await printTable()
else {
  process.stderr.write(
    `There is no part called \`${what}\`. Say \`docs\`, \`spellings\`, \`accent\`, \`doubts\` or nothing.\n`,
  )
  process.exitCode = 2
}
