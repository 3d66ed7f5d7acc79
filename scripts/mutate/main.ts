// `npm run mutate -- FOLDER…`: changes the code in small ways and asks whether a test notices. Minutes to an hour; not in CI.
//
//   npm run mutate -- verdict                        250 mutants of each folder that is named, drawn with seed 1
//   npm run mutate -- story --sample 40 --seed 7     fewer, and others
//   npm run mutate -- phonics --concurrency 2        two at a time
//   npm run mutate -- lint --files 'run*.ts'         only files of the folder whose path fits
//
// It prints the score (the share of mutants that a test noticed) and each survivor with its place and what stood there instead.

import { readFileSync } from 'node:fs'
import { join, relative } from 'node:path'
import { parseArgs } from 'node:util'
import { Stryker } from '@stryker-mutator/core'
import { ROOT } from '../root.ts'
import { sampleMutants } from './sample.ts'
import { FOLDERS, type Folder, findTests, isFolder } from './tests.ts'

type Result = Awaited<ReturnType<Stryker['runMutationTest']>>[number]

const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    sample: { type: 'string', default: '250' },
    seed: { type: 'string', default: '1' },
    concurrency: { type: 'string', default: '1' },
    files: { type: 'string', default: '**/*.ts' },
  },
})

function toCount(name: 'sample' | 'seed' | 'concurrency'): number {
  const value = Number(values[name])
  if (Number.isSafeInteger(value) && value > 0) return value
  return fail(`--${name} takes a whole number from 1; this is "${values[name]}".`)
}

function fail(message: string): never {
  console.error(message)
  process.exit(2)
}

const unknown = positionals.find((name) => !isFolder(name))
if (positionals.length === 0 || unknown !== undefined)
  fail(`Name one or more of ${Object.keys(FOLDERS).join(', ')}${unknown === undefined ? '' : `; not "${unknown}"`}.`)

process.chdir(ROOT)
const [sample, seed, concurrency] = [toCount('sample'), toCount('seed'), toCount('concurrency')]
const count = sampleMutants(sample, seed)
for (const folder of positionals.filter(isFolder))
  report(
    folder,
    // Stryker has told by then which test failed.
    await mutate(folder).catch((error: Error) => fail(`src/${folder} could not be tried: ${error.message}`)),
  )

async function mutate(folder: Folder): Promise<readonly Result[]> {
  const tests = findTests(folder)
  process.env['MUTATE_TESTS'] = JSON.stringify(tests)
  const mutate = `src/${folder}/${values.files}`
  console.log(`src/${folder}: ${sample} mutants at most, seed ${seed}, asked of ${tests.length} files of tests`)
  return new Stryker({
    mutate: [mutate],
    testRunner: 'vitest',
    plugins: ['@stryker-mutator/vitest-runner'],
    vitest: { configFile: 'vitest.mutate.config.ts', related: true },
    coverageAnalysis: 'perTest',
    concurrency,
    // Tests that read a source compare its text; vitest checks no types.
    disableTypeChecks: false,
    // Everything else is copied for the run. A second biome.json would stop Biome while it lasts.
    ignorePatterns: ['biome.json', 'coverage', '*.tmp.ts'],
    reporters: ['progress-append-only'],
    logLevel: 'warn',
    warnings: false,
    tempDirName: '.stryker-tmp',
    // The machine may be busy, and the dry run with it.
    dryRunTimeoutMinutes: 30,
    timeoutMS: 20_000,
    allowEmpty: false,
  } as ConstructorParameters<typeof Stryker>[0]).runMutationTest()
}

function report(folder: Folder, results: readonly Result[]): void {
  const having = (...statuses: readonly string[]): readonly Result[] =>
    results.filter(({ status }) => statuses.includes(status))
  const noticed = having('Killed', 'Timeout')
  const unnoticed = having('Survived', 'NoCoverage')
  for (const mutant of unnoticed) console.log(toLine(mutant))
  const tried = noticed.length + unnoticed.length
  const share = tried === 0 ? 'none' : `${((100 * noticed.length) / tried).toFixed(1)} %`
  const failed = having('CompileError', 'RuntimeError').length
  console.log(
    `src/${folder}: ${share} (${noticed.length} of ${tried} noticed, ${having('Timeout').length} of them by their time; ` +
      `${having('NoCoverage').length} reached by no test; ${failed} would not run; ${count.all} mutants in all)`,
  )
}

/** `src/x.ts:3:5 EqualityOperator: a < b → a <= b`, for an editor to jump to. */
function toLine({ fileName, location, mutatorName, replacement, status }: Result): string {
  const { start, end } = location
  const lines = readFileSync(join(ROOT, relative(ROOT, fileName)), 'utf8').split('\n')
  const from = lines.slice(start.line - 1, end.line)
  const last = from.length - 1
  const text = from.map((line, at) =>
    line.slice(at === 0 ? start.column - 1 : 0, at === last ? end.column - 1 : undefined),
  )
  const where = `${relative(ROOT, fileName)}:${start.line}:${start.column}`
  const note = status === 'NoCoverage' ? ' (no test comes here)' : ''
  return `  ${where} ${mutatorName}: ${toShort(text.join(' '))} → ${toShort(replacement ?? '')}${note}`
}

function toShort(code: string): string {
  const flat = code.replace(/\s+/gu, ' ').trim()
  return flat.length > 70 ? `${flat.slice(0, 67)}…` : flat
}
