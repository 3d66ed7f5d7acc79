// Draws contact sheets of pictures with their words, so that a person can look at every row before it goes into the table.
//
//   npx tsx scripts/pictures/contact-sheet.ts src/print/pictures.tsv FOLDER    sheets of all rows, as PNG
//
// The file has a row for each picture: word, a tab, and the icon's name; more columns are passed over. Chromium draws the sheets.

import { execFileSync } from 'node:child_process'
import { mkdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { openIcons } from './icons.ts'

/** As many as can be told apart on one sheet. */
const ACROSS = 7
const ROWS = 6
const CELL = 150

interface Row {
  readonly word: string
  readonly picture: string
}

function readProposals(file: string): Row[] {
  return readFileSync(file, 'utf8')
    .split('\n')
    .filter((line) => line !== '' && !line.startsWith('#') && !line.startsWith('word\t'))
    .map((line) => {
      const [word = '', picture = ''] = line.split('\t')
      return { word, picture }
    })
}

function toSheets(rows: readonly Row[]): Row[][] {
  const each = ACROSS * ROWS
  return Array.from({ length: Math.ceil(rows.length / each) }, (_, at) => rows.slice(at * each, (at + 1) * each))
}

const toCell = ({ word, picture }: Row, svg: string): string =>
  `<figure>${svg}<figcaption><b>${word}</b><br><small>${picture}</small></figcaption></figure>`

const toPage = (cells: readonly string[]): string => `<!doctype html><meta charset="utf-8"><style>
body { margin: 0; display: grid; grid-template-columns: repeat(${ACROSS}, ${CELL}px); font: 17px sans-serif }
figure { margin: 0; height: ${CELL}px; text-align: center; outline: 1px solid #ccc; padding-top: 6px; box-sizing: border-box }
svg { width: 92px; height: 92px } small { font-size: 10px; color: #777 }
</style>${cells.join('\n')}`

function drawSheets(file: string, folder: string): void {
  const icons = openIcons()
  mkdirSync(folder, { recursive: true })
  toSheets(readProposals(file)).forEach((rows, at) => {
    const cells = rows.map((row) => toCell(row, icons.svg(row.picture) ?? '<p>no such icon</p>'))
    const page = join(folder, `sheet-${at + 1}.html`)
    writeFileSync(page, toPage(cells))
    const size = `--window-size=${ACROSS * CELL},${ROWS * CELL}`
    const shot = `--screenshot=${join(folder, `sheet-${at + 1}.png`)}`
    execFileSync('chromium', ['--headless', '--no-sandbox', '--disable-gpu', '--hide-scrollbars', size, shot, page], {
      stdio: 'ignore',
    })
    rmSync(page)
    process.stdout.write(`${join(folder, `sheet-${at + 1}.png`)}: ${rows.length} pictures\n`)
  })
}

const [file, folder] = process.argv.slice(2)
if (file === undefined || folder === undefined) {
  process.stderr.write('Say which table, and the folder for the sheets.\n')
  process.exitCode = 2
} else drawSheets(file, folder)
